import { parseDegrees } from "../job/angle.ts";
import type { Bay } from "../job/bay-schema.ts";
import { INCH, parseLength } from "../job/length.ts";
import { foundText } from "../job/problem.ts";
import type { Reading } from "../job/reading-schema.ts";
import type { LengthUnit } from "../job/schema.ts";
import { type CsvLine, csvField, readCsv } from "./csv.ts";
import { type Named, namedCorner, namedWall, typedCorner } from "./typed-places.ts";

/** The headings of a file of readings. Each kind of reading fills its own and leaves the others empty. */
const HEADINGS = ["kind", "wall", "corner", "from", "to", "arm", "at", "value", "sd"] as const;
type Heading = (typeof HEADINGS)[number];

/** What each kind needs besides its value; `at` may be left out (mid-chord), and `sd` always (the kind's usual one). */
const NEEDS: Readonly<Record<Reading["kind"], readonly Heading[]>> = {
	run: ["wall"],
	diagonal: ["from", "to"],
	angle: ["corner"],
	chord: ["corner", "arm"],
	rise: ["wall", "at"],
	square: ["corner", "wall"],
};
const KINDS = Object.keys(NEEDS) as Reading["kind"][];

/** Something wrong in a file of readings: on which line, in which column (empty for the line as a whole), what is there and what may be. */
export interface CsvProblem {
	readonly line: number;
	readonly column: string;
	/** `found …, allowed …` */
	readonly message: string;
}

export type ReadingsCsv =
	| { readonly ok: true; readonly readings: readonly Reading[] }
	| { readonly ok: false; readonly problems: readonly CsvProblem[] };

export const csvProblemLine = ({ line, column, message }: CsvProblem): string =>
	`line ${line}${column === "" ? "" : `, ${column}`}: ${message}`;

/**
 * Readings from a CSV text with the headings kind, wall, corner, from, to, arm, at, value, sd in any order; only those that are needed must be
 * there. Bare lengths are in `unit`, angles in degrees. Walls count from 1 at the left or go by their name, corners are called as on screen:
 * left end, 1, 2, …, right end. All readings or none: every bad field is told.
 */
export function readReadingsCsv(text: string, bay: Pick<Bay, "walls">, unit: LengthUnit): ReadingsCsv {
	const csv = readCsv(text);
	if (!csv.ok) return { ok: false, problems: [{ line: csv.line, column: "", message: csv.message }] };
	const [head, ...body] = csv.lines;
	const columns = headingsOf(head);
	if (!Array.isArray(columns)) return { ok: false, problems: [columns as CsvProblem] };
	const problems: CsvProblem[] = [];
	const readings = body.flatMap((line): Reading[] => {
		const found: CsvProblem[] = [];
		const reading = readLine(line, columns, bay.walls.length, unit, (column, message) =>
			found.push({ line: line.line, column, message }),
		);
		problems.push(...found);
		return reading === null || found.length > 0 ? [] : [reading];
	});
	return problems.length > 0 ? { ok: false, problems } : { ok: true, readings };
}

/** The bay's readings as such a file, bare lengths in `unit`. */
export function writeReadingsCsv({ readings, walls }: Pick<Bay, "readings" | "walls">, unit: LengthUnit): string {
	const lines = readings.map((reading) => {
		const fields = fieldsOf(reading, walls.length, unit);
		return HEADINGS.map((heading) => csvField(fields[heading] ?? "")).join(",");
	});
	return `${[HEADINGS.join(","), ...lines].join("\r\n")}\r\n`;
}

const isHeading = (name: string): name is Heading => HEADINGS.some((each) => each === name);

function headingsOf(head: CsvLine | undefined): Heading[] | CsvProblem {
	const allowed = `the headings ${HEADINGS.join(", ")}`;
	if (head === undefined) return { line: 1, column: "", message: `found nothing, allowed ${allowed}` };
	const names = head.fields.map((field) => field.trim().toLowerCase());
	// Spreadsheets leave empty columns at the right.
	while (names.at(-1) === "") names.pop();
	const odd = names.find((name) => !isHeading(name));
	const wrong = (message: string): CsvProblem => ({ line: head.line, column: "", message });
	if (odd !== undefined) return wrong(`found the heading ${foundText(odd)}, allowed ${allowed}`);
	const twice = names.find((name, i) => names.indexOf(name) !== i);
	if (twice !== undefined) return wrong(`found the heading ${foundText(twice)} twice, allowed once`);
	const missing = (["kind", "value"] as const).find((name) => !names.includes(name));
	if (missing !== undefined) return wrong(`found no heading "${missing}", allowed ${allowed}`);
	return names as Heading[];
}

type Refuse = (column: Heading | "", message: string) => void;

