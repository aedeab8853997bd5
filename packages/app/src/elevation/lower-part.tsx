import { type CSSProperties, lazy, Suspense, useId } from "react";
import { Splitter } from "../shell/splitter.tsx";
import { Strip } from "../strip/strip.tsx";
import { LEAST_LOWER, type LowerView, setLowerHeight, showLower, USUAL, useLower } from "./lower.ts";
import "./lower.css";

const Elevation = lazy(async () => ({ default: (await import("./elevation.tsx")).Elevation }));

const VIEWS: readonly (readonly [LowerView, string])[] = [
	["strip", "Strip"],
	["elevation", "Elevation"],
];

/** Under the plan: the track laid flat, or the walls side by side; as high as its upper edge is dragged. */
export function LowerPart() {
	const view = useLower((state) => state.view);
	const height = useLower((state) => state.heights[state.view]);
	return (
		<div className="strip-place lower" style={{ "--lower": `${height}px` } as CSSProperties}>
			<Splitter
				label={view === "strip" ? "Height of the strip" : "Height of the elevation"}
				value={height}
				least={LEAST_LOWER}
				usual={USUAL[view]}
				change={setLowerHeight}
			/>
			<Switch />
			{view === "strip" ? (
				<Strip />
			) : (
				<Suspense fallback={<p className="strip-none">Drawing the elevation …</p>}>
					<Elevation />
				</Suspense>
			)}
		</div>
	);
}

function Switch() {
	const view = useLower((state) => state.view);
	const group = useId();
	return (
		<fieldset className="strip-ends lower-switch" aria-label="Under the plan">
			{VIEWS.map(([value, words]) => (
				<label key={value} className="strip-end">
					<input type="radio" name={group} value={value} checked={view === value} onChange={() => showLower(value)} />
					{words}
				</label>
			))}
		</fieldset>
	);
}
