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
	if (read === null) return unread("", beginning(text), "a DXF as text or an SVG");
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
const looksLikeDxf = (text: string): boolean => /^\s*(?:0\s*\r?\n\s*(?:SECTION|EOF)|999\s*\r?\n)/i.test(text);

/** UTF-8, or where it is none the code page of older DXF: only names of layers can differ. */
function textOf(bytes: Uint8Array): string {
	try {
		return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		return new TextDecoder("windows-1252").decode(bytes);
	}
}
