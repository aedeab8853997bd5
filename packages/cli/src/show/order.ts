import {
	amountText,
	describePart,
	type JobOrder,
	type LengthUnit,
	type OrderLine,
	orderLineName,
	priceText,
	totalWhy,
} from "@baywright/setout";
import { plain } from "../text/plain.ts";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

/** Everything to buy for the bays of a job, with what each quantity was counted from. */
export function orderText(order: JobOrder, unit: LengthUnit): string[] {
	const { lines } = order;
	if (lines.length === 0) return [];
	const priced = lines.some(({ cost }) => cost !== null);
	const systems = new Set(lines.map(({ system }) => system).filter((system) => system !== null));
	const rows = lines.map((line) => [
		plain(nameOf(line, unit, systems.size > 1)),
		line.ordered === null ? "not known" : amountText(line.ordered, line.unit),
		line.spare === 0 ? "" : amountText(line.spare, line.unit),
		...(priced ? [line.each === null ? "not priced" : priceText(line.each), line.cost?.toFixed(2) ?? ""] : []),
		plain(whyText(line, unit)),
	]);
	const columns = [
		words("part"),
		figures("to order"),
		figures("of it\nspare"),
		...(priced ? [figures("each"), figures("cost")] : []),
		words("why"),
	];
	return section("Order", [
		...table(columns, rows),
		...(priced ? wrap(totalText(order), { indent: "  " }) : wrap(NO_PRICES, { indent: "  " })),
		...unusedText(order),
	]);
}

const NO_PRICES = "No prices: they come only from the job's own list.";

const totalText = (order: JobOrder): string => {
	const left = totalWhy(order);
	return `Total ${order.total.toFixed(2)}${left === "" ? "" : `; ${left}`}. Prices are from the job's own list, in its own money.`;
};

const unusedText = ({ pricesNotUsed }: JobOrder): string[] =>
	pricesNotUsed.length === 0
		? []
		: wrap(`Priced, but not on this order: ${pricesNotUsed.map(plain).join(", ")}.`, { indent: "  " });

const nameOf = (line: OrderLine, unit: LengthUnit, several: boolean): string =>
	several && line.system !== null ? `${orderLineName(line, unit)} (${line.system})` : orderLineName(line, unit);

/** What each bay needs it for; the bay is named where there are several. */
function whyText({ bays }: OrderLine, unit: LengthUnit): string {
	return bays.map(({ bay, part }) => `${bays.length > 1 ? `${bay}: ` : ""}${describePart(part, unit).why}`).join("; ");
}
