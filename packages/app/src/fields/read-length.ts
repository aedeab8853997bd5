import { formatLength, type LengthUnit, parseLength } from "@baywright/setout";
import type { Reading } from "./typed-field.tsx";

/** mm; either may be left open. */
interface Bounds {
	readonly least?: number | undefined;
	readonly greatest?: number | undefined;
}

/** Reads a length in mm, typed in any unit that the length parser takes. Says by name what is wrong with anything else. */
export function readLength(text: string, unit: LengthUnit, { least, greatest }: Bounds = {}): Reading<number> {
	const parsed = parseLength(text, unit, { negative: least !== undefined && least < 0 });
	if (!parsed.ok) return { ok: false, message: reply(text, parsed.message) };
	const show = (mm: number) => showLength(mm, unit);
	if (least !== undefined && parsed.value < least)
		return { ok: false, message: `${show(parsed.value)} is too small: write ${show(least)} or more.` };
	if (greatest !== undefined && parsed.value > greatest)
		return { ok: false, message: `${show(parsed.value)} is too large: write ${show(greatest)} or less.` };
	return { ok: true, value: parsed.value };
}

/** As a field shows it: a tenth of a millimetre where there is one. */
export function showLength(mm: number, unit: LengthUnit): string {
	return formatLength(mm, unit, { precision: isWhole(mm) ? 0 : 1 });
}

const ALLOWED = ", allowed ";

/** The parser names what it found and what it allows; a field answers whoever typed it. */
function reply(text: string, refusal: string): string {
	const allowed = refusal.slice(refusal.lastIndexOf(ALLOWED) + ALLOWED.length);
	return text.trim() === "" ? `Write ${allowed}.` : `“${text}” is not a length: write ${allowed}.`;
}

/** Whole to a tenth of a millimetre: a figure that was typed with a tenth keeps it. */
function isWhole(mm: number): boolean {
	return Math.abs(mm - Math.round(mm)) < 0.05;
}
