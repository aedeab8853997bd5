import type { FittedTrack } from "@baywright/geometry";
import type { BowSetOut } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import { bowsIn } from "./bend-spans.ts";

/** Legs along bowed walls: the piece must be bent there too. */
export const bowsOf = (track: FittedTrack): BowSetOut[] =>
	bowsIn(track).map(({ wall, radius, turn, start, length }) => ({
		wall,
		radius,
		turn,
		from: start,
		to: start + length,
		sweep: length,
	}));

/** To what radius over which stretch is said for each. */
export const bowsToBend = (bows: readonly BowSetOut[]): Finding[] =>
	bows.map(({ wall, radius, from, to, sweep }) => ({
		code: "bow-to-be-bent",
		where: { wall, station: (from + to) / 2 },
		figures: { radius, length: sweep, from, to },
		remedies: [],
	}));
