import FlatQueue from "flatqueue";
import { lastThatHolds } from "./halving.ts";
import { LENGTH_SLACK } from "./tolerance.ts";

/** Bends in a row: bend i lies between leg i and leg i + 1. Lengths mm. */
export interface BendRow {
	/** What each leg has for the tangents of its bends: one more than there are bends. */
	readonly room: readonly number[];
	/** tan(|turn|/2) of each bend: its tangent per mm of radius. */
	readonly slope: readonly number[];
	readonly least: readonly number[];
	/** Radius that each bend would have with room to spare; ≥ least. Equal to least where the radius is fixed. */
	readonly goal: readonly number[];
	/** Bends whose tangents do not simply grow with the radius (beside bowed walls), and what they take. */
	readonly curved?: ReadonlyMap<number, Taking>;
}

/** Track that a bend of a given radius takes from its left and its right leg; grows with the radius; null where there is no bend so wide. */
export type Taking = (radius: number) => readonly [left: number, right: number] | null;

/**
 * The fairest widest radii: every bend goes the same share of the way from its least radius to its goal; where a leg becomes
 * full its bends stop there and the others go on. Null where some leg is too short even at the least radii (`starvedLegs`).
 * Legs fill up one after another from a queue, O(n log n).
 */
export function shareRadii(row: BendRow): number[] | null {
	const { room, goal } = row;
	let allReachTheirGoal = true;
	for (let leg = 0; leg < room.length; leg++) {
		if (tangents(row, goal, leg) > at(room, leg)) {
			allReachTheirGoal = false;
			break;
		}
	}
	if (allReachTheirGoal) return goal.slice();
	if (starvedLegs(row).length > 0) return null;
	return fill(row);
}

/** Legs too short even with every bend at its least radius. */
export function starvedLegs(row: BendRow): number[] {
	const starved: number[] = [];
	for (let leg = 0; leg < row.room.length; leg++)
		if (!(tangents(row, row.least, leg) <= at(row.room, leg) + LENGTH_SLACK)) starved.push(leg);
	return starved;
}

/** Radius that bend `bend` could have with its neighbours at `others`, mm. */
export function greatestRadius(row: BendRow, others: readonly number[], bend: number): number {
	const { room, slope, curved } = row;
	const left = at(room, bend) - (bend > 0 ? takes(row, bend - 1, at(others, bend - 1), 1) : 0);
	const right = at(room, bend + 1) - (bend + 1 < slope.length ? takes(row, bend + 1, at(others, bend + 1), 0) : 0);
	if (!curved?.has(bend)) return Math.min(left, right) / at(slope, bend);
	const fits = (radius: number) => takes(row, bend, radius, 0) <= left && takes(row, bend, radius, 1) <= right;
	return lastThatHolds(fits, 0, WIDEST, HALVINGS);
}

/** Radii are not searched beyond this (mm). */
const WIDEST = 100_000;
const HALVINGS = 60;

function fill(row: BendRow): number[] {
	const { room, slope, least, goal, curved } = row;
	const bends = slope.length;
	const radii = goal.slice();
	const open = new Uint8Array(bends).fill(1);
	const queue = new FlatQueue<number>();
	const full = new Float64Array(bends + 1);
	const radiusAt = (bend: number, share: number) =>
		open[bend] === 1 ? at(least, bend) + share * (at(goal, bend) - at(least, bend)) : at(radii, bend);
	const taken = (leg: number, share: number) =>
		(leg > 0 ? takes(row, leg - 1, radiusAt(leg - 1, share), 1) : 0) +
		(leg < bends ? takes(row, leg, radiusAt(leg, share), 0) : 0);

	/** The share at which a leg is full; infinite where it never is. */
	const fullAt = (leg: number): number => {
		const spareAtGoal = at(room, leg) - taken(leg, 1);
		if (spareAtGoal >= 0) return Number.POSITIVE_INFINITY;
		const spareAtLeast = at(room, leg) - taken(leg, 0);
		if (spareAtLeast <= 0) return 0;
		const bendsOut = (leg > 0 && curved?.has(leg - 1)) || (leg < bends && curved?.has(leg));
		if (!bendsOut) return spareAtLeast / (spareAtLeast - spareAtGoal);
		return lastThatHolds((share) => taken(leg, share) <= at(room, leg), 0, 1, HALVINGS);
	};
	const enqueue = (leg: number) => {
		full[leg] = fullAt(leg);
		if (at(full, leg) < 1) queue.push(leg, at(full, leg));
	};
	const close = (bend: number, share: number, otherLeg: number) => {
		if (bend < 0 || bend >= bends || open[bend] !== 1) return;
		radii[bend] = radiusAt(bend, share);
		open[bend] = 0;
		if (at(full, otherLeg) !== DONE) enqueue(otherLeg);
	};

	for (let leg = 0; leg <= bends; leg++) enqueue(leg);
	for (let share = queue.peekValue(); share !== undefined; share = queue.peekValue()) {
		const leg = queue.pop() as number;
		const stale = share !== at(full, leg);
		if (stale) continue;
		full[leg] = DONE;
		close(leg - 1, share, leg - 1);
		close(leg, share, leg + 1);
	}
	return radii;
}

/** Marks a leg whose bends have all stopped. */
const DONE = -1;

/** Track that the bends at both ends of a leg take from it. */
export function tangents(row: BendRow, radii: readonly number[], leg: number): number {
	return (
		(leg > 0 ? takes(row, leg - 1, at(radii, leg - 1), 1) : 0) +
		(leg < row.slope.length ? takes(row, leg, at(radii, leg), 0) : 0)
	);
}

/** Track that a bend takes from its left (0) or right (1) leg; infinite where there is no bend so wide. */
function takes({ slope, curved }: BendRow, bend: number, radius: number, side: 0 | 1): number {
	const taking = curved === undefined || curved.size === 0 ? undefined : curved.get(bend);
	if (taking === undefined) return at(slope, bend) * radius;
	return taking(radius)?.[side] ?? Number.POSITIVE_INFINITY;
}

const at = (values: ArrayLike<number>, index: number): number => values[index] as number;
