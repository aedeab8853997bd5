import { composeSheets, SHEET_NAMES } from "@baywright/sheets";
import { describe, expect, it } from "vitest";
import { SHEETS_IN_ORDER } from "../../../packages/app/src/sheets/making.ts";
import { pagesOf } from "../../../packages/app/src/sheets/shown.ts";
import { whyNot } from "../../../packages/app/src/sheets/why-not.ts";
import { example } from "../sheets/jobs.ts";

describe("the stage Sheets", () => {
	it("lists every sheet that there is, in the order of the pack", () => {
		expect(SHEETS_IN_ORDER).toEqual(SHEET_NAMES);
	});

	it("says why of every sheet that a bay does not have", () => {
		for (const name of ["quay-cottage", "pepperpot", "ferry-inn"]) {
			const { job, plans, plan } = example(name);
			const there = composeSheets(job, plans).map((sheet) => sheet.name);
			for (const sheet of SHEET_NAMES) {
				if (!there.includes(sheet)) expect(whyNot(sheet, plan, true, "mm")).toMatch(/^[a-z].*\.$/);
			}
		}
	});

	it("says what stands in the track's way, and tells of the order once for all bays", () => {
		const { plan: refused } = example("pepperpot");
		expect(refused.path).toBeNull();
		expect(whyNot("bends", refused, true, "mm")).toMatch(/^no track fits yet\. .+\.$/);
		expect(whyNot("workroom", refused, true, "mm")).not.toContain("track");
		expect(whyNot("order", refused, false, "mm")).toBeNull();
	});

	it("leaves sheets that are not ticked out of the pack, and keeps the places of the others", () => {
		const sheet = (name: "survey" | "fitting" | "order", pages: number) => ({
			name,
			bay: "a",
			title: name,
			pages: Array.from({ length: pages }, (_, i) => ({ label: `${name} ${i + 1}`, width: 210, height: 297 })),
			figures: 0,
			tables: 0,
		});
		const made = {
			sheets: [sheet("survey", 2), sheet("fitting", 1), sheet("order", 1)],
			notMade: [],
			missingLetters: [],
		};
		expect(pagesOf(made, ["fitting"]).map(({ sheet: place, page, of }) => [place, page, of.name])).toEqual([
			[0, 0, "survey"],
			[0, 1, "survey"],
			[2, 0, "order"],
		]);
		expect(pagesOf(null, [])).toEqual([]);
	});
});
