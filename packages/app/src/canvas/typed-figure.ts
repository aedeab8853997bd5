import type { ScreenPoint } from "@baywright/editor";
import type { Box } from "./labels/box.ts";
import type { Layout } from "./labels/layout.ts";

/** A figure of the plan that can be typed on where it stands. */
export type PlanFigure =
	| { readonly kind: "run"; readonly wall: number }
	| { readonly kind: "rise"; readonly wall: number }
	| { readonly kind: "angle"; readonly corner: number }
	| { readonly kind: "radius"; readonly corner: number };

/** px round a figure that still mean it. */
const ROUND = 4;

/** The figure at a place on screen, with the box of its writing. */
export function figureAt(layout: Layout, at: ScreenPoint): { readonly figure: PlanFigure; readonly box: Box } | null {
	for (const [key, label] of layout.byKey) {
		if (label.kind === "badge" || !covers(label.box, at)) continue;
		const [what = "", number = ""] = key.split(" ");
		const index = Number(number);
		if (what === "run") return { figure: { kind: "run", wall: index }, box: label.box };
		if (what === "rise") return { figure: { kind: "rise", wall: index }, box: label.box };
		if (what !== "corner" || label.kind !== "note") continue;
		// A made bend tells its radius over its angle.
		const hasRadius = label.lines.length > 1;
		const upper = at.top < label.box.top;
		const kind = hasRadius && upper ? "radius" : "angle";
		const half = label.box.halfHeight / label.lines.length;
		const top = label.box.top + (hasRadius ? (upper ? -half : half) : 0);
		return { figure: { kind, corner: index }, box: { ...label.box, top, halfHeight: half } };
	}
	return null;
}

function covers({ left, top, halfWidth, halfHeight, turn }: Box, at: ScreenPoint): boolean {
	const [dx, dy] = [at.left - left, at.top - top];
	const along = dx * Math.cos(turn) + dy * Math.sin(turn);
	const across = dy * Math.cos(turn) - dx * Math.sin(turn);
	return Math.abs(along) <= halfWidth + ROUND && Math.abs(across) <= halfHeight + ROUND;
}
