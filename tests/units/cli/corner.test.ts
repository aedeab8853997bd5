import { describe, expect, test } from "vitest";
import { baywright, baywrightHere } from "./run.ts";

const corner = (...args: string[]) => baywrightHere(["corner", ...args]);

describe("the corner card as data", () => {
	// Route surveying's circular curve worked by hand for the wall faces: the turn is 180° less the room angle, set-back
	// (d + R)·tan(turn/2), sweep R·turn, and from the virtual corner, d/cos(turn/2) out, back to the arc.
	test.each([
		[135, 40, 310],
		[90, 40, 310],
		[90, 40, 225],
		[60.5, 55, 400],
		[170, 100, 1000],
	])("%s°, projection %s, radius %s", async (angle, d, radius) => {
		const { status, out, err } = await corner(
			...["--angle", `${angle}`, "--projection", `${d}`, "--radius", `${radius}`, "--brackets", "900", "--json"],
		);
		expect([status, err, out.endsWith("}\n"), out.trim().includes("\n")]).toEqual([0, "", true, false]);
		const card = JSON.parse(out);
		expect(Object.keys(card).sort()).toEqual(
			["betweenBrackets", "corner", "cornerGap", "interiorAngle", "radius", "setBack", "sweep"].sort(),
		);
		const turn = ((180 - angle) * Math.PI) / 180;
		const setBack = (d + radius) * Math.tan(turn / 2);
		expect(card.corner).toBe(null);
		expect(card.interiorAngle).toBe(angle);
		expect(card.radius).toBe(radius);
		expect(card.setBack[0]).toBeCloseTo(setBack, 8);
		expect(card.setBack[1]).toBeCloseTo(setBack, 8);
		expect(card.sweep).toBeCloseTo(radius * turn, 8);
		expect(card.cornerGap).toBeCloseTo((d + radius) / Math.cos(turn / 2) - radius, 8);
		expect(card.betweenBrackets).toBeCloseTo(radius * turn + 2 * (900 - setBack), 8);
	});

	// The figures that the project is to reproduce: 145.0, 243.5, 653.5 for 135°; 350.0 and 486.9 for the right angle of
	// common practice (no source).
	test("the two corners everybody checks", async () => {
		const splayed = JSON.parse(
			baywright(["corner", "--angle=135", "--projection=40", "--radius=310", "--brackets=350", "--json"]).out,
		);
		expect(Math.abs(splayed.setBack[0] - 144.97)).toBeLessThan(0.005);
		expect(Math.abs(splayed.sweep - 243.47)).toBeLessThan(0.005);
		expect(Math.abs(splayed.betweenBrackets - 653.5)).toBeLessThan(0.05);
		const square = JSON.parse((await corner("--angle=90", "--projection=40", "--radius=310", "--json")).out);
		expect(square.setBack).toEqual([expect.closeTo(350, 9), expect.closeTo(350, 9)]);
		expect(Math.abs(square.sweep - 486.9)).toBeLessThan(0.05);
		expect(square).not.toHaveProperty("betweenBrackets");
	});

	test("unequal projections: at a right angle each set-back is the other wall's projection and the radius", async () => {
		const { out } = await corner("--angle", "90", "--left", "40", "--right", "60", "--radius", "310", "--json");
		expect(JSON.parse(out).setBack).toEqual([expect.closeTo(370, 9), expect.closeTo(350, 9)]);
	});

	test("one wall's projection can differ from what is given for both", async () => {
		const { out } = await corner("--angle", "90", "--projection", "40", "--right", "60", "--radius", "310", "--json");
		expect(JSON.parse(out).setBack).toEqual([expect.closeTo(370, 9), expect.closeTo(350, 9)]);
	});

	test("a bracket that would stand on the bend leaves nothing between brackets", async () => {
		const { out } = await corner("--angle=90", "--projection=40", "--radius=310", "--brackets=349", "--json");
		expect(JSON.parse(out).betweenBrackets).toBe(null);
	});

	test("lengths are read in every unit, the angle with its sign", async () => {
		const typed = ["--angle", "135°", "--projection", "4cm", "--radius", "0.31 m", "--brackets", "35", "--unit", "cm"];
		const plain = ["--angle", "135", "--projection", "40", "--radius", "310", "--brackets", "350"];
		expect(JSON.parse((await corner(...typed, "--json")).out)).toEqual(
			JSON.parse((await corner(...plain, "--json")).out),
		);
	});
});

