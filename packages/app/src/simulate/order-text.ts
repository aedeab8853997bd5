import { GREATEST_SEED, type MeasuringErrors, parseDegrees } from "@baywright/setout";
import { readLength } from "../fields/read-length.ts";
import type { Reading } from "../fields/typed-field.tsx";

/** The form as typed. */
export interface OrderText {
	readonly count: string;
	readonly seed: string;
	readonly tape: string;
	readonly bevel: string;
}

interface Order {
	readonly count: number;
	readonly seed: number;
	readonly errors: MeasuringErrors;
}

export type ReadOrder =
	| { readonly ok: true; readonly order: Order }
	| { readonly ok: false; readonly refused: OrderText };

const MOST_BAYS = 100_000;
/** Nobody tapes better or worse than this, mm and degrees. */
const TAPE = [0.01, 50] as const;
const BEVEL = [0.01, 20] as const;

/** Reads the whole form; of each field that will not do it is said what would ("" for the others). */
export function readOrder(text: OrderText): ReadOrder {
	const count = wholeNumber(text.count, 1, MOST_BAYS);
	const seed = wholeNumber(text.seed, 0, GREATEST_SEED);
	const tape = readLength(text.tape, "mm", { least: TAPE[0], greatest: TAPE[1] });
	const bevel = degrees(text.bevel);
	if (count.ok && seed.ok && tape.ok && bevel.ok)
		return {
			ok: true,
			order: { count: count.value, seed: seed.value, errors: { tape: tape.value, bevel: bevel.value } },
		};
	const why = (reading: Reading<number>) => (reading.ok ? "" : reading.message);
	return { ok: false, refused: { count: why(count), seed: why(seed), tape: why(tape), bevel: why(bevel) } };
}

function wholeNumber(text: string, least: number, most: number): Reading<number> {
	const typed = text.trim();
	const number = /^\d{1,10}$/.test(typed) ? Number(typed) : Number.NaN;
	if (number >= least && number <= most) return { ok: true, value: number };
	return { ok: false, message: `${found(typed)}write a whole number from ${least} to ${most}.` };
}

function degrees(text: string): Reading<number> {
	const typed = text.trim();
	const value = parseDegrees(typed);
	if (value !== null && value >= BEVEL[0] && value <= BEVEL[1]) return { ok: true, value };
	return { ok: false, message: `${found(typed)}write degrees from ${BEVEL[0]} to ${BEVEL[1]}.` };
}

const found = (typed: string): string => (typed === "" ? "Nothing is written: " : `“${typed}” will not do: `);
