import { expect, test } from "vitest";
import { baywrightHere, jobText } from "./run.ts";

const planOf = async (job: object, bay: object, ...options: string[]) => {
	const { out, err } = await baywrightHere(["plan", ...options, "-"], jobText(job, bay));
	expect(err).toBe("");
	return out;
};

/** One line, however it was wrapped. */
const flat = (text: string) => text.replace(/\s+/g, " ");

test("the order lists every bracket, and prices and total only from the job's own list", async () => {
	const bare = await planOf({}, { track: { height: 2300 } });
	expect(bare).toContain("No prices: they come only from the job's own list.");
	const brackets = bare.match(/^ +\d+ {2}(left|front|right) wall/gm)?.length ?? 0;
	expect(brackets).toBeGreaterThan(6);
	expect(bare).toMatch(new RegExp(`Wall bracket, projection 40 mm +${brackets} `));
	const priced = await planOf({ prices: [{ item: "bracket", each: 2.4 }] }, { track: { height: 2300 } });
	expect(priced).toContain(`Total ${(2.4 * brackets).toFixed(2)}; not in it: `);
	expect(priced).toContain("not priced");
});

test("the cord: twice a track of 2 × 860 + 1720 less what its bends save, a loop to 1500, 300 of knots", async () => {
	const track = { height: 2300, projection: 40, radius: 310 };
	const along = 2 * (860 + 1720 + 860 - 2 * (620 - 155 * Math.PI));
	const out = flat(await planOf({}, { track }));
	expect(out).toContain(`there and back ${Math.round(along)} mm`);
	expect(out).toContain(`In all ${Math.round(along + 1600 + 300)} mm of cord`);
	const inches = flat(await planOf({ display: { length: "in" } }, { track }));
	// 800 / 25.4 = 31.496, nearest sixteenth 1/2.
	expect(inches).toContain('Loop 31 1/2" long');
});

test("cautions of the job's region, with source and date, once; none of cords where nothing is corded", async () => {
	const ireland = flat(await planOf({ region: "IE" }, { track: { height: 2300 } }));
	expect(ireland).toContain("Cords end at least 1.6 m above the floor");
	expect(ireland).toContain("down to 1600 mm above the floor");
	expect(ireland).toMatch(/nsai\.ie; last checked \d+ [A-Z][a-z]+ 20\d\d/);
	const drawn = flat(await planOf({ region: "IE" }, { track: { system: "flexible" } }));
	expect(drawn).not.toContain("nsai.ie");
});

test("fixings: what each wall is, and the zones of its holes, labelled Great Britain's", async () => {
	const walls = [{ surface: "batten" }, { surface: "masonry" }, {}];
	const out = flat(await planOf({}, { walls, ceiling: 2400, track: { height: 2300 } }));
	expect(out).toContain("Figures of Great Britain: BS 7671");
	expect(out).toMatch(/batten top of the wall/);
	expect(out).toMatch(/Batten: Pilot of 2 mm/);
	expect(out).toMatch(/Not known: Drill a trial hole/);
	expect(out).toContain("The system's own instructions come first");
});

test("the plan as data: fixings, cords and parts with what, why and whence", async () => {
	const { bays } = JSON.parse(await planOf({}, { track: { height: 2300 } }, "--json"));
	const [bay] = bays;
	expect(bay.fixings.length).toBe(bay.brackets.length);
	expect(bay.cords).toMatchObject({ side: "right", lowest: 1500 });
	const bracket = bay.parts.find(({ item }: { item: string }) => item === "bracket");
	expect(bracket).toMatchObject({
		quantity: bay.brackets.length,
		unit: "piece",
		what: "Wall bracket, projection 40 mm",
		from: [{ of: "brackets", indexes: bay.brackets.map((_: unknown, i: number) => i) }],
	});
});
