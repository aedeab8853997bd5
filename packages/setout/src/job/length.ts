import { foundText } from "./problem.ts";
import type { LengthUnit } from "./schema.ts";

/** A typed length in mm, or one plain line saying what was typed and what is allowed. */
export type ParsedLength =
	| { readonly ok: true; readonly value: number }
	| { readonly ok: false; readonly message: string };

export interface LengthRule {
	/** Whether a length under 0 is allowed; by default it is not. */
	readonly negative?: boolean;
}

/** mm in an inch, exactly (international yard and pound agreement, 1959; from memory). */
export const INCH = 25.4;

/** Greatest length taken, mm (1 km): whatever is longer was mistyped. */
export const GREATEST_LENGTH = 1_000_000;

/**
 * Reads a length as people type it: `2400`, `2.4 m`, `240cm`, `94 1/2"`, `7' 10 1/2"`, `94½ in`. A bare number is of
 * `unit`. A comma is a decimal comma, except before exactly three digits, where it might part thousands: refused.
 */
export const parseLength = (text: string, unit: LengthUnit, rule: LengthRule = {}): ParsedLength => {
	const refuse = (allowed: string): ParsedLength => ({
		ok: false,
		message: `found ${foundText(text)}, allowed ${allowed}`,
	});
	const plain = plainText(text);
	if (plain === "") return { ok: false, message: `found nothing, allowed ${EXAMPLES[unit]}` };
	if (plain.length > LONGEST_INPUT) return refuse(EXAMPLES[unit]);

	const [, sign = "", size = ""] = /^([+-]?)\s*(.*)$/.exec(plain) ?? [];
	if (sign !== "" && rule.negative !== true) return refuse("a length without a sign");
	const read = readSize(size, unit);
	if (typeof read === "string") return refuse(read);
	if (read.mm > GREATEST_LENGTH) return refuse("a length up to 1 km");
	return { ok: true, value: sign === "-" && read.mm !== 0 ? -read.mm : read.mm };
};

/** Longest text taken, in characters: far more than any length needs. */
const LONGEST_INPUT = 60;

/** Parts of a mm kept (1e-9 mm): far below any tape, and just above what multiplying by 25.4 gets wrong. */
const KEPT = 1e9;

const EXAMPLES: Readonly<Record<LengthUnit, string>> = {
	mm: "a length such as 2400, 240 cm, 2.4 m or 94 1/2 in",
	cm: "a length such as 240, 2400 mm, 2.4 m or 94 1/2 in",
	in: "a length such as 94 1/2, 7' 10 1/2\", 2400 mm or 2.4 m",
};

interface Unit {
	readonly mm: number;
	/** Whether people halve and quarter it. */
	readonly fractions: boolean;
}

const inch: Unit = { mm: INCH, fractions: true };
const foot: Unit = { mm: 12 * INCH, fractions: true };

const UNITS: ReadonlyMap<string, Unit> = new Map([
	["mm", { mm: 1, fractions: false }],
	["cm", { mm: 10, fractions: false }],
	["m", { mm: 1000, fractions: false }],
	...['"', "in", "inch", "inches"].map((mark) => [mark, inch] as const),
	...["'", "ft", "foot", "feet"].map((mark) => [mark, foot] as const),
]);

const VULGAR: Readonly<Record<string, string>> = {
	"½": "1/2",
	"¼": "1/4",
	"¾": "3/4",
	"⅓": "1/3",
	"⅔": "2/3",
	"⅛": "1/8",
	"⅜": "3/8",
	"⅝": "5/8",
	"⅞": "7/8",
};

/** A size without its sign, in mm; a text says what would be allowed instead. */
const readSize = (size: string, unit: LengthUnit): { readonly mm: number } | string => {
	const [, number, mark] = /^([\d.,/ -]*\d[.,]?) ?([a-z"']*)$/.exec(size) ?? [];
	const feet = /^([\d.,/ -]*\d) ?(?:'|ft|foot|feet) ?-? ?(\d[\d.,/ -]*?) ?(?:"|in|inch|inches)?$/.exec(size);
	if (feet !== null) return readFeetAndInches(feet[1] ?? "", feet[2] ?? "");
	if (number === undefined || mark === undefined) return EXAMPLES[unit];

	const written = UNITS.get(mark === "" ? unit : mark);
	if (written === undefined) return "the units mm, cm, m, in and ft";
	const value = readNumber(number);
	if (typeof value === "string") return value;
	if (value.fraction && !written.fractions) return "fractions with in or ft only, as in 94 1/2 in";
	return { mm: kept(value.number * written.mm) };
};

const readFeetAndInches = (feetText: string, inchText: string): { readonly mm: number } | string => {
	const [feet, inches] = [readNumber(feetText), readNumber(inchText)];
	if (typeof feet === "string") return feet;
	if (typeof inches === "string") return inches;
	if (!/^\d+$/.test(feetText)) return "whole feet before inches, as in 7' 10 1/2\"";
	if (inches.number >= 12) return "less than 12 inches after feet, as in 7' 10 1/2\"";
	return { mm: kept((feet.number * 12 + inches.number) * INCH) };
};

interface ReadNumber {
	readonly number: number;
	readonly fraction: boolean;
}

/** `94`, `94.5`, `94,5`, `.5`, `1/2`, `94 1/2`, `94-1/2`. */
const readNumber = (text: string): ReadNumber | string => {
	if (/^\d{1,3}(?:,\d{3})+$/.test(text) && !text.startsWith("0,")) {
		const joined = text.replaceAll(",", "");
		if (text.indexOf(",") !== text.lastIndexOf(",")) return `${joined}, with nothing between thousands`;
		return `${joined} or ${text.replace(",", ".")}: a comma before three digits could mean either`;
	}
	if (/^(?:\d+(?:[.,]\d+)?|\.\d+)$/.test(text)) return { number: Number(text.replace(",", ".")), fraction: false };
	const mixed = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text);
	if (mixed === null) return "one number, as in 2400, 2.4 or 94 1/2";
	const [whole, top, bottom] = [Number(mixed[1] ?? 0), Number(mixed[2]), Number(mixed[3])];
	if (bottom === 0) return "a fraction of something other than 0";
	if (mixed[1] !== undefined && top >= bottom) return "a fraction under 1 after a whole number, as in 94 1/2";
	return { number: whole + top / bottom, fraction: true };
};

/** One way of writing each sign, single spaces, small letters. */
const plainText = (text: string): string =>
	text
		.replace(/(-?)([½¼¾⅓⅔⅛⅜⅝⅞])/g, (_, dash: string, sign: string) => `${dash || " "}${VULGAR[sign]}`)
		.replace(/''|[″”“„‟]|’’|′′/g, '"')
		.replace(/[′’‘‛]/g, "'")
		.replace(/[−–‐‑]/g, "-")
		.replace(/[⁄∕]/g, "/")
		.replace(/\s+/g, " ")
		.trim()
		.toLowerCase();

const kept = (mm: number): number => Math.round(mm * KEPT) / KEPT;
