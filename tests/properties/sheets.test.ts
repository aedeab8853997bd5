import { type BayPlan, formatLength, parseJob, planJob } from "@baywright/setout";
import { composeSheets, type PaperName, type Sheet } from "@baywright/sheets";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { meetings, outside } from "../oracles/lettering.ts";
import { type AnyBay, allForms, anyCorners, baysOf, bowed, drawnAt, faceted } from "./any-bay.ts";

const origin = { x: 0, y: 0, heading: 0 };

function sheetsOf(bay: AnyBay, paper: PaperName, unit: "mm" | "cm" | "in"): { plan: BayPlan; sheets: Sheet[] } | null {
	const drawn = drawnAt(bay, anyCorners(bay, origin));
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		title: "Any bay",
		display: { length: unit },
		bays: [drawn],
	});
	if (!read.ok) return null;
	const plans = planJob(read.job);
	return {
		plan: plans[0] as BayPlan,
		sheets: composeSheets(read.job, plans, { paper, date: "2026-11-27" }, ["fitting", "bends"]),
	};
}

const textsOf = ({ pages }: Sheet): string =>
	pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === "text" ? [item.text] : []))).join("\n");

/** Everything that a fitter reads off must be on paper, as it is shown elsewhere. */
function figuresOf(plan: BayPlan, unit: "mm" | "cm" | "in"): string[] {
	const figure = (mm: number) => formatLength(mm, unit, { precision: 1 });
	return [
		...plan.brackets.flatMap(({ fromLeftCorner, fromRightCorner, projection }) => [
			fromLeftCorner,
			fromRightCorner,
			projection,
		]),
		...plan.pieces.flatMap(({ cutLength, finishedLength, marks }) => [
			cutLength,
			finishedLength,
			...marks.flatMap(({ fromLeft, fromRight }) => [fromLeft, fromRight]),
		]),
		...plan.corners.flatMap(({ radius, setBack, sweep, cornerGap, sprung }) =>
			sprung || radius === 0 ? [cornerGap] : [radius, sweep, cornerGap, ...setBack.filter((mm) => mm !== null)],
		),
		...plan.bows.flatMap(({ radius, sweep }) => [radius, sweep]),
		...(plan.chain?.walls.map(({ length }) => length) ?? []),
	].map(figure);
}

describe("the sheets of any bay", () => {
	test.each([
		["of any form", allForms, 40],
		["bowed", bowed, 15],
		["of many facets", faceted, 15],
	])(
		"%s: no words on one another, none outside the frame, every figure there",
		(_, forms, runs) => {
			let planned = 0;
			fc.assert(
				fc.property(
					baysOf(forms),
					fc.constantFrom<PaperName>("A4", "A3", "Letter"),
					fc.constantFrom("mm" as const, "cm" as const, "in" as const),
					(bay, paper, unit) => {
						const made = sheetsOf(bay, paper, unit);
						if (made === null) return;
						const { plan, sheets } = made;
						for (const sheet of sheets) {
							sheet.pages.forEach((page, i) => {
								expect(meetings(page), `${sheet.name} ${i + 1}`).toEqual([]);
								expect(outside(page), `${sheet.name} ${i + 1}`).toEqual([]);
							});
						}
						if (plan.path === null) return;
						planned++;
						const fitting = textsOf(sheets.find(({ name }) => name === "fitting") as Sheet);
						for (const figure of figuresOf(plan, unit)) expect(fitting).toContain(figure);
					},
				),
				{ numRuns: runs, seed: 7200, endOnFailure: true },
			);
			expect(planned).toBeGreaterThan(runs / 4);
		},
		600_000,
	);
});
