import { toDegrees } from "@baywright/geometry";
import { AT_95, dimensionSureness, formatAngle, formatLength } from "@baywright/setout";
import type { Subject } from "../scene.ts";
import type { Face } from "../text.ts";

/** A dimension in words: what is taped stands bold with how sure it is, what is only drawn light and slanted. */
export interface Figure {
	readonly text: string;
	readonly face: Face;
	readonly taped: boolean;
}

/** What a figure is told from: the bay as drawn or settled, and the track that it is planned with. */
type Told = Pick<Subject, "bay" | "plan" | "unit">;

/** A wall's run. */
export const runFigure = (told: Told, wall: number, length: number): Figure =>
	lengthFigure(told, length, surenessOf(told)?.runs[wall]);

/** A bowed wall's rise, + away from the room; told by its size, for the drawing shows which way it goes. */
export const riseFigure = (told: Told, wall: number, rise: number): Figure =>
	lengthFigure(told, Math.abs(rise), surenessOf(told)?.rises[wall]);

/** A corner's room angle (degrees). */
export const angleFigure = (told: Told, corner: number, angle: number): Figure =>
	figureOf(angle, surenessOf(told)?.angles[corner], (degrees) => formatAngle(degrees));

const surenessOf = ({ bay, plan }: Told) => dimensionSureness(bay, plan.system);

const lengthFigure = ({ unit }: Told, length: number, sd: number | null | undefined): Figure =>
	figureOf(length, sd, (mm) => formatLength(mm, unit));

function figureOf(value: number, sd: number | null | undefined, write: (value: number) => string): Figure {
	const text = write(value);
	if (sd === null || sd === undefined) return { text, face: "drawn", taped: false };
	return { text: `${text} ± ${write(AT_95 * sd)}`, face: "taped", taped: true };
}

/** Room angle in degrees between two directions of travel. */
export function roomAngle(
	before: { readonly ux: number; readonly uy: number },
	after: { readonly ux: number; readonly uy: number },
): number {
	const turn = Math.atan2(before.uy * after.ux - before.ux * after.uy, before.ux * after.ux + before.uy * after.uy);
	return 180 - toDegrees(turn);
}