function readLine(
	{ fields }: CsvLine,
	columns: readonly Heading[],
	walls: number,
	unit: LengthUnit,
	refuse: Refuse,
): Reading | null {
	if (fields.slice(columns.length).some((field) => field.trim() !== "")) {
		refuse("", `found ${fields.length} fields, allowed ${columns.length}, one under each heading`);
		return null;
	}
	const text = (heading: Heading) => fields[columns.indexOf(heading)]?.trim() ?? "";
	const kind = KINDS.find((each) => each === text("kind").toLowerCase());
	if (kind === undefined) {
		refuse("kind", `found ${text("kind") === "" ? "nothing" : foundText(text("kind"))}, allowed ${KINDS.join(", ")}`);
		return null;
	}
	for (const heading of HEADINGS) {
		const needed = NEEDS[kind].includes(heading) || heading === "kind" || heading === "value" || heading === "sd";
		if (!needed && text(heading) !== "")
			refuse(heading, `found ${foundText(text(heading))}, allowed nothing: ${A[kind]} has none`);
	}
	const of = <Value>(heading: Heading, read: (text: string) => Named<Value>): Value => {
		const named = read(text(heading));
		if (!named.ok) refuse(heading, named.message);
		return named.ok ? named.value : (undefined as Value);
	};
	const over0 = (typed: string) => lengthOver0(typed, unit);
	const corner = (typed: string) => namedCorner(typed, walls, "any");
	const between = (typed: string) => namedCorner(typed, walls, "between");
	const wall = (typed: string) => namedWall(typed, walls);
	const sd = text("sd") === "" ? null : of("sd", kind === "angle" ? degreesOver0 : over0);
	switch (kind) {
		case "run":
			return { kind, wall: of("wall", wall), value: of("value", over0), sd };
		case "diagonal": {
			const [from, to] = [of("from", corner), of("to", corner)];
			if (from !== undefined && from === to)
				refuse("to", `found ${foundText(text("to"))}, allowed another corner than from`);
			return { kind, from, to, value: of("value", over0), sd };
		}
		case "angle":
			return { kind, corner: of("corner", between), value: of("value", degreesUnder360), sd };
		case "chord": {
			const [arm, value] = [of("arm", over0), of("value", over0)];
			if (value >= 2 * arm) refuse("value", `found ${foundText(text("value"))}, allowed less than both arms together`);
			return { kind, corner: of("corner", between), arm, value, sd };
		}
		case "rise": {
			const at = text("at") === "" ? null : of("at", (typed) => anyLength(typed, unit, false));
			return { kind, wall: of("wall", wall), at, value: of("value", (typed) => anyLength(typed, unit, true)), sd };
		}
		case "square": {
			const [from, line] = [of("corner", corner), of("wall", wall)];
			if (from !== undefined && (from === line || from === line + 1))
				refuse("corner", `found ${foundText(text("corner"))}, allowed a corner that is not at an end of that wall`);
			return { kind, corner: from, wall: line, value: of("value", (typed) => anyLength(typed, unit, true)), sd };
		}
	}
}

const A: Readonly<Record<Reading["kind"], string>> = {
	run: "a run",
	diagonal: "a diagonal",
	angle: "an angle",
	chord: "a chord",
	rise: "a rise",
	square: "a square",
};

function anyLength(text: string, unit: LengthUnit, negative: boolean): Named<number> {
	const read = parseLength(text, unit, { negative });
	return read.ok ? read : { ok: false, message: read.message };
}

function lengthOver0(text: string, unit: LengthUnit): Named<number> {
	const read = anyLength(text, unit, false);
	return read.ok && !(read.value > 0)
		? { ok: false, message: `found ${foundText(text)}, allowed a length over 0` }
		: read;
}

function degreesUnder360(text: string): Named<number> {
	const value = parseDegrees(text);
	if (value !== null && value > 0 && value < 360) return { ok: true, value };
	return {
		ok: false,
		message: `found ${text === "" ? "nothing" : foundText(text)}, allowed degrees over 0 and under 360`,
	};
}

function degreesOver0(text: string): Named<number> {
	const value = parseDegrees(text);
	return value !== null && value > 0
		? { ok: true, value }
		: { ok: false, message: `found ${foundText(text)}, allowed degrees over 0` };
}

function fieldsOf(reading: Reading, walls: number, unit: LengthUnit): Partial<Record<Heading, string>> {
	const length = (mm: number | null) => (mm === null ? "" : decimal(mm / { mm: 1, cm: 10, in: INCH }[unit]));
	const corner = (index: number) => typedCorner(index, walls);
	const { kind } = reading;
	if (kind === "angle") {
		const { value, sd } = reading;
		return { kind, corner: corner(reading.corner), value: decimal(value), sd: sd === null ? "" : decimal(sd) };
	}
	const common = { kind, value: length(reading.value), sd: length(reading.sd) };
	switch (kind) {
		case "run":
			return { ...common, wall: String(reading.wall + 1) };
		case "diagonal":
			return { ...common, from: corner(reading.from), to: corner(reading.to) };
		case "chord":
			return { ...common, corner: corner(reading.corner), arm: length(reading.arm) };
		case "rise":
			return { ...common, wall: String(reading.wall + 1), at: length(reading.at) };
		case "square":
			return { ...common, corner: corner(reading.corner), wall: String(reading.wall + 1) };
	}
}

/** Never in powers of ten; to a millionth of a millionth, so that an inch comes back as the very millimetres. */
const decimal = (value: number): string =>
	value
		.toFixed(12)
		.replace(/\.?0+$/, "")
		.replace(/^-0$/, "0");
