import { readdirSync, readFileSync } from "node:fs";
import {
	type BayPlan,
	describePart,
	type Job,
	type JobOrder,
	jobOrder,
	type Part,
	type PartKind,
	parseJob,
	planJob,
	writeOrderCsv,
} from "@baywright/setout";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const CORNERS: readonly (readonly [number, number])[] = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];

function jobOf(more: object): Job {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [], ...more });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job;
}

const withBay = (bay: object, more: object = {}) => jobOf({ bays: [{ id: "b", corners: CORNERS, ...bay }], ...more });

const planOf = (bay: object, more: object = {}): BayPlan => planJob(withBay(bay, more))[0] as BayPlan;

const orderOf = (job: Job): JobOrder => jobOrder(job, planJob(job));

const ofKind = ({ parts }: Pick<BayPlan, "parts">, ...kinds: PartKind[]) =>
	parts.filter(({ kind }) => kinds.includes(kind));

const count = (parts: readonly Part[]) => parts.reduce((sum, { quantity }) => sum + (quantity ?? Number.NaN), 0);

const EXAMPLES = new URL("../../../examples/", import.meta.url);
const examples = readdirSync(EXAMPLES).filter((name) => name.endsWith(".baywright.json"));

describe.each(examples)("%s", (name) => {
	const parsed = parseJob(JSON.parse(readFileSync(new URL(name, EXAMPLES), "utf8")));
	if (!parsed.ok) throw new Error(name);
	const { job } = parsed;
	const plans = planJob(job);

	test("orders what its plans draw", () => {
		for (const plan of plans) {
			if (plan.path === null) {
				expect(plan.parts).toEqual([]);
				continue;
			}
			const { brackets, joints, stock, curtains, system } = plan;
			expect(count(ofKind(plan, "track"))).toBe(stock.buy.reduce((sum, { count: of }) => sum + of, 0));
			// All that is bought, less what is cut and sawn away, is the waste: the stock's own sum, told from the order's side.
			const bought = ofKind(plan, "track").reduce((sum, { size, quantity }) => sum + (size ?? 0) * (quantity ?? 0), 0);
			const cut = plan.pieces.reduce((sum, { cutLength }) => sum + cutLength, 0);
			expect(bought - cut).toBeCloseTo(stock.waste, 3);
			const kinds = ["bracket", "ceiling-bracket", "joint-bracket"] as const;
			expect(count(ofKind(plan, ...kinds))).toBe(brackets.length);
			expect(count(ofKind(plan, "joint-bracket"))).toBe(joints.length);
			// Every bracket stands in one line, none in two.
			const named = ofKind(plan, ...kinds).flatMap(({ from }) =>
				from.flatMap((source) => (source.of === "brackets" ? source.indexes : [])),
			);
			expect(named.toSorted((a, b) => a - b)).toEqual(brackets.map((_, i) => i));
			expect(count(ofKind(plan, "joint"))).toBe(joints.length);
			expect(count(ofKind(plan, "end-stop", "end-pulley"))).toBe(2);
			expect(count(ofKind(plan, "master-carrier"))).toBe(curtains.length);
			expect(ofKind(plan, "cord").length).toBe(Number(system.corded && curtains.length > 0));
			const inHoles = count(ofKind(plan, "screw", "board-fixing", "fixing-by-trial"));
			expect(inHoles).toBe(2 * brackets.length + 2 * ofKind(plan, "tensioner").length);
			for (const part of plan.parts)
				expect(JSON.stringify(describePart(part, "mm"))).not.toMatch(/undefined|null|NaN|Infinity/);
		}
	});

	test("sums its bays, and its CSV reads back in another reader", () => {
		const order = jobOrder(job, plans);
		const all = plans.flatMap(({ parts }) => parts);
		for (const line of order.lines) {
			const same = all.filter(
				({ item, system, size }) =>
					item === line.item && system === line.system && Math.abs((size ?? 0) - (line.size ?? 0)) < 0.1,
			);
			if (line.quantity !== null) expect(line.quantity).toBeCloseTo(count(same), 6);
		}
		expect(order.lines.reduce((sum, { bays }) => sum + bays.length, 0)).toBe(all.length);
		const rows: Record<string, string>[] = parse(writeOrderCsv(order, "mm"), { columns: true });
		expect(rows.length).toBe(order.lines.length + 1);
		order.lines.forEach((line, i) => {
			expect(rows[i]?.["to order"]).toBe(line.ordered === null ? "" : String(line.ordered));
			expect(rows[i]?.unit).toBe(line.unit);
		});
	});
});

