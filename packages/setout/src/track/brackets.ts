import {
	type FittedTrack,
	type Point,
	pointAt,
	stationSquareOff,
	tapedFrom,
	type WallFace,
	type WallPlace,
} from "@baywright/geometry";
import type { Bracket, BracketRole, Joint } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { type BendSpan, carryingOf } from "./bend-spans.ts";
import { besideBends, besideBows, besideJoints, nearEnds } from "./bracket-needs.ts";
import { insert, isMet, type Need, type Placed, placeFor } from "./placed.ts";
import { fillSpan, type Interval, nearestAllowed } from "./spread.ts";
import { isInRoom, wholePlace } from "./whole-place.ts";

export interface BracketPlan {
	readonly brackets: readonly Bracket[];
	readonly findings: readonly Finding[];
}

/** Slack (mm) when a distance is compared with a limit. */
const SLACK = 1e-6;

/**
 * Sets out the brackets: the user's pins, one at each joint, one beside each end of every made bend and tight bow, one near each end of the
 * track and one either side of a joint, each serving wherever it already meets another's need; then the fewest more that leave
 * no gap over the system's spacing, as even as can be. Where that cannot be, a finding says so and the rest is placed all the same.
 */
export function placeBrackets(
	bay: Bay,
	system: TrackSystem,
	track: FittedTrack,
	joints: readonly Joint[],
	room: readonly Interval[],
): BracketPlan {
	const findings: Finding[] = [];
	const row: Placed[] = [];
	for (const placed of pins(bay, system, track, room, findings)) insert(row, placed);
	for (const { station } of joints) insert(row, { station, role: "joint" });
	const { bare: bends, laden } = carryingOf(track, system);
	const { length, segments } = track.path;
	meet(besideBends(bends, system, length), (role) => role !== "bend", row, system, track, room, findings);
	meet(besideBows(laden, system, segments), () => true, row, system, track, room, findings);
	meet([...nearEnds(system, length), ...besideJoints(system, joints)], () => true, row, system, track, room, findings);
	const all = fillBetween(row, bends, system, track, room, findings);
	const brackets = all.map((bracket) => taped(track, bracket));
	return { brackets, findings: [...findings, ...outOfReach(brackets, track, system)] };
}

/** Places what is needed and not already served by a bracket of a role that counts. */
function meet(
	needs: readonly Need[],
	counts: (role: BracketRole) => boolean,
	row: Placed[],
	system: TrackSystem,
	track: FittedTrack,
	room: readonly Interval[],
	findings: Finding[],
): void {
	for (const need of needs) {
		if (isMet(row, need, counts)) continue;
		const station = placeFor(row, need, room, system.bracket.width);
		if (station !== null) {
			insert(row, { station, role: need.role });
			continue;
		}
		// On a straight with no place for two, does the bracket of the bend before serve both?
		if (isMet(row, need, () => true)) continue;
		findings.push({
			code: "no-place-for-bracket",
			where: { station: need.wanted, ...wallAt(track, need.wanted) },
			figures: { role: need.role, from: need.low, to: need.high },
			remedies: [],
		});
		// Further off it does not serve the need, but the rest of the straight still has to hang on something.
		const furtherOff =
			need.straight === undefined ? null : placeFor(row, { ...need, ...need.straight }, room, system.bracket.width);
		if (furtherOff !== null) insert(row, { station: furtherOff, role: "field" });
	}
}

function pins(
	{ track: { brackets } }: Bay,
	{ endTakeUp }: TrackSystem,
	track: FittedTrack,
	room: readonly Interval[],
	findings: Finding[],
): Placed[] {
	return brackets.flatMap(({ wall, at }, i) => {
		const station = stationSquareOff(track, wall, at);
		const release: Remedy = {
			action: "release-bracket",
			figures: {},
			change: [{ op: "remove", path: `/track/brackets/${i}` }],
		};
		const where = { wall, ...(station === null ? {} : { station }) };
		if (station === null || Math.min(station, track.path.length - station) < endTakeUp) {
			findings.push({ code: "pin-off-track", where, figures: { at }, remedies: [release] });
			return [];
		}
		if (!isInRoom(room, station)) {
			const better = nearestAllowed(room, station, 0, track.path.length);
			const move = better === null ? [] : [movePin(i, wholePlace(track, room, better))];
			findings.push({ code: "pin-where-no-bracket-goes", where, figures: { at }, remedies: [...move, release] });
		}
		return [{ station, role: "pinned" as const }];
	});
}

