import FlatQueue from "flatqueue";
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
}

/**
 * The fairest widest radii: every bend goes the same share of the way from its least radius to its goal; where a leg becomes
 * full its bends stop there and the others go on. Null where some leg is too short even at the least radii (`starvedLegs`).
 * Legs fill up one after another from a queue, O(n log n).
 */
export function shareRadii(row: BendRow): number[] | null {
	const { room, slope, goal } = row;
	const bends = slope.length;
	let allReachTheirGoal = true;
	for (let leg = 0; leg <= bends; leg++) {
		const l = leg - 1;
		const taken = (l >= 0 ? at(slope, l) * at(goal, l) : 0) + (leg < bends ? at(slope, leg) * at(goal, leg) : 0);
		if (taken > at(room, leg)) {
			allReachTheirGoal = false;
			break;
		}
	}
	if (allReachTheirGoal) return goal.slice();
	if (starvedLegs(row).length > 0) return null;
	return fill(row);
}

/** Legs too short even with every bend at its least radius. */
export function starvedLegs({ room, slope, least }: BendRow): number[] {
	const starved: number[] = [];
	for (let leg = 0; leg < room.length; leg++)
		if (tangents(slope, least, leg) > at(room, leg) + LENGTH_SLACK) starved.push(leg);
	return starved;
}

/** Radius that bend `bend` could have with its neighbours at `others`, mm. */
export function greatestRadius({ room, slope }: BendRow, others: readonly number[], bend: number): number {
	const before = bend > 0 ? at(slope, bend - 1) * at(others, bend - 1) : 0;
	const after = bend + 1 < slope.length ? at(slope, bend + 1) * at(others, bend + 1) : 0;
	return Math.min(at(room, bend) - before, at(room, bend + 1) - after) / at(slope, bend);
}

function fill({ room, slope, least, goal }: BendRow): number[] {
	const bends = slope.length;
	const radii = goal.slice();
	const open = new Uint8Array(bends).fill(1);
	const spare = new Float64Array(bends + 1);
	const rate = new Float64Array(bends + 1);
	const queue = new FlatQueue<number>();

	const growth = (bend: number) => at(slope, bend) * (at(goal, bend) - at(least, bend));
	const rateOf = (leg: number) =>
		(leg > 0 && open[leg - 1] ? growth(leg - 1) : 0) + (leg < bends && open[leg] ? growth(leg) : 0);
	const fullAt = (leg: number) => Math.max(0, at(spare, leg) / at(rate, leg));

	for (let leg = 0; leg <= bends; leg++) {
		spare[leg] = at(room, leg) - tangents(slope, least, leg);
		rate[leg] = rateOf(leg);
		if (at(rate, leg) > 0 && fullAt(leg) < 1) queue.push(leg, fullAt(leg));
	}

	const close = (bend: number, share: number, otherLeg: number) => {
		if (bend < 0 || bend >= bends || !open[bend]) return;
		open[bend] = 0;
		radii[bend] = at(least, bend) + share * (at(goal, bend) - at(least, bend));
		spare[otherLeg] = at(spare, otherLeg) - share * growth(bend);
		rate[otherLeg] = rateOf(otherLeg);
		if (at(rate, otherLeg) > 0 && fullAt(otherLeg) < 1) queue.push(otherLeg, fullAt(otherLeg));
	};

	for (let share = queue.peekValue(); share !== undefined; share = queue.peekValue()) {
		const leg = queue.pop() as number;
		const stale = at(rate, leg) <= 0 || share !== fullAt(leg);
		if (stale) continue;
		rate[leg] = 0;
		close(leg - 1, share, leg - 1);
		close(leg, share, leg + 1);
	}
	return radii;
}

function tangents(slope: readonly number[], radii: readonly number[], leg: number): number {
	return (
		(leg > 0 ? at(slope, leg - 1) * at(radii, leg - 1) : 0) + (leg < slope.length ? at(slope, leg) * at(radii, leg) : 0)
	);
}

const at = (values: ArrayLike<number>, index: number): number => values[index] as number;
