import { composeSheets, type Page, writeSvg } from "@baywright/sheets";
import { expect, test } from "vitest";
import { planned } from "./jobs.ts";

const pageOf = (more: object = {}, sheet: "fitting" | "bends" = "fitting", page = 0): Page => {
	const { job, plans } = planned({}, more);
	return composeSheets(job, plans, {}, [sheet])[0]?.pages[page] as Page;
};

test("a page is as large as its paper, with a group for each layer that it has, in order", () => {
	const svg = writeSvg(pageOf(), "Fitting sheet");
	expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
	const groups = [...svg.matchAll(/<g id="([A-Z]+)">/g)].map(([, name]) => name);
	expect(groups).toEqual(["WALLS", "STACK", "BRACKETS", "TRACK", "CUTS", "DIMENSIONS", "TEXT", "PAPER"]);
	expect(writeSvg(pageOf(), "Fitting sheet")).toBe(svg);
});

test("bends are arcs, at the scale of the sheet and in their own sense", () => {
	const svg = writeSvg(pageOf(), "Fitting sheet");
	const track = /<g id="TRACK">\n<path d="([^"]+)"/.exec(svg)?.[1] ?? "";
	// 310 at 1:20; clockwise as seen is sweep flag 1 (SVG 1.1, 8.3.8).
	const arcs = [...track.matchAll(/A([\d.]+) ([\d.]+) 0 ([01]) ([01])/g)].map((match) => match.slice(1));
	expect(arcs).toEqual([
		["15.5", "15.5", "0", "1"],
		["15.5", "15.5", "0", "1"],
	]);
});

test("what a job is called cannot break the file", () => {
	const svg = writeSvg(pageOf({ title: `</text><script>"&'`, site: "\u0007 bell" }), `"<&>"`);
	expect(svg).not.toContain("<script");
	expect(svg).toContain("&lt;/text&gt;&lt;script&gt;&quot;&amp;'");
	expect(svg).not.toContain("\u0007");
});

test("a true-size page shows its part of the template through a hole", () => {
	const svg = writeSvg(pageOf({}, "bends", 1), "Bend templates");
	expect(svg).toMatch(/<clipPath id="hole-0"><rect x="31" y="10" width="169" height="225"\/>/);
	expect(svg).toMatch(/<g clip-path="url\(#hole-0\)"><g transform="matrix\(1 0 0 1 [-\d.]+ [-\d.]+\)">/);
});