describe("the corner card for people", () => {
	test("has the figures, and by how much the usual rule is off", async () => {
		const { out, status } = await corner(
			"--angle",
			"135",
			"--projection",
			"40",
			"--radius",
			"310",
			"--brackets",
			"350",
		);
		expect(status).toBe(0);
		expect(out).toMatch(/set-back +145\.0 mm/);
		expect(out).toMatch(/sweep +243\.5 mm/);
		// (40 + 310)/cos 22.5° − 310 = 68.837
		expect(out).toMatch(/corner gap +68\.8 mm/);
		expect(out).toMatch(/between brackets +653\.5 mm/);
		expect(out.replace(/\s+/g, " ")).toContain(
			"490 mm of track between brackets 350 mm from the corner; this corner needs 653.5 mm, so the rule is 163.5 mm too short.",
		);
		expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
	});

	test("says that the rule is too long where it is", async () => {
		const { out } = await corner("--angle", "90", "--projection", "40", "--radius", "310");
		// 310·π/2 = 486.95, brackets exactly where the bend starts and ends: 490 is 3.05 more.
		expect(out.replace(/\s+/g, " ")).toContain("needs 486.9 mm, so the rule is 3.1 mm too long.");
		expect(out).not.toContain("between brackets  ");
	});

	test("is in inches when asked", async () => {
		// 145.0 mm is 5.708 in, nearest sixteenth 11/16 (0.6875).
		const { out } = await corner("--angle=135", "--projection=40 mm", "--radius=310 mm", "--unit=in");
		expect(out).toMatch(/set-back +5 11\/16" /);
	});
});

describe("a corner that cannot be", () => {
	const good = { angle: "135", projection: "40", radius: "310" };
	test.each<[Record<string, string>, string]>([
		[
			{ angle: "345" },
			'option --angle: found "345", allowed degrees from 20 to 177, or from 183 to 340 round an external corner',
		],
		[
			{ angle: "180" },
			'option --angle: found "180", allowed degrees from 20 to 177, or from 183 to 340 round an external corner: nearer to straight than that a track springs and nothing is bent',
		],
		[
			{ angle: "0" },
			'option --angle: found "0", allowed degrees from 20 to 177, or from 183 to 340 round an external corner',
		],
		[
			{ angle: "-90" },
			'option --angle: found "-90", allowed degrees from 20 to 177, or from 183 to 340 round an external corner, as in 135 or 92.5',
		],
		[
			{ angle: "square" },
			'option --angle: found "square", allowed degrees from 20 to 177, or from 183 to 340 round an external corner, as in 135 or 92.5',
		],
		[{ radius: "0" }, 'option --radius: found "0", allowed a length over 0'],
		[{ radius: "310 miles" }, 'option --radius: found "310 miles", allowed the units mm, cm, m, in and ft'],
		[{ projection: "-40" }, 'option --projection: found "-40", allowed a length without a sign'],
		[{ brackets: "" }, "option --brackets: found nothing, allowed a length such as 2400, 240 cm, 2.4 m or 94 1/2 in"],
		[{ unit: "ft" }, 'option --unit: found "ft", allowed mm, cm, in'],
	])("%j", async (wrong, line) => {
		const args = Object.entries({ ...good, ...wrong }).flatMap(([name, value]) => [`--${name}`, value]);
		expect(await corner(...args)).toEqual({
			status: 1,
			out: "",
			err: `baywright: corner: ${line}\n`,
			lines: [`baywright: corner: ${line}`],
		});
	});

	test.each([
		[
			["--angle", "135", "--radius", "310"],
			"option --projection: found nothing, allowed a value as in --projection 40",
		],
		[["--angle", "135", "--projection", "40"], "option --radius: found nothing, allowed a value as in --radius 310"],
		[["--radius", "310", "--left", "40"], "option --angle: found nothing, allowed a value as in --angle 135"],
		[["--angle", "--radius", "310"], "option --angle: found nothing, allowed a value as in --angle 135"],
		[["135"], 'found "135", allowed options only'],
		[["--angle", "90", "--angle", "135"], "option --angle: given twice, allowed once"],
		[["--json=yes"], 'option --json: found "yes", allowed no value'],
	])("%j", async (args, line) => {
		expect(await corner(...args)).toMatchObject({ status: 1, out: "", lines: [`baywright: corner: ${line}`] });
	});
});

test("an external corner by its closed form: clearance d/cos(δ/2) − R(1/cos(δ/2) − 1), set-back (R − d)·tan(δ/2)", () => {
	const { out, status } = baywright(["corner", "--angle", "270", "--projection", "77", "--radius", "225", "--json"]);
	expect(status).toBe(0);
	const card = JSON.parse(out);
	expect(card.cornerGap).toBeCloseTo(77 * Math.SQRT2 - 225 * (Math.SQRT2 - 1), 6);
	expect(card.setBack[0]).toBeCloseTo(225 - 77, 6);
	expect(card.sweep).toBeCloseTo((225 * Math.PI) / 2, 6);
});