describe("gliders", () => {
	// A glider at one edge, then one at each further step no longer than the spacing, as they would be put on.
	const putOn = (stretch: number, spacing: number) => {
		let gliders = 1;
		for (let left = stretch; left > 1e-6; left -= spacing) gliders++;
		return gliders;
	};

	test("are put on along every curtain", () => {
		const property = fc.property(
			fc.integer({ min: 600, max: 3000 }),
			fc.constantFrom("pair", "left", "right"),
			(wide, draw) => {
				const corners = [
					[0, 0],
					[0, 900],
					[wide, 900],
					[wide, 0],
				];
				const plan = planOf({ corners, track: { draw, projection: 40, radius: 225 } });
				if (plan.path === null) return;
				const { length } = plan.path;
				const stretches = draw === "pair" ? [length / 2, length / 2] : [length];
				expect(count(ofKind(plan, "glider"))).toBe(stretches.reduce((sum, each) => sum + putOn(each, 80), 0));
			},
		);
		fc.assert(property, { seed: 80, numRuns: 60 });
	});

	test("are put on along the track where nothing is drawn", () => {
		const plan = planOf({ track: { draw: "none", system: "flexible" } });
		expect(count(ofKind(plan, "glider"))).toBe(putOn(plan.path?.length ?? 0, 70));
		expect(ofKind(plan, "master-carrier", "cord", "hook")).toEqual([]);
	});
});

describe("fixings go by the wall of each hole", () => {
	const walls = [{ surface: "batten" }, { surface: "masonry" }, { surface: "plasterboard" }];

	test("screws for timber and plugs, plugs for masonry, board fixings for board; the tensioner's two with its own wall", () => {
		const plan = planOf({ walls, track: { height: 2300 } });
		const on = (wall: number) => plan.brackets.filter((bracket) => bracket.wall === wall).length;
		expect(count(ofKind(plan, "screw"))).toBe(2 * (on(0) + on(1)));
		expect(count(ofKind(plan, "plug"))).toBe(2 * on(1));
		expect(count(ofKind(plan, "board-fixing"))).toBe(2 * on(2) + 2);
		expect(ofKind(plan, "fixing-by-trial")).toEqual([]);
		const left = planOf({ walls, track: { height: 2300, cordSide: "left" } });
		expect(count(ofKind(left, "screw"))).toBe(2 * (on(0) + on(1)) + 2);
	});

	test("as many a bracket as the system says, and a base under each where it has them", () => {
		const own = {
			id: "own",
			name: "Own",
			minRadius: { internal: 100, external: 100 },
			projection: { default: 40, min: 30, max: 100 },
			bracket: { maxSpacing: 400, screws: 3, base: true },
			stock: [{ length: 6000, cost: 31.5 }],
		};
		const job = withBay(
			{ track: { system: "own" }, walls: [{ surface: "batten" }, { surface: "batten" }, { surface: "batten" }] },
			{ systems: [own] },
		);
		const plan = planJob(job)[0] as BayPlan;
		expect(count(ofKind(plan, "screw"))).toBe(3 * plan.brackets.length);
		expect(count(ofKind(plan, "bracket-base"))).toBe(plan.brackets.length);
		// The system's own list of stock is a price the user gave.
		expect(orderOf(job).lines.find(({ kind }) => kind === "track")).toMatchObject({ each: 31.5, cost: 31.5 });
	});
});

