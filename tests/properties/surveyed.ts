import type { Point } from "@baywright/geometry";
import type { CandidateReading, Reading } from "@baywright/survey";
import { type TrueBay, tape } from "../oracles/tape.ts";

/** Numbers from 0 to 1, the same for the same seed. Source: mulberry32, a public-domain generator; from memory. */
export function dice(seed: number): () => number {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/** Normal with deviation 1 (Box–Muller). */
export const normal = (roll: () => number): number =>
	Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());

export interface BayShape {
	readonly lengths: readonly number[];
	/** Right positive, degrees, between chords. */
	readonly turns: readonly number[];
	/** Shares of the chord. */
	readonly bows: readonly number[];
}

export function shapeOf(roll: () => number, walls: number, { bowed = 0, external = 0 } = {}): BayShape {
	const between = (low: number, high: number) => low + (high - low) * roll();
	return {
		lengths: Array.from({ length: walls }, () => between(400, 2400)),
		// Interior angles of 90° to 165°, and now and then the other way round.
		turns: Array.from({ length: walls - 1 }, () => between(15, 90) * (roll() < external ? -1 : 1)),
		bows: Array.from({ length: walls }, () => (roll() < bowed ? between(0.02, 0.2) * (roll() < 0.5 ? -1 : 1) : 0)),
	};
}

export function bayOf({ lengths, turns, bows }: BayShape, heading = 1): TrueBay {
	let at: Point = { x: 120, y: -80 };
	let towards = heading;
	const corners = [at];
	lengths.forEach((length, wall) => {
		at = { x: at.x + length * Math.cos(towards), y: at.y + length * Math.sin(towards) };
		corners.push(at);
		towards -= ((turns[wall] ?? 0) * Math.PI) / 180;
	});
	return { corners, rises: bows.map((bow, wall) => bow * (lengths[wall] as number)) };
}

/** The same shape with every length, turn and bow off by up to this share. */
export function misdrawn(shape: BayShape, share: number, roll: () => number): BayShape {
	const off = (figure: number) => figure * (1 + share * (2 * roll() - 1));
	return { lengths: shape.lengths.map(off), turns: shape.turns.map(off), bows: shape.bows.map(off) };
}

/** Taken of a bay without error. */
export const taken = (bay: TrueBay, what: CandidateReading): Reading => ({ ...what, value: tape(bay, what) });

export const runsOf = (walls: number): CandidateReading[] =>
	Array.from({ length: walls }, (_, wall) => ({ kind: "run", wall, sd: null }));

export const diagonalsOf = (walls: number): CandidateReading[] =>
	Array.from({ length: walls + 1 }, (_, from) => from).flatMap((from) =>
		Array.from(
			{ length: Math.max(0, walls - from - 1) },
			(_, i): CandidateReading => ({ kind: "diagonal", from, to: from + 2 + i, sd: null }),
		),
	);

export const anglesOf = (walls: number): CandidateReading[] =>
	Array.from({ length: walls - 1 }, (_, i) => ({ kind: "angle", corner: i + 1, sd: null }));

export const risesOf = ({ rises }: TrueBay): CandidateReading[] =>
	rises.flatMap((rise, wall): CandidateReading[] => (rise === 0 ? [] : [{ kind: "rise", wall, at: null, sd: null }]));
