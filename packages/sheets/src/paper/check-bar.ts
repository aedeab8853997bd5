import { SIZES } from "../lettering/measure.ts";
import type { Mark } from "./drawing.ts";
import { line, rectangle, text } from "./marks.ts";
import { at, boxAt, type PaperPoint } from "./place.ts";

/** A bar to be measured on the print: ten parts by turns dark and light, between two long strokes. */
export interface CheckBar {
	readonly from: PaperPoint;
	readonly way: "across" | "down";
	/** What it is to measure on the print, mm. */
	readonly length: number;
	/** How much larger it is drawn for a printer that makes things smaller. */
	readonly by: number;
}

const THICK = 1.2;
const REACH = 3.2;
const PARTS = 10;

export function checkBarItems({ from, way, length, by }: CheckBar): Mark[] {
	const drawn = length * by;
	const place = (along: number, off: number) =>
		way === "across" ? at(from.x + along, from.y + off) : at(from.x + off, from.y + along);
	const end = (along: number) => line("PAPER", place(along, -REACH), place(along, REACH), { pen: "narrow" });
	const parts = Array.from({ length: PARTS / 2 }, (_, i) => {
		const start = place((drawn * 2 * i) / PARTS, -THICK / 2);
		const long = drawn / PARTS;
		return rectangle(
			"PAPER",
			way === "across" ? boxAt(start.x, start.y, long, THICK) : boxAt(start.x, start.y, THICK, long),
			{ fill: "black" },
		);
	});
	const turn = way === "across" ? 0 : Math.PI / 2;
	return [
		...parts,
		line("PAPER", place(0, -THICK / 2), place(drawn, -THICK / 2), { pen: "narrow" }),
		line("PAPER", place(0, THICK / 2), place(drawn, THICK / 2), { pen: "narrow" }),
		end(0),
		end(drawn),
		text(place(drawn / 2, -2.2), `${length} mm`, {
			height: SIZES.usual,
			bold: true,
			align: "centre",
			turn,
			layer: "PAPER",
		}),
	];
}
