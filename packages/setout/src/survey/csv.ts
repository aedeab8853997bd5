/** One line of a CSV text: its number in the file, counted from 1 as an editor does, and its fields. */
export interface CsvLine {
	readonly line: number;
	readonly fields: readonly string[];
}

export type CsvText =
	| { readonly ok: true; readonly lines: readonly CsvLine[] }
	| { readonly ok: false; readonly line: number; readonly message: string };

/**
 * Reads CSV: fields parted by commas, semicolons or tabs, whichever the first line has most of; in double quotes where they hold any of
 * these or run over lines, a quote in quotes twice. Lines with nothing in them are passed over. Source: RFC 4180, and what spreadsheets write
 * where the comma is a decimal comma.
 */
export function readCsv(text: string): CsvText {
	const whole = text.replace(/^\uFEFF/, "").replace(/\r\n?/g, "\n");
	const separator = separatorOf(whole);
	const lines: CsvLine[] = [];
	let fields: string[] = [];
	let line = 1;
	let from = 1;
	let at = 0;
	for (;;) {
		const quoted = whole[at] === '"';
		const end = quoted ? closingQuote(whole, at) : nextBreak(whole, at, separator);
		if (end < 0)
			return {
				ok: false,
				line,
				message: "found a double quote that is never closed, allowed one at either end of a field",
			};
		const field = quoted ? whole.slice(at + 1, end).replaceAll('""', '"') : whole.slice(at, end);
		if (!quoted && field.includes('"'))
			return {
				ok: false,
				line,
				message: "found a double quote within a field, allowed one at either end of it, and twice inside",
			};
		fields.push(field);
		line += field.split("\n").length - 1;
		at = quoted ? end + 1 : end;
		const after = whole[at];
		if (after !== undefined && after !== separator && after !== "\n")
			return { ok: false, line, message: "found text after a closing double quote, allowed the end of the field" };
		if (after !== separator) {
			if (fields.some((each) => each.trim() !== "")) lines.push({ line: from, fields });
			fields = [];
			line++;
			from = line;
		}
		if (after === undefined) return { ok: true, lines };
		at++;
	}
}

/** A field as it is written: in quotes where it must be. */
export const csvField = (text: string): string => (/[",;\t\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/**
 * Text that a spreadsheet would take for a formula, with an apostrophe before it, so that it stays text. Source: OWASP, "CSV Injection".
 */
export const csvText = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

function separatorOf(text: string): string {
	const first = text.split("\n").find((line) => line.trim() !== "") ?? "";
	const often = (sign: string) => first.split(sign).length;
	return [",", ";", "\t"].reduce((best, sign) => (often(sign) > often(best) ? sign : best));
}

/** Where a quoted field ends; −1 where it never does. */
function closingQuote(text: string, from: number): number {
	for (let at = text.indexOf('"', from + 1); at >= 0; at = text.indexOf('"', at + 1)) {
		if (text[at + 1] !== '"') return at;
		at++;
	}
	return -1;
}

function nextBreak(text: string, from: number, separator: string): number {
	let at = from;
	while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
	return at;
}
