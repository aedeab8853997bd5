import type { FittedTrack } from "@baywright/geometry";
import type { CurtainSetOut } from "../bay-plan.ts";
import { bentPlace, bentWithin } from "../curtains/bent-stretch.ts";
import { MEETS } from "../curtains/hangings.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/**
 * Do curtains that meet as they are drawn find there the straight that their overlap needs? Where the system asks for none, do the leading
 * edges of curtains that the job gives meet on a bend?
 */
export function overlapOnBend(
	{ makeUp }: Bay,
	{ overlapStraight }: TrackSystem,
	{ path }: FittedTrack,
	curtains: readonly CurtainSetOut[],
): Finding[] {
	const straight = makeUp.overlap === 0 ? 0 : overlapStraight;
	return curtains.flatMap((left, i): Finding[] => {
		const right = curtains[i + 1];
		if (right === undefined || left.side !== "left" || right.side !== "right") return [];
		if (Math.abs(right.from - left.to) > MEETS || (straight === 0 && left.curtain === null)) return [];
		const at = (left.to + right.from) / 2;
		const half = Math.max(straight, MEETS) / 2;
		const under = straight === 0 ? undefined : Number.POSITIVE_INFINITY;
		const [nearest] = bentWithin(path, { from: at - half, to: at + half }, at, under);
		if (nearest === undefined) return [];
		const { where, figures } = bentPlace(nearest);
		const isGiven = left.curtain !== null && right.curtain !== null;
		return [
			{
				code: straight === 0 ? "leading-edges-on-bend" : "overlap-on-bend",
				where: { station: at, ...where, ...(isGiven ? { curtain: left.curtain } : {}) },
				figures: {
					at,
					...(straight === 0 ? {} : { straight }),
					...figures,
					...(isGiven ? { other: right.curtain } : {}),
				},
				remedies: isGiven ? [] : [drawToOneSide],
			},
		];
	});
}

const drawToOneSide: Remedy = {
	action: "draw-to-one-side",
	figures: {},
	change: [{ op: "replace", path: "/track/draw", value: "left" }],
};