test("brackets of another projection are lines of their own", () => {
	const plan = planOf({ walls: [{}, { projection: 60 }, {}], track: { projection: 40 } });
	const lines = ofKind(plan, "bracket");
	expect(lines.map(({ size }) => Math.round(size ?? 0)).toSorted((a, b) => a - b)).toEqual([40, 60]);
	expect(lines.find(({ size }) => Math.round(size ?? 0) === 60)?.quantity).toBe(
		plan.brackets.filter(({ wall }) => wall === 1).length,
	);
});

describe("cloth", () => {
	const cloths = [{ id: "plain", name: "Plain", width: 1400, lining: { name: "Sateen" } }];
	const curtains = [{ cloth: "plain", heading: "pencil", fullness: 2, drop: 2000 }];

	test("as many metres as widths times the cut drop; lining and tape beside it; a hook a glider", () => {
		const plan = planOf({ curtains, track: { draw: "left", projection: 40, radius: 310 } }, { cloths });
		// The closed form of a right-angled bay; no return, no ease.
		const path = 860 + 1720 + 860 - 2 * (620 - 155 * Math.PI);
		const widths = Math.ceil((2 * path + 120) / 1400);
		expect(ofKind(plan, "cloth")).toMatchObject([
			{ item: "cloth plain", quantity: Math.ceil(widths * 22.8 - 1e-9) / 10 },
		]);
		expect(ofKind(plan, "lining")).toMatchObject([
			{ item: "lining plain", quantity: Math.ceil(widths * 22.8 - 1e-9) / 10 },
		]);
		expect(ofKind(plan, "heading-tape")).toMatchObject([{ quantity: Math.ceil((2 * path + 120) / 100) / 10 }]);
		expect(count(ofKind(plan, "hook"))).toBe(count(ofKind(plan, "glider")));
	});

	test("without a drop its metres are not known, and nothing is made up", () => {
		const plan = planOf({ curtains: [{ ...curtains[0], drop: null }] }, { cloths });
		expect(ofKind(plan, "cloth", "lining").map(({ quantity }) => quantity)).toEqual([null, null]);
		expect(describePart(ofKind(plan, "cloth")[0] as Part, "mm").why).toContain("the drop is not given");
	});

	test("none where the job names no curtains", () => {
		expect(ofKind(planOf({}), "cloth", "lining", "heading-tape", "hook")).toEqual([]);
	});
});

describe("a job of two bays", () => {
	const prices = [
		{ item: "bracket", each: 2.4 },
		{ item: "flexible bracket", each: 1.15 },
		{ item: "cord", each: 0.35 },
		{ item: "curtain pole", each: 40 },
	];
	const job = jobOf({
		prices,
		spare: { gliders: 12.5 },
		bays: [
			{ id: "one", corners: CORNERS, track: { height: 2300 } },
			{ id: "two", corners: CORNERS, track: { height: 2300 } },
			{ id: "three", corners: CORNERS, track: { system: "flexible" } },
		],
	});
	const plans = planJob(job);
	const order = jobOrder(job, plans);
	const line = (kind: PartKind, system: string) =>
		order.lines.find((each) => each.kind === kind && each.system === system);

	test("adds up bays of one system and keeps systems apart", () => {
		expect(line("bracket", "light-corded")?.quantity).toBe(
			(plans[0]?.brackets.length ?? 0) + (plans[1]?.brackets.length ?? 0),
		);
		expect(line("bracket", "flexible")?.quantity).toBe(plans[2]?.brackets.length);
	});

	test("two bays share their spare, rounded up once", () => {
		const needed = 2 * count(ofKind(plans[0] as BayPlan, "glider"));
		expect(line("glider", "light-corded")).toMatchObject({ quantity: needed, spare: Math.ceil(needed / 8) });
	});

	test("prices only from the user's list: a system's own first; what has none says so", () => {
		const corded = line("bracket", "light-corded");
		const flexible = line("bracket", "flexible");
		const cord = line("cord", "light-corded");
		expect(corded).toMatchObject({ each: 2.4, priceItem: "bracket" });
		expect(flexible).toMatchObject({ each: 1.15, priceItem: "flexible bracket" });
		expect(line("joint", "light-corded")?.each ?? null).toBeNull();
		// In hundredths of money, so that no binary fraction is trusted.
		const pence = 240 * (corded?.ordered ?? 0) + 115 * (flexible?.ordered ?? 0) + Math.round(35 * (cord?.ordered ?? 0));
		expect(Math.round(order.total * 100)).toBe(pence);
		expect(order.notPriced).toBe(order.lines.length - 3);
		expect(order.pricesNotUsed).toEqual(["curtain pole"]);
	});

	test("says why in the job's unit", () => {
		const cord = line("cord", "light-corded")?.bays[0]?.part as Part;
		expect(describePart(cord, "mm").why).toContain("800 mm each");
		// 800 / 25.4 = 31.496: 31 1/2.
		expect(describePart(cord, "in").why).toContain('31 1/2" each');
	});
});

