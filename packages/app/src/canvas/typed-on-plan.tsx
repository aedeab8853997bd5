import { angleOf, deepestBow, runOf } from "@baywright/editor";
import { wallName } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { setAngle, setBendRadius, setRise, setRun } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, usePlan } from "../desk/on-table.ts";
import { AngleField } from "../fields/angle-field.tsx";
import { LengthField } from "../fields/length-field.tsx";
import type { Box } from "./labels/box.ts";
import type { PlanFigure } from "./typed-figure.ts";

interface Props {
	readonly figure: PlanFigure;
	/** Where it stands on the plan, px. */
	readonly box: Box;
	readonly close: () => void;
}

/** A figure of the plan being typed, in the place where it stands. Enter or leaving it puts it in place, Escape does not. */
export function TypedOnPlan({ figure, box, close }: Props) {
	const frame = useRef<HTMLFieldSetElement>(null);
	useEffect(() => frame.current?.querySelector("input")?.focus(), []);
	return (
		<fieldset
			ref={frame}
			className="typed-on-plan"
			aria-label="Figure on the plan"
			data-own=""
			style={{ left: box.left, top: box.top }}
			onBlur={(event) => {
				// What was refused stays, with its reason, until it is mended or given up.
				if (!event.currentTarget.contains(event.relatedTarget) && !event.currentTarget.querySelector("[role=alert]"))
					close();
			}}
			onKeyDownCapture={(event) => {
				// The field first takes back what is typed, so that leaving it does not commit that.
				if (event.key === "Escape") requestAnimationFrame(close);
			}}
			onKeyDown={(event) => {
				event.stopPropagation();
				const refused = event.currentTarget.querySelector("[role=alert]") !== null;
				if (event.key === "Enter" && !refused) closeIfTaken(frame.current, close);
			}}
		>
			<Field figure={figure} />
		</fieldset>
	);
}

/** By the next frame the field has said whether it took what was typed. */
function closeIfTaken(frame: HTMLElement | null, close: () => void): void {
	requestAnimationFrame(() => {
		if (frame?.querySelector("[role=alert]") === null) close();
	});
}

function Field({ figure }: { readonly figure: PlanFigure }) {
	if (figure.kind === "run") return <Run wall={figure.wall} />;
	if (figure.kind === "rise") return <Rise wall={figure.wall} />;
	return figure.kind === "angle" ? <Angle corner={figure.corner} /> : <Radius corner={figure.corner} />;
}

function Run({ wall }: { readonly wall: number }) {
	const bay = useDesk((state) => state.bay);
	const run = useBay((on) => runOf(on.corners, wall));
	const walls = useBay((on) => on.corners.length - 1);
	const name = wallName(wall, walls);
	const { change } = desk.getState();
	return (
		<LengthField
			label={`Run of the ${name}`}
			labelHidden
			value={run}
			least={1}
			commit={(mm) => change(`run of the ${name}`, setRun(desk.getState().job, bay, wall, mm))}
		/>
	);
}

function Rise({ wall }: { readonly wall: number }) {
	const bay = useDesk((state) => state.bay);
	const rise = useBay((on) => on.walls[wall]?.rise ?? 0);
	const deepest = useBay((on) => deepestBow(on, wall));
	const name = useBay((on) => wallName(wall, on.corners.length - 1));
	const { change } = desk.getState();
	return (
		<LengthField
			label={`Rise of the ${name}`}
			labelHidden
			value={rise}
			least={-deepest}
			greatest={deepest}
			commit={(mm) => change(`rise of the ${name}`, setRise(desk.getState().job, bay, wall, mm))}
		/>
	);
}

function Angle({ corner }: { readonly corner: number }) {
	const bay = useDesk((state) => state.bay);
	const angle = useBay((on) => angleOf(on.corners, corner, on.walls));
	const { change } = desk.getState();
	return (
		<AngleField
			label={`Angle of corner ${corner}`}
			labelHidden
			value={angle}
			commit={(degrees) => change(`angle of corner ${corner}`, setAngle(desk.getState().job, bay, corner, degrees))}
		/>
	);
}

function Radius({ corner }: { readonly corner: number }) {
	const bay = useDesk((state) => state.bay);
	const set = useBay((on) => on.track.bends.find((bend) => bend.corner === corner)?.radius ?? null);
	const fitted = usePlan((plan) => plan.corners.find((it) => it.corner === corner)?.radius ?? null);
	const { change } = desk.getState();
	return (
		<LengthField
			label={`Radius of corner ${corner}`}
			labelHidden
			value={set}
			instead={fitted}
			commit={(mm) => change(`radius of corner ${corner}`, setBendRadius(desk.getState().job, bay, corner, mm))}
			clear={() =>
				change(`radius of corner ${corner} left to choose`, setBendRadius(desk.getState().job, bay, corner, null))
			}
		/>
	);
}
