import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { stripFigures } from "../../../packages/app/src/strip/figures.ts";

const measure = (text: string): number => text.length * 8;

function planOf(corners: readonly (readonly [number, number])[]) {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [{ id: "b", corners, track: { system: "light-corded", joints: [{ wall: 1, at: 900 }] } }],
	});
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	return planBay(bay, libraryOf(parsed.job));
}

const plan = planOf([
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
]);

/** mm read back from the words; to half a millimetre, as they are rounded. */
const HALF = 0.5 + 1e-9;

describe("readings of the strip", () => {
	it("are taken from each piece's own cut ends: station less the piece's start and what end hardware takes up", () => {
		expect(plan.pieces).toHaveLength(2);
		const takeUp = plan.system.endTakeUp;
		for (const from of ["left", "right"] as const) {
			const { below } = stripFigures(plan, "mm", from, ({ piece, mm }) => piece * 10_000 + mm, measure);
			const brackets = below.filter(({ of }) => of?.kind === "bracket");
			expect(brackets.length).toBeGreaterThan(6);
			for (const { lines, of, want } of brackets) {
				const bracket = plan.brackets[of?.index ?? -1];
				const piece = plan.pieces[Math.floor((want + 1) / 10_000)];
				if (bracket === undefined || piece === undefined) throw new Error("no such mark");
				const first = piece === plan.pieces[0];
				const expected =
					from === "left"
						? bracket.station - piece.from - (first ? takeUp : 0)
						: piece.to - bracket.station - (first ? 0 : takeUp);
				expect(lines).toHaveLength(1);
				expect(Math.abs(Number(lines[0]?.text) - expected)).toBeLessThanOrEqual(HALF);
			}
		}
	});

	it("give both ends at once, the left one first", () => {
		const { below } = stripFigures(plan, "mm", "both", ({ mm }) => mm, measure);
		for (const { lines } of below.slice(0, 4)) {
			const [left, right] = lines.map(({ text }) => Number(text)) as [number, number];
			expect(Math.abs(left + right - (plan.pieces[0]?.cutLength ?? 0))).toBeLessThanOrEqual(2 * HALF);
		}
	});

	it("name every cut end with 0 and the cut length, and every bend by start, middle and end", () => {
		const { above, below } = stripFigures(plan, "mm", "left", ({ mm }) => mm, measure);
		const ends = below.filter(({ colour }) => colour === "cut").map(({ lines }) => Number(lines[0]?.text));
		expect(ends).toEqual(plan.pieces.flatMap(({ cutLength }) => [0, Math.round(cutLength)]));
		expect(above.map(({ of }) => of?.index)).toEqual([1, 1, 1, 2, 2, 2]);
	});
});
