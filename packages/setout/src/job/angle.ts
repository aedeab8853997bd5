/** Room angles from which to which walls leave a corner to fit a track in, degrees: folded back further they leave none. */
export const ROOM_ANGLE = { least: 20, greatest: 340 } as const;

/**
 * Reads degrees as people type them: `135`, `133.4°`, `92,5 deg`, `90 degrees`; null for anything else. A comma is a decimal comma. Which
 * degrees are allowed, and what to answer, is for whoever asked.
 */
export function parseDegrees(text: string): number | null {
	const [, number] = /^([+-]?\d+(?:[.,]\d+)?)\s*(?:°|deg|degrees)?$/.exec(text.trim()) ?? [];
	const value = number === undefined ? Number.NaN : Number(number.replace(",", "."));
	// A number of some hundred digits is none.
	return Number.isFinite(value) ? value + 0 : null;
}
