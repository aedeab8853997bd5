import type { Reading } from "./typed-field.tsx";

/** Walls folded back further than this leave no corner to fit a track in, degrees. */
const LEAST = 20;
export const GREATEST_ANGLE = 340;

/** Reads a room angle in degrees: `135`, `133.4°`, `92,5 deg`. Says by name what is wrong with anything else. */
export function readAngle(text: string, greatest: number): Reading<number> {
	if (text.trim() === "") return { ok: false, message: "Write an angle in degrees, such as 135 or 133.4." };
	const match = /^([+-]?\d+(?:[.,]\d+)?)\s*(?:°|deg|degrees)?$/.exec(text.trim());
	if (!match?.[1]) return { ok: false, message: `“${text}” is not an angle: write degrees, such as 135 or 133.4.` };
	const value = Number(match[1].replace(",", "."));
	if (value < LEAST || value > greatest)
		return {
			ok: false,
			message: `${value}° cannot be fitted: write ${LEAST} to ${greatest} degrees, seen from the room.`,
		};
	return { ok: true, value };
}
