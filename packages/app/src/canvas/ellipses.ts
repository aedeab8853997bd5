import { type ScreenPoint, toScreen } from "@baywright/editor";
import type { Point } from "@baywright/geometry";
import type { Scene } from "./scene.ts";

/**
 * Half axes of one standard deviation grow by this to hold a corner in 95 of 100 surveys. Source: tables of the χ² distribution, 5.991 at
 * 95 % with two degrees of freedom; its root.
 */
export const ELLIPSE_AT_95 = 2.448;

/** px: no half axis is drawn longer, and on a small sheet none longer than this share of its shorter side. */
const LONGEST_AXIS = 40;
const LONGEST_SHARE = 0.1;

/** mm: below this nothing is unsure. */
const LEAST_AXIS = 1e-6;

/** px: what is sure across is still seen as a line. */
const LEAST_DRAWN = 0.75;

/** Where a corner is to be expected, on screen. */
export interface CornerEllipse {
	readonly corner: number;
	readonly at: ScreenPoint;
	/** Half axes at 95 % as drawn, px. */
	readonly major: number;
	readonly minor: number;
	/** Of the major axis: radians clockwise from rightwards. */
	readonly turn: number;
}

export interface Ellipses {
	/** How many times larger than the plan they are drawn: 1, 2 or 5 times a power of ten. */
	readonly times: number;
	readonly each: readonly CornerEllipse[];
}

/** Error ellipses of all corners that are unsure, seen from the left end and all to one scale; null where there are none. */
export function ellipsesOf({
	plan,
	corners,
	view,
	size,
}: Pick<Scene, "plan" | "corners" | "view" | "size">): Ellipses | null {
	const ellipses = plan.survey?.ellipses ?? [];
	const greatest = Math.max(0, ...ellipses.map(({ major }) => major));
	if (!(greatest > LEAST_AXIS)) return null;
	const longest = Math.min(LONGEST_AXIS, LONGEST_SHARE * Math.min(size.width, size.height));
	const atLifeSize = greatest * ELLIPSE_AT_95 * view.scale;
	const times = roundScale(longest / atLifeSize);
	const drawn = ELLIPSE_AT_95 * view.scale * times;
	const each = ellipses.flatMap(({ major, minor, heading }, corner): CornerEllipse[] => {
		const at = corners[corner] as Point | undefined;
		if (at === undefined || major <= LEAST_AXIS) return [];
		return [
			{
				corner,
				at: toScreen(view, at),
				major: Math.max(LEAST_DRAWN, major * drawn),
				minor: Math.max(LEAST_DRAWN, minor * drawn),
				turn: -heading,
			},
		];
	});
	return { times, each };
}

/** The largest of 1, 2, 5, 10, 20 … and of 0.5, 0.2, 0.1 … that is not over `most`. */
export function roundScale(most: number): number {
	const power = Math.floor(Math.log10(most));
	const fits = [10, 5, 2, 1].find((step) => step * 10 ** power <= most) ?? 0.5;
	// A power of ten below one is no binary fraction: divided, so that it is written in its few digits.
	return power < 0 ? fits / 10 ** -power : fits * 10 ** power;
}

/** A point on an ellipse's outline, `share` of the way round. */
export function onEllipse({ at, major, minor, turn }: CornerEllipse, share: number): ScreenPoint {
	const angle = 2 * Math.PI * share;
	const [along, across] = [major * Math.cos(angle), minor * Math.sin(angle)];
	return {
		left: at.left + along * Math.cos(turn) - across * Math.sin(turn),
		top: at.top + along * Math.sin(turn) + across * Math.cos(turn),
	};
}
