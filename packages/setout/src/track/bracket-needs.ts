import type { Segment } from "@baywright/geometry";
import type { Joint } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";
import { type BendSpan, besideBend, type LadenBow } from "./bend-spans.ts";
import type { Need } from "./placed.ts";

/** Beside each end of every bend that carries none; on a straight too short for two, one in its middle serves both bends. */
export function besideBends(bends: readonly BendSpan[], system: TrackSystem, length: number): Need[] {
	const { bracket } = system;
	const half = bracket.width / 2;
	const off = besideBend(system);
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

/** On the straight at either end of a tight bow that carries brackets itself, where one is long enough to take one. */
export function besideBows(laden: readonly LadenBow[], system: TrackSystem, segments: readonly Segment[]): Need[] {
	const { besideBendMax, width } = system.bracket;
	const half = width / 2;
	const off = besideBend(system);
	return laden.flatMap(({ bow }): Need[] => {
		const at = segments.indexOf(bow);
		const [before, after] = [segments[at - 1], segments[at + 1]];
		const takes = (segment: Segment | undefined): segment is Segment =>
			segment?.kind === "straight" && !segment.crosses && segment.length >= off + half;
		const needs: Need[] = [];
		if (takes(before)) {
			const high = bow.start - half;
			needs.push({
				role: "bend",
				wanted: bow.start - off,
				low: Math.max(bow.start - besideBendMax, before.start),
				high,
				straight: { low: before.start, high },
			});
		}
		if (takes(after)) {
			const low = after.start + half;
			const to = after.start + after.length;
			needs.push({
				role: "bend",
				wanted: after.start + off,
				low,
				high: Math.min(after.start + besideBendMax, to),
				straight: { low, high: to },
			});
		}
		return needs;
	});
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
