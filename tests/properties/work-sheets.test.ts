import { type BayPlan, formatLength, parseJob, planJob } from "@baywright/setout";
import { composeSheets, type PaperName, type Sheet, type SheetName, type StripPaper } from "@baywright/sheets";
import fc from "fast-check";
import { expect, test } from "vitest";
import { meetings, outside } from "../oracles/lettering.ts";
import { type AnyBay, allForms, anyCorners, baysOf, drawnAt } from "./any-bay.ts";

const origin = { x: 0, y: 0, heading: 0 };
const NAMES: readonly SheetName[] = ["survey", "strips", "order", "workroom", "hand-over"];

const curtainsOf = fc.record({
	cloth: fc.constantFrom("printed-cotton", "half-drop-weave", "sheer-voile", null),
	heading: fc.constantFrom("pencil", "pinch", "goblet", "box", "wave"),
	fullness: fc.integer({ min: 10, max: 30 }).map((tenths) => tenths / 10),
	drop: fc.option(fc.integer({ min: 300, max: 3500 })),
	stacks: fc.constantFrom("auto", "left", "right", "both"),
});

const makeUpOf = fc.record({
	overlap: fc.integer({ min: 0, max: 200 }),
	returns: fc.integer({ min: 0, max: 150 }),
	ease: fc.integer({ min: 0, max: 60 }),
	widths: fc.constantFrom("whole", "half"),
});

interface Given {
	readonly bay: AnyBay;
	readonly curtains: object;
	readonly makeUp: object;
	readonly paper: PaperName;
	readonly strips: StripPaper;
	readonly unit: "mm" | "cm" | "in";
}

function made({ bay, curtains, makeUp, paper, strips, unit }: Given): { plan: BayPlan; sheets: Sheet[] } | null {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		title: "Any bay",
		display: { length: unit },
		prices: [{ item: "glider", each: 0.1 }],
		bays: [{ ...drawnAt(bay, anyCorners(bay, origin)), curtains: [curtains], makeUp }],
	});
	if (!read.ok) return null;
	const plans = planJob(read.job);
	return { plan: plans[0] as BayPlan, sheets: composeSheets(read.job, plans, { paper, strips }, NAMES) };
}

const linesOf = (sheet: Sheet | undefined): string[] =>
	sheet?.pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === "text" ? [item.text] : []))) ?? [];

test("of any bay: no words on one another, none outside the frame, every figure of the plan there", () => {
	let planned = 0;
	fc.assert(
		fc.property(
			fc.record({
				bay: baysOf(allForms),
				curtains: curtainsOf,
				makeUp: makeUpOf,
				paper: fc.constantFrom<PaperName>("A4", "A3", "Letter", "Tabloid"),
				strips: fc.constantFrom<StripPaper>("sheets", "long", "roll"),
				unit: fc.constantFrom("mm" as const, "cm" as const, "in" as const),
			}),
			(given) => {
				const it = made(given);
				if (it === null) return;
				const { plan, sheets } = it;
				for (const sheet of sheets)
					sheet.pages.forEach((page, i) => {
						expect(meetings(page), `${sheet.name} ${i + 1}`).toEqual([]);
						expect(outside(page), `${sheet.name} ${i + 1}`).toEqual([]);
					});
				if (plan.path === null) return;
				planned++;
				const of = (name: SheetName) => linesOf(sheets.find((sheet) => sheet.name === name));
				const figure = (mm: number) => formatLength(mm, given.unit, { precision: 1 });
				const about = (mm: number) => formatLength(mm, given.unit, { unit: true });
				const strips = of("strips");
				for (const { marks } of plan.pieces)
					for (const { fromLeft, fromRight } of marks) {
						expect(strips.some((line) => line.endsWith(`   ${figure(fromLeft)}`))).toBe(true);
						expect(strips).toContain(figure(fromRight));
					}
				const workroom = of("workroom");
				for (const { finishedWidth, drop, flatWidth, cutting, gliders } of plan.curtains)
					for (const shown of [
						about(finishedWidth),
						about(flatWidth),
						String(gliders),
						...(drop === null ? [] : [about(drop)]),
						...(cutting?.cutDrop == null ? [] : [about(cutting.cutDrop), String(cutting.widths)]),
					])
						expect(workroom).toContain(shown);
				const order = sheets.find((sheet) => sheet.name === "order")?.tables[0]?.rows.map((cells) => cells[4]) ?? [];
				for (const { kind, quantity, spare } of plan.parts)
					if (kind === "glider") expect(order).toContain(String((quantity ?? 0) + spare));
				const [width, height] = [about(plan.path.length), plan.height === null ? "not set" : about(plan.height)];
				for (const shown of [width, height]) expect(of("hand-over")).toContain(shown);
			},
		),
		{ numRuns: 60, seed: 7300, endOnFailure: true },
	);
	expect(planned).toBeGreaterThan(20);
}, 600_000);
