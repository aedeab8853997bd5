import type { LengthUnit } from "../job/schema.ts";
import { csvField, csvText } from "../survey/csv.ts";
import { priceText } from "./amount-text.ts";
import { describePart } from "./describe-part.ts";
import type { JobOrder, OrderLine } from "./job-order.ts";

const HEAD = ["item", "what", "quantity", "spare", "to order", "unit", "each", "cost", "bays", "why"] as const;

/**
 * The order as CSV (RFC 4180): one line for each part, then the total of what has a price. Numbers have a point for decimals; what is not known or
 * not priced is empty. A field that a spreadsheet would take for a formula has an apostrophe before it (OWASP, "CSV Injection").
 */
export function writeOrderCsv(order: JobOrder, unit: LengthUnit): string {
	const lines = order.lines.map((line) => fieldsOf(line, unit).map(csvField).join(","));
	const total = ["", "total", "", "", "", "", "", money(order.total), "", totalWhy(order)].map(csvField).join(",");
	return `${[HEAD.join(","), ...lines, total].join("\r\n")}\r\n`;
}

function fieldsOf(line: OrderLine, unit: LengthUnit): string[] {
	const { quantity, spare, ordered, each, cost, bays } = line;
	const why = bays.map(({ bay, part }) => `${bays.length > 1 ? `${bay}: ` : ""}${describePart(part, unit).why}`);
	return [
		csvText(line.priceItem),
		csvText(orderLineName(line, unit)),
		numberText(quantity),
		numberText(quantity === null ? null : spare),
		numberText(ordered),
		line.unit,
		each === null ? "" : priceText(each),
		money(cost),
		csvText(bays.map(({ bay }) => bay).join(" ")),
		csvText(why.join("; ")),
	];
}

/** What a line is called. */
export const orderLineName = ({ bays }: Pick<OrderLine, "bays">, unit: LengthUnit): string => {
	const [first] = bays;
	return first === undefined ? "" : describePart(first.part, unit).what;
};

/** What the total leaves out; "" where nothing. */
export function totalWhy({ notPriced, notCounted }: Pick<JobOrder, "notPriced" | "notCounted">): string {
	const lines = (count: number) => (count === 1 ? "1 line has" : `${count} lines have`);
	const left = [
		...(notPriced > 0 ? [`${lines(notPriced)} no price`] : []),
		...(notCounted > 0 ? [`${lines(notCounted)} no quantity yet`] : []),
	];
	return left.length === 0 ? "" : `not in it: ${left.join(", ")}`;
}

const numberText = (quantity: number | null): string => (quantity === null ? "" : String(quantity));

const money = (amount: number | null): string => (amount === null ? "" : amount.toFixed(2));
