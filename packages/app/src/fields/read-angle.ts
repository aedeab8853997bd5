import { parseDegrees, ROOM_ANGLE } from "@baywright/setout";
import type { Reading } from "./typed-field.tsx";

export const GREATEST_ANGLE = ROOM_ANGLE.greatest;

/** Reads a room angle in degrees, up to `greatest`. Says by name what is wrong with anything else. */
export function readAngle(text: string, greatest: number): Reading<number> {
	if (text.trim() === "") return { ok: false, message: "Write an angle in degrees, such as 135 or 133.4." };
	const value = parseDegrees(text);
	if (value === null) return { ok: false, message: `“${text}” is not an angle: write degrees, such as 135 or 133.4.` };
	if (value < ROOM_ANGLE.least || value > greatest)
		return {
			ok: false,
			message: `${value}° cannot be fitted: write ${ROOM_ANGLE.least} to ${greatest} degrees, seen from the room.`,
		};
	return { ok: true, value };
}
