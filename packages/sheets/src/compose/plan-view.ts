import type { Point } from "@baywright/geometry";
import { at, type PaperPoint } from "../paper/place.ts";

/** How the plan lies on the paper. The paper is never a mirror: a turn to the left stays one. */
export interface PlanView {
	/** mm of paper for each mm of the room. */
	readonly perMm: number;
	/** The plan is turned by this, radians, counter-clockwise. */
	readonly turn: number;
	/** This place of the plan … */
	readonly from: Point;
	/** … comes to lie here. */
	readonly to: PaperPoint;
}

export const onPaper =
	({ perMm, turn, from, to }: PlanView) =>
	({ x, y }: Point): PaperPoint => {
		const [cos, sin] = [Math.cos(turn) * perMm, Math.sin(turn) * perMm];
		const [right, up] = [x - from.x, y - from.y];
		return at(to.x + right * cos - up * sin, to.y - right * sin - up * cos);
	};
