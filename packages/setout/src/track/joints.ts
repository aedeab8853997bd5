import { type FittedTrack, stationSquareOff, tapedFrom, type WallPlace } from "@baywright/geometry";
import type { Joint } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { bowsIn, madeBends } from "./bend-spans.ts";
import { type Interval, nearestAllowed, subtract } from "./intervals.ts";
import { middleOfGlass } from "./opening-stations.ts";
import { isInRoom, wholePlace } from "./whole-place.ts";

export interface JointPlan {
	readonly joints: readonly Joint[];
	readonly findings: readonly Finding[];
}

/** Slack (mm) when a place is compared with the edge of an allowed stretch. */
const SLACK = 1e-6;

/**
 * Where pieces of the track meet. The user's own places are kept and questioned; otherwise there are as few joints as
 * the longest stock length allows, on straights clear of the bends, the first choice being the middle of the straight
 * nearest to where even pieces would meet (for one joint: the middle of the glass).
 */
export function placeJoints(
	bay: Bay,
	system: TrackSystem,
	track: FittedTrack,
	bracketRoom: readonly Interval[],
): JointPlan {
	const room = jointRoom(track, system, bracketRoom);
	const { joints } = bay.track;
	if (joints === "none" || (joints === "auto" && system.joint === null)) return { joints: [], findings: [] };
	if (joints === "auto") return { joints: autoStations(bay, system, track, room).map(jointAt(track)), findings: [] };
	if (system.joint === null && joints.length > 0)
		return {
			joints: [],
			findings: [{ code: "cannot-be-joined", where: {}, figures: { system: system.name }, remedies: [noJoints] }],
		};
	return ownJoints(bay, track, system, room);
}

const noJoints: Remedy = {
	action: "no-joints",
	figures: {},
	change: [{ op: "replace", path: "/track/joints", value: "none" }],
};

const jointAt =
	(track: FittedTrack) =>
	(station: number): Joint => {
		const { wall, at } = tapedFrom(track, station);
		return { station, wall, at };
	};

/** Straights, clear of made bends and bows, where a bracket can go too. */
function jointRoom(
	track: FittedTrack,
	{ joint, endTakeUp, bracket }: TrackSystem,
	bracketRoom: readonly Interval[],
): Interval[] {
	const { length } = track.path;
	const clear = joint?.clearOfBend ?? 0;
	const least = endTakeUp + bracket.width;
	const bends = [...madeBends(track), ...bowsIn(track)].map(
		({ start, length: long }): Interval => [start - clear, start + long + clear],
	);
	return subtract(bracketRoom, [...bends, [0, least], [length - least, length]]);
}

function ownJoints(bay: Bay, track: FittedTrack, system: TrackSystem, room: readonly Interval[]): JointPlan {
	const joints: Joint[] = [];
	const findings: Finding[] = [];
	const places = bay.track.joints as readonly { readonly wall: number; readonly at: number }[];
	places.forEach(({ wall, at }, i) => {
		const station = stationSquareOff(track, wall, at);
		const remove: Remedy = {
			action: "remove-joint",
			figures: {},
			change: [{ op: "remove", path: `/track/joints/${i}` }],
		};
		if (station === null || beyondCutEnd(station, track, system)) {
			findings.push({ code: "joint-off-track", where: { wall, joint: i }, figures: { at }, remedies: [remove] });
			return;
		}
		joints.push({ station, wall, at: tapedFrom(track, station).at });
		if (isInRoom(room, station)) return;
		const better = nearestAllowed(room, station, 0, track.path.length);
		const move = better === null ? [] : [moveJoint(i, wholePlace(track, room, better))];
		findings.push({
			code: "joint-badly-placed",
			where: { wall, joint: i, station },
			figures: { clear: system.joint?.clearOfBend ?? 0 },
			remedies: [...move, remove],
		});
	});
	joints.sort((a, b) => a.station - b.station);
	return { joints: joints.filter(({ station }, i) => station - (joints[i - 1]?.station ?? -1) > SLACK), findings };
}

/** Nearer to a cut end than a bracket is wide: no piece that short can be hung. */
const beyondCutEnd = (station: number, { path }: FittedTrack, { endTakeUp, bracket }: TrackSystem): boolean =>
	Math.min(station, path.length - station) < endTakeUp + bracket.width;

const moveJoint = (i: number, { wall, at }: WallPlace): Remedy => ({
	action: "move-joint",
	figures: { wall, at },
	change: [{ op: "replace", path: `/track/joints/${i}`, value: { wall, at } }],
});

function autoStations(bay: Bay, system: TrackSystem, track: FittedTrack, room: readonly Interval[]): number[] {
	const longest = Math.max(...system.stock.map(({ length }) => length));
	const { length } = track.path;
	const reach = furthestReach(length, longest, system.endTakeUp, room);
	if (reach === null) return [];
	const count = reach.furthest.length;
	const middle = count === 1 ? (middleOfGlass(bay, track) ?? length / 2) : length / 2;
	const stations: number[] = [];
	for (let i = 0; i < count; i++) {
		const before = stations.at(-1);
		const low = Math.max(reach.nearest[i] as number, before ?? 0);
		const high = Math.min(reach.furthest[i] as number, before === undefined ? length : before + longest);
		const wanted = count === 1 ? middle : ((i + 1) * length) / (count + 1);
		stations.push(onStraightNear(room, wanted, low, high) ?? (reach.furthest[i] as number));
	}
	return stations;
}

/**
 * For the fewest joints that leave no piece over the longest stock: how far right and how far left each can be.
 * End pieces may be longer by what the end hardware takes off. Null where no joints do.
 */
function furthestReach(
	length: number,
	longest: number,
	takeUp: number,
	room: readonly Interval[],
): { readonly furthest: readonly number[]; readonly nearest: readonly number[] } | null {
	const furthest: number[] = [];
	for (let from = takeUp; length - takeUp - from > longest + SLACK; ) {
		const next = nearestAllowed(room, from + longest, from + SLACK, from + longest);
		if (next === null) return null;
		furthest.push(next);
		from = next;
	}
	const nearest: number[] = [];
	for (let i = furthest.length - 1, to = length - takeUp; i >= 0; i--) {
		const before = nearestAllowed(room, to - longest, to - longest, to - SLACK);
		if (before === null) return null;
		nearest.unshift(before);
		to = before;
	}
	return { furthest, nearest };
}

/** The middle of the straight nearest to `wanted` (of equals the longest), as far as [low, high] lets it. */
function onStraightNear(room: readonly Interval[], wanted: number, low: number, high: number): number | null {
	let best: { readonly off: number; readonly long: number; readonly at: number } | null = null;
	for (const [from, to] of room) {
		if (to < low || from > high) continue;
		const off = Math.max(from - wanted, wanted - to, 0);
		const long = to - from;
		const at = Math.min(Math.max((from + to) / 2, low), high);
		const better = best === null || off < best.off - SLACK || (off < best.off + SLACK && long > best.long + SLACK);
		if (better) best = { off, long, at };
	}
	return best?.at ?? null;
}
