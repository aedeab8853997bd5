import type { BayPlan } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

export function stockText({ stock, system }: BayPlan, { whole, figure, fine }: Lengths): string[] {
	if (stock.buy.length === 0) return [];
	const buy = stock.buy.map(({ length, count }) => `${count} × ${whole(length)}`).join(", ");
	const rows = stock.cuts.map(({ stock: length, pieces, offcut }) => [
		whole(length),
		pieces.map((cut) => `${cut.piece} ${figure(cut.length)}`).join(" + "),
		figure(offcut),
	]);
	return section(`Stock: buy ${buy}`, [
		...table([figures("length"), words("cut from it"), figures("offcut")], rows),
		...wrap(`Each saw cut takes ${fine(system.kerf)}. Waste in all, saw cuts included: ${fine(stock.waste)}.`, {
			indent: "  ",
		}),
	]);
}
