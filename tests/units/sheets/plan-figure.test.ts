import { readdirSync } from "node:fs";
import { composeSheets, type Figure } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { struckThrough } from "../../oracles/lettering.ts";
import { example, type Planned, planned } from "./jobs.ts";

const examples = readdirSync(new URL("../../../examples/", import.meta.url)).flatMap((file) =>
	file.endsWith(".baywright.json") ? [file.replace(".baywright.json", "")] : [],
);

function planOf({ job, plans }: Planned, paper: "A4" | "A3" | "Letter" = "A4"): Figure {
	const figures = composeSheets(job, plans, { paper }, ["fitting"]).flatMap((sheet) => sheet.figures);
	return figures.find(({ name }) => name === "plan") as Figure;
}

const wordsOn = ({ items }: Figure): string[] =>
	items.flatMap((item) => (item.kind === "text" && item.text !== "" ? [item.text] : []));

/** Straight lines that words must stay off: dimensions with their extension lines, wall faces, the track. Leaders, grey, may pass near their own words. */
const straights = ({ items }: Figure) =>
	items.flatMap((item) =>
		item.kind === "path" &&
		item.stroke !== undefined &&
		((item.layer === "DIMENSIONS" && item.stroke.ink === undefined) ||
			(item.layer === "WALLS" && item.stroke.pen === "wide") ||
			item.layer === "TRACK")
			? item.vertices.slice(1).flatMap(({ at }, i) => {
					const from = item.vertices[i];
					return from === undefined || from.bulge !== 0 ? [] : [[from.at, at] as const];
				})
			: [],
	);

// Source: ISO 129-1, the figure of a dimension is not crossed or parted by any line.
describe("words on the plan", () => {
	test.each(examples)("of %s are crossed by no dimension, wall face or track", (name) => {
		const of = example(name);
		for (const paper of ["A4", "A3", "Letter"] as const) {
			const plan = planOf(of, paper);
			expect(struckThrough(plan, straights(plan)), paper).toEqual([]);
		}
	});
});

test("round an external corner both runs have their dimension, one of them on the room's side", () => {
	const plan = planOf(example("coach-house"));
	const turned = plan.items.flatMap((item) =>
		item.kind === "text" && /^\(\d+\.\d\)$/.test(item.text) ? [[item.text, item.layer, Math.abs(item.turn)]] : [],
	);
	// Set parallel to what they measure, not beside it with a leader.
	expect(turned).toEqual([
		["(1700.0)", "DIMENSIONS", 0],
		["(1600.0)", "DIMENSIONS", Math.PI / 2],
	]);
});

test("a rise that is only drawn stands in brackets, and one into the room says so without a minus", () => {
	expect(wordsOn(planOf(example("bandstand")))).toContain("(rise 210.0)");
	expect(wordsOn(planOf(example("tide-mill")))).toContain("(rise 140.0 into the room)");
	const taped = planned({
		walls: [{}, { rise: 90 }, {}],
		readings: [
			{ kind: "run", wall: 1, value: 1800 },
			{ kind: "rise", wall: 1, at: null, value: 90 },
		],
	});
	expect(wordsOn(planOf(taped)).filter((each) => each.includes("rise"))).toEqual([expect.stringMatching(/^rise \d/)]);
});

test("a bay that all but fits at the larger scale is drawn at it, if its words still find their places", () => {
	// 2160 between 820 and 790 that turn by 28° and 31°: 3561 from end to end, 142.4 mm at 1:25, with A4's column 160 mm wide.
	expect(planOf(example("tollgate-house")).scale).toBe(25);
});

test("where words are left to the table of the walls, it keeps the brackets round what is not taped", () => {
	const { job, plans } = example("ferry-inn");
	const [sheet] = composeSheets(job, plans, {}, ["fitting"]);
	const words = sheet?.pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === "text" ? [item.text] : [])));
	expect(words).toEqual(expect.arrayContaining(["Walls", "(1450.0)", "(60.0)", "(270.0°)"]));
	// As data they are plain figures.
	expect(sheet?.tables.find(({ name }) => name === "walls")?.rows[0]?.[1]).toBe("1450.0");
});