const movePin = (i: number, { wall, at }: WallPlace): Remedy => ({
	action: "move-bracket",
	figures: { wall, at },
	change: [{ op: "replace", path: `/track/brackets/${i}`, value: { wall, at } }],
});

function fillBetween(
	placed: readonly Placed[],
	bends: readonly BendSpan[],
	{ bracket }: TrackSystem,
	track: FittedTrack,
	room: readonly Interval[],
	findings: Finding[],
): Placed[] {
	const all: Placed[] = placed.slice(0, 1);
	const fill = (from: number, to: number) => {
		const filling = fillSpan({ from, to, spacing: bracket.maxSpacing, allowed: room, least: bracket.width });
		for (const station of filling.places) all.push({ station, role: "field" });
		if (filling.ok) return;
		const station = filling.blocked === null ? (from + to) / 2 : (filling.blocked[0] + filling.blocked[1]) / 2;
		findings.push({
			code: "bracket-gap-too-wide",
			where: { station, ...wallAt(track, station) },
			figures: { gap: filling.widest, limit: bracket.maxSpacing },
			remedies: [],
		});
	};
	let bend = 0;
	for (let i = 1; i < placed.length; i++) {
		const before = placed[i - 1] as Placed;
		const next = placed[i] as Placed;
		while (bend < bends.length && (bends[bend] as BendSpan).start < before.station) bend++;
		const across = bends[bend];
		if (across === undefined || across.start >= next.station) fill(before.station, next.station);
		else {
			// A straight without the bracket that belongs beside the bend is filled all the same, up to the bend.
			const end = across.start + across.length;
			if (across.start - before.station > bracket.besideBendMax + SLACK) fill(before.station, across.start);
			const last = (all.at(-1) as Placed).station;
			const count = all.length;
			if (next.station - end > bracket.besideBendMax + SLACK) fill(end, next.station);
			const first = all[count]?.station ?? next.station;
			const limit = bracket.acrossBendMax;
			if (limit !== null && first - last > limit + SLACK)
				findings.push({
					code: "brackets-too-far-across-bend",
					where: { ...placeOf(across), station: across.start + across.length / 2 },
					figures: { gap: first - last, limit, ...lastCorner(across.corners) },
					remedies: [],
				});
		}
		all.push(next);
	}
	return all;
}

/** A stretch of bend is told by its first corner, a bow without one by its wall. */
const placeOf = ({ corners, walls }: BendSpan) =>
	corners.length > 0 ? { corner: corners[0] as number } : { wall: walls[0] as number };

/** Where a bend goes round several corners, the last of them. */
const lastCorner = (corners: readonly number[]) => (corners.length > 1 ? { last: corners.at(-1) as number } : {});

/** Brackets on a bend that bridges facets stand nearer to the wall or further off than the legs do. */
function outOfReach(
	brackets: readonly Bracket[],
	{ projections }: FittedTrack,
	{ projection: { min, max } }: TrackSystem,
): Finding[] {
	return brackets.flatMap(({ projection, station, wall, role }, bracket): Finding[] => {
		const isOut = role === "field" && (projection < min - SLACK || projection > max + SLACK);
		// Along a leg it is the wall's own projection, which is refused by itself.
		if (!isOut || Math.abs(projection - (projections[wall] as number)) < SLACK) return [];
		return [
			{
				code: "bracket-out-of-reach",
				where: { bracket, station, wall },
				figures: { projection, min, max },
				remedies: [],
			},
		];
	});
}

/** How sure a place is comes from the survey, once the plan stands. */
const NOT_TAPED = [null, null] as const;

const wallAt = (track: FittedTrack, station: number) => ({ wall: tapedFrom(track, station).wall });

function taped(track: FittedTrack, { station, role }: Placed): Bracket {
	const { wall, at, projection } = tapedFrom(track, station);
	const { faceLength } = track.chain.walls[wall] as WallFace;
	const { at: place } = pointAt(track.path, station) as { at: Point };
	const readings = { fromLeftCorner: at, fromRightCorner: faceLength - at, sd: NOT_TAPED };
	return { station, at: place, wall, ...readings, projection, role };
}
