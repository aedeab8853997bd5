import { type CutPiece, cutAnswer, type LengthUnit, parseLength, sawnAtLeft } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { planned } from "../app/marks-right-angled.ts";
import { bayOf } from "../setout-survey/bay.ts";

/** Walls of 1500, 2500 and 1500 at right angles, track 40 off, bends of 310, end hardware 100 an end, in one piece. */
const pieceOf = (cut: number, fitted: object = {}, track: object = {}): CutPiece => {
	const corners = [
		[0, 0],
		[0, 1500],
		[2500, 1500],
		[2500, 0],
	];
	const plan = planned(
		bayOf({
			corners,
			track: { system: "light-corded", projection: 40, radius: 310, joints: "none", ...track },
			fitted: { cut: [{ piece: "A", length: cut }], ...fitted },
		}),
	);
	const [piece] = plan.fitted?.cut ?? [];
	if (piece === undefined) throw new Error("no answer");
	return piece;
};

// Between virtual corners 1460, 2420, 1460; each right-angled bend takes 2R − πR/2 off (closed form).
const SWEEP = 155 * Math.PI;
const CUT = 1460 + 2420 + 1460 - 2 * (620 - SWEEP) - 200;
// Middles from the left cut end, which lies 100 in: the leg up to the bend, and half its sweep.
const FIRST = 1460 - 310 - 100 + SWEEP / 2;
const SECOND = FIRST + SWEEP + 2420 - 620;

const madeAt = (first: number, second: number, name = "A") => ({
	done: [
		"bend-1",
		`bend-1 radius 310 sweep 486.9 middle ${first.toFixed(1)} of ${name}`,
		"bend-2",
		`bend-2 radius 310 sweep 486.9 middle ${second.toFixed(1)} of ${name}`,
	],
});

const answer = (piece: CutPiece, unit: LengthUnit = "mm") => cutAnswer(piece, unit);

