import type { Joint } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";
import type { BendSpan } from "./bend-spans.ts";
import type { Need } from "./placed.ts";

/** Beside each end of every bend that carries none; on a straight too short for two, one in its middle serves both bends. */
export function besideBends(
	bends: readonly BendSpan[],
	{ bracket, straightBesideBend }: TrackSystem,
	length: number,
): Need[] {
	const half = bracket.width / 2;
	const off = Math.max(half, straightBesideBend / 2);
	const needs: Need[] = [];
	bends.forEach((bend, i) => {
		const from = i === 0 ? 0 : endOf(bends[i - 1] as BendSpan);
		const to = bends[i + 1]?.start ?? length;
		const end = endOf(bend);
		const shared = (gap: number) => gap < 2 * off + bracket.width;
		if (i === 0 || !shared(bend.start - from))
			needs.push({
				role: "bend",
				wanted: bend.start - off,
				low: Math.max(bend.start - bracket.besideBendMax, from),
				high: bend.start - half,
				straight: { low: from, high: bend.start },
			});
		if (i + 1 < bends.length && shared(to - end))
			needs.push({ role: "bend", wanted: (end + to) / 2, low: end, high: to });
		else
			needs.push({
				role: "bend",
				wanted: end + off,
				low: end + half,
				high: Math.min(end + bracket.besideBendMax, to),
				straight: { low: end, high: to },
			});
	});
	return needs;
}

const endOf = ({ start, length }: BendSpan): number => start + length;

/** Within reach of each cut end, clear of its hardware. */
export function nearEnds({ bracket, endTakeUp }: TrackSystem, length: number): Need[] {
	const nearest = bracket.width / 2;
	const wanted = Math.max(nearest, bracket.endMax / 2);
	const right = length - endTakeUp;
	return [
		{ role: "end", wanted: endTakeUp + wanted, low: endTakeUp + nearest, high: endTakeUp + bracket.endMax },
		{ role: "end", wanted: right - wanted, low: right - bracket.endMax, high: right - nearest },
	];
}

/** A companion either side of each joint's own bracket. */
export function besideJoints({ bracket }: TrackSystem, joints: readonly Joint[]): Need[] {
	const { jointCompanion: far, width: near } = bracket;
	return joints.flatMap(({ station }): Need[] => [
		{ role: "companion", wanted: station - far, low: station - far, high: station - near },
		{ role: "companion", wanted: station + far, low: station + near, high: station + far },
	]);
}
