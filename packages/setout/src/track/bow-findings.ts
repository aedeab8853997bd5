import { type Bow, type FittedTrack, LENGTH_SLACK, type Segment } from "@baywright/geometry";
import type { Bracket } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import type { TrackSystem } from "../library/system.ts";
import { bowsIn, carryingOf, type LadenBow } from "./bend-spans.ts";

/** What a bow asks of the track and does not get: brackets on a bow too tight for them, straight track beside it and at the track's ends. */
export function bowFindings(system: TrackSystem, track: FittedTrack, brackets: readonly Bracket[]): Finding[] {
	const bows = bowsIn(track);
	if (bows.length === 0) return [];
	const { laden } = carryingOf(track, system);
	return [
		...endsOnBows(system, track),
		...laden.flatMap((bow) => onTightBow(bow, system, brackets)),
		...shortStraights(bows, system, track),
	];
}

/** Nearer to the curve than this (mm) end hardware sits as on a straight. */
const SITS = 0.1;

/** End hardware is straight: on a bow its two ends meet the curve and its middle stands off it. */
function endsOnBows({ endTakeUp }: TrackSystem, { path: { segments } }: FittedTrack): Finding[] {
	const last = segments.findLast(isLeg);
	return [["left", segments.find(isLeg)] as const, ["right", last] as const].flatMap(([end, segment]): Finding[] => {
		if (segment?.kind !== "bow") return [];
		const { wall, radius, start, length } = segment;
		const off = radius - Math.sqrt(Math.max(0, radius ** 2 - (endTakeUp / 2) ** 2));
		if (off < SITS) return [];
		return [
			{
				code: "end-on-bow",
				where: { wall, end, station: end === "left" ? start : start + length },
				figures: { radius, straight: endTakeUp, off },
				remedies: [],
			},
		];
	});
}

const isLeg = ({ kind }: Segment): boolean => kind !== "bend";

/** Brackets that stand on a bow under the carrying radius because it is too long to hang free. */
function onTightBow({ bow, gap, limit }: LadenBow, system: TrackSystem, brackets: readonly Bracket[]): Finding[] {
	const { wall, radius, start, length } = bow;
	const half = system.bracket.width / 2;
	const count = brackets.filter(({ station }) => station > start - half && station < start + length + half).length;
	if (count === 0) return [];
	const { carryRadius } = system.bracket;
	const carries = carryRadius === null ? {} : { least: carryRadius };
	return [
		{
			code: "brackets-on-tight-bow",
			where: { wall, station: start + length / 2 },
			figures: { radius, count, gap, limit, ...carries },
			remedies: [],
		},
	];
}

/** Where a straight leg runs into a tight bow, as much straight is needed as beside a bend; the other end of it has its own needs. */
function shortStraights(bows: readonly Bow[], system: TrackSystem, { path }: FittedTrack): Finding[] {
	const { straightBesideBend: beside, endTakeUp } = system;
	const { carryRadius } = system.bracket;
	const { segments } = path;
	const isTight = (segment: Segment | undefined) =>
		segment?.kind === "bow" && (carryRadius === null || segment.radius < carryRadius);
	const takes = (segment: Segment | undefined) =>
		segment === undefined ? endTakeUp : isTight(segment) || (segment.kind === "bend" && !segment.sprung) ? beside : 0;
	if (!bows.some(isTight)) return [];
	return segments.flatMap((segment, i): Finding[] => {
		if (segment.kind !== "straight" || segment.crosses) return [];
		const [before, after] = [nextTo(segments, i, -1), nextTo(segments, i, 1)];
		if (!isTight(before) && !isTight(after)) return [];
		const { wall, length, start } = segment;
		const needed = takes(before) + takes(after);
		if (length >= needed - LENGTH_SLACK) return [];
		return [
			{
				code: "straight-beside-bow-short",
				where: { wall, station: start + length / 2 },
				figures: { length, needed },
				remedies: [],
			},
		];
	});
}

/** The neighbour of a segment, sprung bends passed over. */
function nextTo(segments: readonly Segment[], i: number, way: 1 | -1): Segment | undefined {
	const next = segments[i + way];
	return next?.kind === "bend" && next.sprung ? segments[i + 2 * way] : next;
}