describe("in inches", () => {
	test("is rounded once, in sixteenths: 3.05 mm is one of them to saw off, and 25.9 mm missing is more than an inch", () => {
		expect(answer(pieceOf(CUT + 3.05), "in")).toContain('1/16" too long: saw 1/16" off');
		expect(answer(pieceOf(CUT - 25.9), "in")).toMatch(/^1 1\/16" too short/);
		expect(answer(pieceOf(CUT + 0.7), "in")).toBe("Still fits, to the length.");
		expect(answer(pieceOf(CUT + 1.9), "in")).toBe('Still fits, 1/16" to spare.');
	});

	test("and in millimetres never says to saw off more than there is too much, nor that less is missing than is", () => {
		const piece = pieceOf(CUT);
		for (const unit of ["mm", "cm", "in"] as const) {
			const step = unit === "in" ? 25.4 / 16 : 1;
			for (let out = 2.05; out < 40; out += 0.37) {
				const told = (cut: number, verdict: CutPiece["verdict"]) => {
					const [text = ""] = answer({ ...piece, cut, verdict }, unit).split(" too");
					const read = parseLength(text, unit);
					return read.ok ? read.value : Number.NaN;
				};
				const long = told(piece.needed + out, "long");
				expect(long).toBeLessThanOrEqual(out + 1e-6);
				expect(long).toBeGreaterThan(out - step);
				const short = told(piece.needed - out, "short-in-play");
				expect(short).toBeGreaterThanOrEqual(out - 1e-6);
				expect(short).toBeLessThan(out + step);
			}
		}
	});
});

describe("a piece that is still to be bent", () => {
	test("may be sawn at either end, and what is marked on it moves with the end", () => {
		expect(answer(pieceOf(CUT + 8.7))).toBe(
			"8 mm too long: saw 8 mm off either end, before it is bent. What is marked on it for bend 1 and bend 2 then lies 8 mm nearer the sawn end: mark it anew.",
		);
	});
	test("and hangs short is marked nearer its left end by what that end stands in", () => {
		expect(answer(pieceOf(CUT - 13.2))).toMatch(/Mark bend 1 and bend 2 7 mm nearer its left end than listed\.$/);
	});
	test("and has no bends is only sawn", () => {
		const straight = { ...pieceOf(CUT + 8.7), bends: [] };
		expect(answer(straight)).toBe("8 mm too long: saw 8 mm off either end.");
	});
});

describe("a piece that is bent", () => {
	const bent = (cut: number, first: number, second: number, more: object = {}, track: object = {}) =>
		pieceOf(cut, { ...madeAt(first, second), ...more }, track);

	test("where the plan has its bends fits by its length", () => {
		expect(answer(bent(CUT + 1, FIRST, SECOND))).toBe("Still fits, 1 mm to spare.");
	});

	test("is sawn only where it is too long", () => {
		// The track begins 8.4 later: all of it is too much before the first bend.
		expect(answer(bent(CUT, FIRST, SECOND, {}, { start: { wall: 0, at: 8.4 } }))).toBe(
			"Bent already: saw 8 mm off its left end only. From there to bend 1 and bend 2 it is then 8 mm less, as planned.",
		);
		expect(answer(bent(CUT + 8.4, FIRST, SECOND))).toMatch(/^Bent already: saw 8 mm off its right end only\./);
	});

	test("loses the same at both ends where its middle leg's brackets stand further off", () => {
		const brackets = [{ wall: 1, planned: 1250, at: 1250, projection: 46.2 }];
		// Right angles: each side leg is 6.2 shorter.
		expect(answer(bent(CUT, FIRST, SECOND, { brackets }))).toBe(
			"Bent already: saw 6 mm off its left end and saw 6 mm off its right end. Its bends then lie as planned.",
		);
	});

	test("does not fit by any sawing where a side's brackets stand further off: its bends are too far apart", () => {
		const brackets = [{ wall: 0, planned: 700, at: 700, projection: 45 }];
		const piece = bent(CUT, FIRST, SECOND, { brackets });
		expect(piece.needed).toBeCloseTo(CUT - 5, 6);
		expect(piece.verdict).toBe("bends-apart");
		expect(answer(piece)).toMatch(
			/^Bent already: bend 1 and bend 2 are 5 mm further apart than is needed now, and sawing does not help\./,
		);
	});

	test("that has the right length with its bends 8 too far right does not fit as it is", () => {
		const piece = bent(CUT, FIRST + 8, SECOND + 8);
		expect(piece.verdict).toBe("short-in-play");
		expect(answer(piece)).toMatch(
			/^Bent already: let its right end stand [89] mm further in and saw [78] mm off its left end\.$/,
		);
	});

	test("and lacks more at an end than that can give is made anew", () => {
		const piece = bent(CUT - 400, FIRST - 400, SECOND - 400);
		expect(piece.verdict).toBe("too-short");
		expect(answer(piece)).toMatch(
			/^Bent already, and 40[01] mm too short at its left end, which has .* to give: cut and bend it anew\.$/,
		);
	});

	test("nobody knows where is to be taped between its bends", () => {
		const piece = pieceOf(CUT + 8.7, { done: ["bend-1", "bend-2"] });
		const [first, on, rest] = [FIRST, SECOND - FIRST, CUT - SECOND].map(Math.round);
		expect(answer(piece)).toBe(
			`8 mm too long. It is bent already: saw off an end only what it has too much there. Needed: from its left end to the middle of bend 1 ${first} mm, on to that of bend 2 ${on} mm, on to its right end ${rest} mm.`,
		);
		expect(answer(pieceOf(CUT, { done: ["bend-1"] }))).toMatch(
			/^Still fits, to the length\. Needed: from its left end/,
		);
	});

	test("in two pieces has its bends where each lies on its own piece", () => {
		const joints = [{ wall: 1, at: 1250 }];
		// From the joint 1250 − 40 to the virtual corner, less the tangent, and half the sweep; to its right end the other half and a leg.
		const middle = 1210 - 310 + SWEEP / 2;
		const needed = 1210 - 310 + SWEEP + 1460 - 310 - 100;
		const done = ["bend-2", `bend-2 radius 310 sweep 486.9 middle ${(middle + 7.4).toFixed(1)} of B`];
		const plan = { cut: [{ piece: "B", length: needed + 7.4 }], done };
		const piece = pieceOf(needed, plan, { joints });
		expect(piece.needed).toBeCloseTo(needed, 6);
		expect(piece.bends.map(({ name }) => name)).toEqual(["bend-2"]);
		expect(piece.bends[0]?.middle).toBeCloseTo(middle, 6);
		expect(answer(piece)).toMatch(
			/^Bent already: saw 7 mm off its left end only\. From there to bend 2 it is then 7 mm less/,
		);
	});

	test("under another name says nothing of this one", () => {
		expect(pieceOf(CUT, madeAt(FIRST, SECOND, "B")).bent).toBeNull();
	});
});

test("what was sawn off came off the end that was said, and where it was not said nobody knows", () => {
	const long = pieceOf(CUT + 8, madeAt(FIRST, SECOND));
	expect(sawnAtLeft(long, CUT)).toBe(0);
	expect(sawnAtLeft(long, CUT - 30)).toBeNull();
	const left = pieceOf(CUT, madeAt(FIRST, SECOND), { start: { wall: 0, at: 8 } });
	expect(sawnAtLeft(left, CUT - 8)).toBe(8);
	expect(sawnAtLeft(left, CUT + 3)).toBe(0);
	const brackets = [{ wall: 1, planned: 1250, at: 1250, projection: 46 }];
	const both = pieceOf(CUT, { ...madeAt(FIRST, SECOND), brackets });
	expect(sawnAtLeft(both, CUT - 12)).toBeCloseTo(6, 0);
	expect(sawnAtLeft(both, CUT - 6)).toBeNull();
	expect(sawnAtLeft(pieceOf(CUT + 8), CUT)).toBe(0);
});