test("no field of the CSV is taken for a formula, and all come back whole", () => {
	const id = fc.string({ minLength: 1, maxLength: 20 }).map((text) => `${text.replace(/[\p{Cc}\s]/gu, "x")}x`);
	const start = fc.constantFrom("=", "+", "-", "@", '"', ",", ";", "a");
	const property = fc.property(start, id, (sign, rest) => {
		const name = `${sign}${rest}`;
		const job = jobOf({
			bays: [{ id: name, corners: CORNERS, curtains: [{ cloth: name }] }],
			cloths: [{ id: name, name, width: 1400 }],
		});
		const order = orderOf(job);
		const rows: string[][] = parse(writeOrderCsv(order, "mm"));
		for (const field of rows.flat()) expect(field).not.toMatch(/^[=+\-@\t\r]/);
		const bays = rows.slice(1, -1).map((row) => row[8]);
		for (const bay of bays) expect(bay?.replace(/^'(?=[=+\-@])/, "")).toBe(name);
	});
	fc.assert(property, { seed: 4180, numRuns: 100 });
});

test.each([
	["pair", "the pair"],
	["left", "the one curtain"],
])("drawn as %s with no curtain named, what hangs is %s, and no number that nobody has given", (draw, name) => {
	const plan = planOf({ track: { draw } });
	const why = ofKind(plan, "glider", "master-carrier").map((part) => describePart(part, "mm").why);
	expect(why).toHaveLength(2);
	for (const words of why) {
		expect(words).toContain(name);
		expect(words).not.toMatch(/curtains? \d/);
	}
});

test("a price finer than a hundredth is shown and saved as it was given", () => {
	const prices = [
		{ item: "glider", each: 0.125 },
		{ item: "bracket", each: 2.4 },
	];
	const order = orderOf(withBay({}, { prices }));
	const rows: Record<string, string>[] = parse(writeOrderCsv(order, "mm"), { columns: true });
	const row = (item: string) => rows.find((each) => each.item === item);
	expect(row("glider")?.each).toBe("0.125");
	expect(row("bracket")?.each).toBe("2.40");
	expect(row("glider")?.cost).toBe((0.125 * Number(row("glider")?.["to order"])).toFixed(2));
});

test("a curtain that parts is named once, by the number that findings give it", () => {
	const plan = planOf({ curtains: [{ drop: 2000 }] });
	expect(plan.curtains).toHaveLength(2);
	const whys = ofKind(plan, "glider", "master-carrier", "hook", "heading-tape").map(
		(part) => describePart(part, "mm").why,
	);
	expect(whys).toHaveLength(4);
	for (const why of whys) expect(why).toMatch(/curtain 1\b/);
});
