import {
	capital,
	describePart,
	type JobOrder,
	jobOrder,
	type OrderLine,
	orderLineName,
	priceText,
	totalWhy,
} from "@baywright/setout";
import type { Sheet } from "../paper/drawing.ts";
import { flow } from "../paper/flow.ts";
import { layoutOn } from "../paper/frame.ts";
import { type Column, type TableData, table } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { pagesOf } from "./pages.ts";
import { refusedEntries } from "./refused.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Everything to buy, once for all bays together, because they share their spare; null where nothing is, and for every bay but the first. */
export function orderSheet(of: SheetOf): Sheet | null {
	const { job, plan, plans } = of;
	if (plan !== plans[0]) return null;
	const order = jobOrder(job, plans);
	if (order.lines.length === 0) return null;
	const several = plans.length > 1;
	const bay = several ? { ...of.bay, id: "job", name: plans.map(({ id }) => nameOf(of, id)).join(", ") } : of.bay;
	const tables = [orderTable(of, order), sourceTable(of, order)];
	const refused = plans.flatMap((each) => refusedEntries({ plan: each }, "buy")).slice(0, 1);
	const blocks = [
		...(refused.length > 0 ? [entries(refused)] : []),
		table(tables[0] as TableData),
		entries(totalEntries(of, order)),
		table(tables[1] as TableData),
	];
	const bodies = flow(blocks, layoutOn(of.paper).columns).map((items) => ({ items, scale: "–" }));
	return {
		name: "order",
		bay: several ? "job" : plan.id,
		title: "Order",
		pages: pagesOf({ ...of, bay }, { kind: "Order", mark: "O" }, bodies),
		figures: [],
		tables,
		trueSize: false,
	};
}

const nameOf = ({ job }: SheetOf, id: string): string => job.bays.find((bay) => bay.id === id)?.name || `Bay ${id}`;

const isPriced = ({ lines }: JobOrder): boolean => lines.some(({ each }) => each !== null);

function orderTable({ unit }: SheetOf, order: JobOrder): TableData {
	const prices: Column[] = [
		{ heading: "each", of: "figures" },
		{ heading: "cost", of: "figures", bold: true },
	];
	return {
		name: "order",
		title: "To order",
		columns: [
			{ heading: "", of: "tick" },
			{ heading: "part", of: "words" },
			{ heading: "needed", of: "figures" },
			{ heading: "spare", of: "figures" },
			{ heading: "to order", of: "figures", bold: true },
			{ heading: "", of: "words" },
			...(isPriced(order) ? prices : []),
		],
		rows: order.lines.map((line) => [
			"",
			orderLineName(line, unit),
			amount(line, line.quantity),
			line.quantity === null || line.spare === 0 ? "–" : amount(line, line.spare),
			amount(line, line.ordered),
			line.unit === "m" ? "m" : line.ordered === 1 ? "piece" : "pieces",
			...(isPriced(order) ? [line.each === null ? "not priced" : priceText(line.each), money(line.cost)] : []),
		]),
		note: "Needed: counted from the plan. Spare: on top, as the job says.",
	};
}

const amount = ({ unit }: OrderLine, quantity: number | null): string =>
	quantity === null ? "not known" : unit === "m" ? quantity.toFixed(1) : String(quantity);

const money = (sum: number | null): string => (sum === null ? "" : sum.toFixed(2));

function totalEntries(of: SheetOf, order: JobOrder): Entry[] {
	const { plans } = of;
	const left = totalWhy(order);
	const unused = order.pricesNotUsed;
	const refused = plans.filter(({ path }) => path === null).map(({ id }) => id);
	return [
		isPriced(order)
			? {
					sign: "none",
					lead: `Total of what is priced: ${money(order.total)}`,
					text: left === "" ? "Every line is in it." : `${capital(left)}.`,
					under: "By the job's own prices, in the money that they are in.",
				}
			: {
					sign: "none",
					lead: "Not priced",
					text: "The job has no prices for any of these parts, so nothing is added up.",
				},
		...(unused.length === 0
			? []
			: [{ sign: "none", text: `Prices that nothing here goes by: ${unused.join(", ")}.` } as const]),
		...(refused.length === 0
			? []
			: [
					{ sign: "none", lead: "Not all bays are here", text: `No track fits yet in ${refused.join(", ")}.` } as const,
				]),
	];
}

/** What of the plan each quantity was counted from. */
function sourceTable({ unit, plans }: SheetOf, { lines }: JobOrder): TableData {
	return {
		name: "order-why",
		title: "What each was counted from",
		columns: [
			{ heading: "part", of: "words" },
			...(plans.length > 1 ? [{ heading: "bay", of: "words" } as const] : []),
			{ heading: "needed", of: "figures" },
			{ heading: "from", of: "words" },
		],
		rows: lines.flatMap((line) =>
			line.bays.map(({ bay, part }, i) => [
				i === 0 ? orderLineName(line, unit) : "",
				...(plans.length > 1 ? [bay] : []),
				amount(line, part.quantity),
				capital(describePart(part, unit).why),
			]),
		),
	};
}
