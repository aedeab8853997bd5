import type { WallChain, WallFace } from "./chain.ts";
import type { Corridor } from "./corridor.ts";
import { footOnFace } from "./face.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import type { Point } from "./point.ts";
import { inLineAfter, inLineBefore, wallsPassedFrom } from "./straight-past.ts";
import { LENGTH_SLACK, NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** Most projections tried for one leg beyond its own three. */
const MOST = 9;

/** What a sprung turn may take off the room between a leg and what it passes, mm: under 3° never more. */
const SPRUNG_OFF = 0.3;

/** By wall: the leg's own projections (the usual one and the outermost), and these with those that put it in line with others. */
export interface ProjectionsToTry {
	readonly own: readonly (readonly number[])[];
	readonly all: readonly (readonly number[])[];
}

/**
 * The projections worth trying for the leg along each wall: the one given, the corridor's least and greatest, and those that put it in
 * line with a leg further on or clear it straight past what lies between, that one at whole mm. Along a bowed wall, and where a
 * projection is to be kept, the one given alone.
 */
export function projectionsToTry(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	corridor: Corridor,
): ProjectionsToTry {
	const { least, greatest } = corridor;
	const own = projections.map((usual, wall) => {
		const kept = corridor.kept?.has(wall) || (chain.walls[wall] as WallFace).bow !== null;
		if (kept) return [usual];
		return [...new Set([Math.min(Math.max(usual, least), greatest), least, greatest])];
	});
	const all = own.map((offs) => offs.slice());
	const add = (wall: number, off: number) => {
		const tried = all[wall] as number[];
		const { length } = own[wall] as number[];
		if (length === 1 || tried.length >= length + MOST) return;
		if (!(off >= least - LENGTH_SLACK && off <= greatest + LENGTH_SLACK)) return;
		if (tried.some((other) => Math.abs(other - off) < LENGTH_SLACK)) return;
		tried.push(off);
	};
	const pairs: (readonly [first: number, last: number])[] = [];
	for (let first = start.wall + 1; first <= end.wall; first++) {
		if (Math.abs(chain.turns[first] as number) < SLIGHT_TURN) continue;
		for (const last of wallsPassedFrom(chain, first, end.wall, rule)) pairs.push([first, last]);
	}

	for (const [first, last] of pairs) add(first - 1, clearOfAll(chain, first, last, least));
	for (const [first, last] of pairs)
		for (const off of all[first - 1] as number[]) add(last, inLineAfter(chain, first, last, off));
	for (const [first, last] of pairs.toReversed())
		for (const off of all[last] as number[]) add(first - 1, inLineBefore(chain, first, last, off));
	for (const [first, last] of pairs)
		for (const off of all[first - 1] as number[]) add(last, inLineAfter(chain, first, last, off));
	return { own, all };
}

/** The least projection along the wall on the left of `first` with which a straight track to that on the right of `last` is `least` clear of every corner between. */
function clearOfAll(chain: WallChain, first: number, last: number, least: number): number {
	const left = first - 1;
	const { length } = chain.walls[left] as WallFace;
	const beyond = footOnFace(chain, left, chain.corners[last] as Point).at;
	const ahead = inLineAfter(chain, first, last, 0);
	let deepest = 0;
	for (let corner = first; corner <= last; corner++) {
		const p = chain.corners[corner] as Point;
		const foot = footOnFace(chain, left, p);
		const past = foot.at > (length + beyond) / 2;
		deepest = Math.max(deepest, past ? footOnFace(chain, last, p).off - ahead : foot.off);
	}
	let turn = 0;
	for (let corner = first; corner <= last; corner++) turn += chain.turns[corner] as number;
	return Math.ceil(least + deepest + (Math.abs(turn) < NO_TURN ? -LENGTH_SLACK : SPRUNG_OFF));
}
