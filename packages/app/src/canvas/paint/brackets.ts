import { pointAt } from "@baywright/geometry";
import type { Painter, Scene } from "../scene.ts";
import { barWidth, bracketBar } from "../track-shape.ts";
import { lineBetween, type Pen } from "./pen.ts";

/** Brackets: a solid bar from the wall face across the track. */
export const paintBrackets: Painter = (pen, scene) => {
	pen.strokeStyle = scene.palette.ink;
	pen.lineWidth = barWidth(scene.plan, scene.view);
	pen.lineCap = "butt";
	pen.beginPath();
	scene.plan.brackets.forEach((_, i) => {
		traceBracket(pen, scene, i);
	});
	pen.stroke();
};

export function traceBracket(pen: Pen, { bay, plan, view }: Scene, index: number): void {
	const bracket = plan.brackets[index];
	const heading = plan.path === null || !bracket ? undefined : pointAt(plan.path, bracket.station)?.heading;
	if (!bracket || heading === undefined) return;
	const { from, to } = bracketBar(bay, plan, bracket, heading, view);
	lineBetween(pen, view, from, to);
}
