import { beginning, type ReadDrawing, unread } from "./drawing.ts";
import { BINARY_DXF, readDxf } from "./dxf.ts";
import { readSvg } from "./svg.ts";

/** Greatest file taken, bytes: a drawing of a whole house has some MB. */
const LARGEST_FILE = 20_000_000;
/** Most lines taken from one layer. */
const MOST_STROKES = 20_000;

/** Reads a DXF or an SVG, told apart by what is in it, not by its name. */
export function readDrawing(bytes: Uint8Array): ReadDrawing {
	if (bytes.length > LARGEST_FILE)
		return unread("", `${(bytes.length / 1e6).toFixed(1)} MB`, `up to ${LARGEST_FILE / 1e6} MB: save only the bay`);
	const text = textOf(bytes);
	if (text.startsWith(BINARY_DXF)) return unread("", "a binary DXF", "a DXF saved as text (ASCII)");
	if (text.startsWith("AC10"))
		return unread("", "a drawing in a form of its own program (DWG)", "DXF or SVG: save it as one of them");
	if (text.trim() === "") return unread("", "nothing", "a DXF or an SVG");
	const read = /^\s*</.test(text) ? readSvg(text) : looksLikeDxf(text) ? readDxf(text) : null;
	if (read === null)
		return unread("", text.includes("\0") ? "a file that is no text" : beginning(text), "a DXF as text or an SVG");
	if (!read.ok) return read;
	const { layers } = read.drawing;
	const full = layers.find(({ strokes }) => strokes.length > MOST_STROKES);
	if (full !== undefined)
		return unread(`layer ${full.name}`, `${full.strokes.length} lines`, `up to ${MOST_STROKES}: save only the bay`);
	if (layers.every(({ strokes, leftOut }) => strokes.length + leftOut.length === 0))
		return unread("", "nothing drawn", "a DXF or an SVG with lines in it");
	return read;
}

/** A group code comes first, perhaps after comments: 0 SECTION or 999. */
const looksLikeDxf = (text: string): boolean => /^\s*(?:0\s*[\r\n]\s*(?:SECTION|EOF)|999\s*[\r\n])/i.test(text);

/** UTF-8, or UTF-16 where a mark says so, or else the code page that the file names: only names of layers can differ. */
function textOf(bytes: Uint8Array): string {
	const [first, second] = bytes;
	if (first === 0xff && second === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
	if (first === 0xfe && second === 0xff) return new TextDecoder("utf-16be").decode(bytes);
	try {
		return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		const western = new TextDecoder("windows-1252").decode(bytes);
		const page = codePageOf(western.slice(0, HEAD));
		try {
			return page === null ? western : new TextDecoder(page).decode(bytes);
		} catch {
			// A code page that nobody knows.
			return western;
		}
	}
}

/** Where a file names its code page, letters. */
const HEAD = 20_000;

/** As the Encoding standard calls it. Source: DXF reference, header variable $DWGCODEPAGE; XML 1.0, 4.3.3 "Character encoding in entities". */
function codePageOf(head: string): string | null {
	const [, page] = /\$DWGCODEPAGE\s+3\s+ANSI_(\d{3,4})\b/i.exec(head) ?? [];
	if (page !== undefined) return EASTERN[page] ?? `windows-${page}`;
	const [, encoding] = /^<\?xml[^>]*\sencoding\s*=\s*["']([\w.:-]+)["']/.exec(head) ?? [];
	// A file that says UTF-8 and is none says nothing.
	return encoding === undefined || /^utf-?8$/i.test(encoding) ? null : encoding;
}

/** Code pages by their names in the Encoding standard, "Names and labels". */
const EASTERN: Readonly<Record<string, string>> = { 932: "shift_jis", 936: "gbk", 949: "euc-kr", 950: "big5" };
