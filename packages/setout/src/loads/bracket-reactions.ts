import { addShares, type InfluenceLines, influenceLines } from "./influence.ts";
import { extremesOf, type HungCurtain } from "./worst-position.ts";

/** A track laid out straight, with what carries it. Stations and lengths mm. */
export interface CarriedTrack {
	readonly length: number;
	/** Stations of the brackets, ascending. */
	readonly brackets: readonly number[];
	/** Brackets within this of each other hold as one: the beam's rigid points would act as a clamp there, which no bracket is. */
	readonly bracketWidth: number;
	/** kg for each metre of track. */
	readonly massPerMetre: number;
}

/** Load on one bracket, kg; less than nought where the track lifts. */
export interface Reactions {
	/** All curtains drawn. */
	readonly drawn: number;
	/** All drawn back. */
	readonly stacked: number;
	/** Every curtain left where it loads this bracket most, and least. */
	readonly worst: number;
	readonly least: number;
}

/**
 * Load on every bracket of the developed strip: a continuous beam over the brackets, joints as stiff as the track, torsion at bends left out. A
 * curtain whose mass is not known counts as nothing. With one bracket all hangs on it; with none nothing is told.
 */
export function bracketReactions(track: CarriedTrack, curtains: readonly HungCurtain[]): Reactions[] {
	const groups = heldAsOne(track.brackets, track.bracketWidth);
	const lines = influenceLines(groups.map(middleOf));
	const own = new Float64Array(groups.length);
	addShares(lines, { from: 0, to: track.length }, (track.massPerMetre * track.length) / 1000, own);
	const hung = loadsOf(curtains, own, lines);
	return groups.flatMap((group, i) => {
		const of = (loads: Float64Array) => (loads[i] as number) / group.length;
		const reactions = {
			drawn: of(hung.drawn),
			stacked: of(hung.stacked),
			worst: of(hung.worst),
			least: of(hung.least),
		};
		return group.map(() => reactions);
	});
}

/** The beam is linear: what each curtain brings by itself adds up, and its worst place does not depend on where the others are. */
function loadsOf(curtains: readonly HungCurtain[], own: Float64Array, lines: InfluenceLines) {
	const [drawn, stacked, worst, least] = [own.slice(), own.slice(), own.slice(), own.slice()];
	for (const curtain of curtains) {
		if (curtain.mass === null) continue;
		addShares(lines, curtain, curtain.mass, drawn);
		addShares(lines, curtain.stack, curtain.mass, stacked);
		const extremes = extremesOf(curtain, curtain.mass, lines);
		for (let i = 0; i < own.length; i++) {
			worst[i] = (worst[i] as number) + (extremes.most[i] as number);
			least[i] = (least[i] as number) + (extremes.least[i] as number);
		}
	}
	return { drawn, stacked, worst, least };
}

/** Less than this (mm) between two brackets is no span. */
const LEAST_SPAN = 1;

/** Brackets that stand closer than one is wide, together; each carries the same, so that the whole acts at their middle. */
function heldAsOne(brackets: readonly number[], width: number): number[][] {
	const groups: number[][] = [];
	for (const station of brackets) {
		const last = groups.at(-1);
		if (last !== undefined && station - (last[0] as number) < Math.max(width, LEAST_SPAN) - SLACK) last.push(station);
		else groups.push([station]);
	}
	return groups;
}

/** Two brackets exactly one width apart are two, however their stations were rounded, mm. */
const SLACK = 1e-6;

const middleOf = (group: readonly number[]): number => group.reduce((sum, station) => sum + station, 0) / group.length;
