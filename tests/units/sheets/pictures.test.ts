import { composeSheets, type SheetName, type SheetOptions, writeSvg } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example } from "./jobs.ts";

// Pages as they were last looked at. Where one has changed, look at it before it is kept: `npx vitest run tests/units/sheets/pictures.test.ts --update`
// writes the pages anew into `pictures/`, a browser shows them, and `git diff` says what has moved. They are kept without their letters' own files, so
// that they stay small: each run of letters says how long it is, and a browser without the font keeps it there.

const PICTURES: readonly (readonly [example: string, sheet: SheetName, page: number, options: SheetOptions])[] = [
	["quay-cottage", "fitting", 1, {}],
	["coach-house", "fitting", 1, {}],
	["tide-mill", "hand-over", 1, {}],
	["bandstand", "bends", 1, {}],
	["quay-cottage", "bends", 2, { measured: { across: 98.5, down: 99 } }],
	["sluice-cottage", "strips", 1, {}],
	["gable-end", "survey", 1, { paper: "Letter" }],
	["rope-walk", "workroom", 1, { paper: "A3" }],
];

const withoutFontFiles = (svg: string): string => svg.replace(/@font-face\{[^}]*\}\n/g, "");

describe("pages of the examples look as they did", () => {
	test.each(PICTURES)("%s, %s, page %i", async (name, sheet, page, options) => {
		const { job, plans } = example(name);
		const [composed] = composeSheets(job, plans, { date: "2026-11-27", ...options }, [sheet]);
		const drawn = composed?.pages[page - 1];
		if (composed === undefined || drawn === undefined) throw new Error(`no page ${page}`);
		const svg = withoutFontFiles(writeSvg(drawn, `${composed.title}, ${drawn.label}`));
		await expect(svg).toMatchFileSnapshot(`pictures/${name}-${sheet}-${page}.svg`);
	});
});
