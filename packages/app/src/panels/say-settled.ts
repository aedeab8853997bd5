import { type Bay, isTaped } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { bayOnTable } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";

/** Corners are kept to the thousandth: what comes back this near to what was typed, mm or degrees, is what was typed. */
const AS_TYPED = 0.05;

/**
 * In a taped bay a figure that is typed is one reading among others. Where they settle elsewhere, its field will not show what was typed: that is
 * said. `refused` is what the change came to, null where it was made; it is given back.
 */
export function saySettled(
	refused: string | null,
	typed: number,
	read: (bay: Bay) => number,
	write: (figure: number) => string,
): string | null {
	const bay = bayOnTable(desk.getState());
	const settled = read(bay);
	const now = write(settled);
	const isElsewhere = Math.abs(settled - typed) >= AS_TYPED && now !== write(typed);
	if (refused === null && isTaped(bay) && isElsewhere)
		screen.getState().say(`${write(typed)} is taken as a reading: with the others it comes to ${now}`);
	return refused;
}
