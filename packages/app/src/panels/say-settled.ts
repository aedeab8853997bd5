import type { Bay } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { bayOnTable } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";

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
	const now = write(read(bayOnTable(desk.getState())));
	if (refused === null && now !== write(typed))
		screen.getState().say(`${write(typed)} is taken as a reading: with the others it comes to ${now}`);
	return refused;
}
