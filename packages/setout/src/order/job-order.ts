import type { BayPlan } from "../bay-plan.ts";
import type { Job } from "../job/schema.ts";
import { findSystem } from "../library/library.ts";
import type { Price } from "../library/price.ts";
import type { TrackSystem } from "../library/system.ts";
import type { Part } from "./part.ts";
import { spareOf } from "./spare.ts";

/** One line of a job's order: what all its bays need of one part. */
export interface OrderLine extends Omit<Part, "from" | "figures"> {
	/** What a bay needs of it, by the bay's id, in the order of the bays. */
	readonly bays: readonly { readonly bay: string; readonly part: Part }[];
	/** Quantity and spare; null where a bay does not know its own. */
	readonly ordered: number | null;
	/** Name under which its price is listed, or would be. */
	readonly priceItem: string;
	/** From the job's prices, and for track else from its system; null = not priced. */
	readonly each: number | null;
	/** null where its price or its quantity is not known. */
	readonly cost: number | null;
}

/** Everything to buy for a job. Money is the user's own, to the hundredth. */
export interface JobOrder {
	readonly lines: readonly OrderLine[];
	/** Of all lines that have a cost. */
	readonly total: number;
	/** Lines without a price, and lines whose quantity is not known. */
	readonly notPriced: number;
	readonly notCounted: number;
	/** Prices of the job that nothing on this order goes by. */
	readonly pricesNotUsed: readonly string[];
}

/** Sums what the plans of a job need, part by part; spare is added to the sum, so that two bays share it. */
export function jobOrder(job: Pick<Job, "prices" | "spare" | "systems">, plans: readonly BayPlan[]): JobOrder {
	const groups = new Map<string, { readonly bay: string; readonly part: Part }[]>();
	for (const { id, parts } of plans)
		for (const part of parts) {
			const key = JSON.stringify([part.system, part.item, part.size === null ? null : Math.round(part.size * 10)]);
			const group = groups.get(key);
			if (group === undefined) groups.set(key, [{ bay: id, part }]);
			else group.push({ bay: id, part });
		}
	const severalSystems = new Set(plans.map(({ system }) => system.id)).size > 1;
	const lines = [...groups.values()]
		.map((bays) => lineOf(bays, job, severalSystems))
		.toSorted((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
	const used = new Set(lines.filter(({ each }) => each !== null).map(({ priceItem }) => priceItem));
	return {
		lines,
		total: toHundredths(lines.reduce((sum, { cost }) => sum + (cost ?? 0), 0)),
		notPriced: lines.filter(({ each }) => each === null).length,
		notCounted: lines.filter(({ ordered }) => ordered === null).length,
		pricesNotUsed: job.prices.map(({ item }) => item).filter((item) => !used.has(item)),
	};
}

type Bays = readonly { readonly bay: string; readonly part: Part }[];

function lineOf(bays: Bays, job: Pick<Job, "prices" | "spare" | "systems">, severalSystems: boolean): OrderLine {
	const { kind, item, system, unit, size } = (bays[0] as Bays[number]).part;
	const quantities = bays.map(({ part }) => part.quantity);
	const quantity = quantities.includes(null)
		? null
		: tidy(quantities.reduce((sum: number, each) => sum + (each ?? 0), 0));
	const spare = spareOf({ kind, unit }, quantity, job.spare);
	const ordered = quantity === null ? null : tidy(quantity + spare);
	const { priceItem, each } = priceOf(item, system, severalSystems, job.prices, stockCost(job, system, kind, size));
	const cost = each === null || ordered === null ? null : toHundredths(ordered * each);
	return { kind, item, system, quantity, unit, spare, size, bays, ordered, priceItem, each, cost };
}

/** The price of this system's part, else of the part; a job of several systems is asked for each system's own. */
function priceOf(
	item: string,
	system: string | null,
	severalSystems: boolean,
	prices: readonly Price[],
	otherwise: number | null,
): Pick<OrderLine, "priceItem" | "each"> {
	const own = system === null ? item : `${system} ${item}`;
	const found = prices.find((price) => price.item === own) ?? prices.find((price) => price.item === item);
	if (found !== undefined) return { priceItem: found.item, each: found.each };
	return { priceItem: severalSystems ? own : item, each: otherwise };
}

/** What a system's own list of stock says that a length costs. */
function stockCost(
	job: Pick<Job, "systems">,
	system: string | null,
	kind: Part["kind"],
	size: number | null,
): number | null {
	if (kind !== "track" || system === null) return null;
	const found: TrackSystem | undefined = findSystem(job, system);
	return found?.stock.find(({ length }) => length === size)?.cost ?? null;
}

/** In the order of the work. */
const KINDS: readonly Part["kind"][] = [
	"track",
	"bracket",
	"ceiling-bracket",
	"joint-bracket",
	"bracket-base",
	"screw",
	"plug",
	"board-fixing",
	"fixing-by-trial",
	"joint",
	"end-stop",
	"end-pulley",
	"glider",
	"master-carrier",
	"cord",
	"tensioner",
	"cloth",
	"lining",
	"heading-tape",
	"hook",
];

const toHundredths = (money: number): number => Math.round((money + Number.EPSILON) * 100) / 100;

/** Sums of tenths of metres stay tenths. */
const tidy = (quantity: number): number => Math.round(quantity * 1000) / 1000;
