import type { BracketRole } from "../bay-plan.ts";
import { firstEndingAt, type Interval, nearestAllowed, subtract } from "./intervals.ts";

export interface Placed {
	readonly station: number;
	readonly role: BracketRole;
}

/** A bracket that must be there: within [low, high], as near to `wanted` as can be. Stations, mm. */
export interface Need {
	readonly role: BracketRole;
	readonly wanted: number;
	readonly low: number;
	readonly high: number;
	/** The whole straight beside the bend that the bracket belongs to. */
	readonly straight?: { readonly low: number; readonly high: number };
}

/** Slack (mm) when a station is compared with the edge of its window. */
const SLACK = 1e-6;

/** Index of the first bracket of a sorted row at or after a station. */
function firstAtOrAfter(row: readonly Placed[], station: number): number {
	let low = 0;
	let high = row.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if ((row[middle] as Placed).station < station) low = middle + 1;
		else high = middle;
	}
	return low;
}

/** Adds a bracket to a row, which stays sorted. */
export function insert(row: Placed[], placed: Placed): void {
	row.splice(firstAtOrAfter(row, placed.station), 0, placed);
}

/** Does a bracket of one of these roles already stand in the need's window? */
export function isMet(row: readonly Placed[], { low, high }: Need, by: (role: BracketRole) => boolean): boolean {
	for (let i = firstAtOrAfter(row, low - SLACK); i < row.length && (row[i] as Placed).station <= high + SLACK; i++)
		if (by((row[i] as Placed).role)) return true;
	return false;
}

/** The allowed place nearest to the one wanted that keeps `apart` mm from every bracket of the row; null where there is none. */
export function placeFor(
	row: readonly Placed[],
	{ wanted, low, high }: Need,
	room: readonly Interval[],
	apart: number,
): number | null {
	const near: Interval[] = [];
	for (let i = firstEndingAt(room, low); i < room.length && (room[i] as Interval)[0] <= high; i++)
		near.push(room[i] as Interval);
	const taken: Interval[] = [];
	for (let i = firstAtOrAfter(row, low - apart); i < row.length && (row[i] as Placed).station < high + apart; i++) {
		const { station } = row[i] as Placed;
		taken.push([station - apart, station + apart]);
	}
	return nearestAllowed(taken.length === 0 ? near : subtract(near, taken), wanted, low, high);
}
