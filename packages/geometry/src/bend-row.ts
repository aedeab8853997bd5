import type { Candidate } from "./bend-candidate.ts";
import type { WallChain } from "./chain.ts";
import { stretchOff } from "./face.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import { feetOf } from "./radius-limits.ts";
import { LENGTH_SLACK } from "./tolerance.ts";

/** Candidate bends in a row from the left end of the track, each leg between two of them long enough. */
export interface BendRow {
	readonly candidate: Candidate;
	/** The radius that it has in this row. */
	readonly radius: number;
	/** Where it ends, mm along the face of its right wall. */
	readonly end: number;
	readonly before: BendRow | null;
	/** Bends so far, and those of them that have to be made. */
	readonly count: number;
	readonly made: number;
	/** How far its legs are off the projections preferred, mm in all. */
	readonly moved: number;
	/** The least figure of merit among its bends: see `Wanted`. */
	readonly tightest: number;
	/** Track up to the end of its last bend, mm; of a whole row, all of it. */
	readonly length: number;
}

/** What is looked for in a row of bends. */
export interface Wanted {
	/** The radius that bends have where nothing else decides it, mm; those that cannot have it are left out. */
	readonly radius: number;
	/** What rows are told apart by, as far as one bend is concerned. */
	readonly merit: (candidate: Candidate) => number;
	readonly isBetter: (a: BendRow, b: BendRow) => boolean;
}

/**
 * The best row of bends round every corner of the track, each leg between them at one projection and long enough. Null where there is
 * none. Dynamic programming over the corners from left to right: `candidates` by their first corner.
 */
export function bestRow(
	chain: WallChain,
	preferred: readonly number[],
	candidates: readonly (readonly Candidate[])[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	wanted: Wanted,
): BendRow | null {
	/** By wall and its projection: the rows that end there and may yet be part of the best. */
	const ending = Array.from({ length: end.wall + 1 }, () => new Map<number, BendRow[]>());
	const keep = (row: BendRow) => {
		const { elbow, offRight } = row.candidate;
		const there = ending[elbow.right] as Map<number, BendRow[]>;
		const rows = there.get(offRight) ?? [];
		if (!rows.some((other) => isNeverWorse(other, row, wanted))) rows.push(row);
		there.set(offRight, rows);
	};
	const moved = (wall: number, off: number) => Math.abs(off - (preferred[wall] as number));
	for (let first = start.wall + 1; first <= end.wall; first++) {
		for (const candidate of candidates[first] ?? []) {
			const { elbow, offLeft, offRight, least, greatest, straight, made } = candidate;
			if (!candidate.fixed && wanted.radius > greatest) continue;
			const radius = candidate.fixed ? least : Math.max(least, wanted.radius);
			const feet = feetOf(elbow, radius);
			if (feet === null) continue;
			const stretch = stretchOff(chain, elbow.left, offLeft);
			const sweep = elbow.reverse === null ? radius * Math.abs(elbow.turn) : reverseLength(candidate);
			const merit = wanted.merit(candidate);
			const after = (before: BendRow | null): BendRow | null => {
				const from = before === null ? start.at : before.end;
				const room = (feet.left - from) * stretch;
				const taken = straight + (before === null ? rule.endStraight : before.candidate.straight);
				if (room + LENGTH_SLACK < taken) return null;
				return {
					candidate,
					radius,
					end: feet.right,
					before,
					count: 1 + (before?.count ?? 0),
					made: made + (before?.made ?? 0),
					moved: moved(elbow.right, offRight) + (before?.moved ?? moved(elbow.left, offLeft)),
					tightest: Math.min(merit, before?.tightest ?? Number.POSITIVE_INFINITY),
					length: (before?.length ?? 0) + room + sweep,
				};
			};
			let best = elbow.left === start.wall ? after(null) : null;
			for (const before of ending[elbow.left]?.get(offLeft) ?? []) {
				const row = after(before);
				if (row !== null && (best === null || wanted.isBetter(row, best))) best = row;
			}
			if (best !== null) keep(best);
		}
	}
	let best: BendRow | null = null;
	for (const row of [...(ending[end.wall]?.values() ?? [])].flat()) {
		const { straight, offRight } = row.candidate;
		const room = (end.at - row.end) * stretchOff(chain, end.wall, offRight);
		if (room + LENGTH_SLACK < straight + rule.endStraight) continue;
		const whole = { ...row, length: row.length + room };
		if (best === null || wanted.isBetter(whole, best)) best = whole;
	}
	return best;
}

/** Whatever comes after the other row could come after this one, and make it no worse. */
const isNeverWorse = (one: BendRow, other: BendRow, { isBetter }: Wanted): boolean =>
	one.end <= other.end && one.candidate.straight <= other.candidate.straight && !isBetter(other, one);

function reverseLength({ elbow: { reverse } }: Candidate): number {
	return reverse === null ? 0 : reverse.before.length + reverse.between.length + reverse.after.length;
}

/** A row's bends from left to right. */
export function bendsOfRow(row: BendRow): BendRow[] {
	const bends: BendRow[] = [];
	for (let bend: BendRow | null = row; bend !== null; bend = bend.before) bends.unshift(bend);
	return bends;
}
