import { formatLimit } from "@baywright/setout";
import { usePlan } from "../desk/on-table.ts";
import { HeadChoice } from "./head-choice.tsx";
import type { LoadShown } from "./loads.ts";

const SHOWN: readonly (readonly [LoadShown, string])[] = [
	["greatest", "greatest"],
	["least", "least"],
	["drawn", "drawn"],
	["stacked", "drawn back"],
];

interface Props {
	readonly shown: LoadShown;
	readonly choose: (shown: LoadShown) => void;
}

/** Under the bars of the strip: which load they show, what their filling says, and what they leave out. */
export function LoadsFoot({ shown, choose }: Props) {
	const limit = usePlan(({ system }) => system.bracket.maxLoad);
	const missing = usePlan(({ findings }) => findings.some(({ code }) => code === "mass-not-known"));
	return (
		<div className="strip-loads">
			<HeadChoice
				label="Load on each bracket"
				before={<span className="strip-loads-word">Load on each bracket, kg</span>}
				options={SHOWN}
				value={shown}
				choose={choose}
			/>
			<p className="strip-legend">
				{limit === null ? (
					<>
						<span className="load-sign" data-standing="not-checked" /> no limit stated: not checked
					</>
				) : (
					<>
						<span className="load-sign" data-standing="within" /> within {formatLimit(limit)} kg
						<span className="load-sign" data-standing="near" /> from 80 %
						<span className="load-sign" data-standing="over" /> over
					</>
				)}
				<span className="strip-legend-rest">
					torsion at bends left out{missing ? "; curtains of unknown mass left out" : ""}
				</span>
			</p>
		</div>
	);
}
