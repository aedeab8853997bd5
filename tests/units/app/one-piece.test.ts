import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { aloneOf, pieceOf, withPiece } from "../../../packages/app/src/strip/one-piece.ts";

function planOf(front: number) {
	const corners = [
		[0, 0],
		[0, 900],
		[front, 900],
		[front, 0],
	];
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", corners }] });
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	return planBay(bay, libraryOf(parsed.job));
}

const short = planOf(1800);
const long = planOf(50_000);

describe("a strip of many pieces", () => {
	it("shows one alone, and no more than there are; a strip of few shows them all", () => {
		expect(short.pieces.length).toBeLessThanOrEqual(4);
		expect(aloneOf(short, 2)).toBeNull();
		expect(withPiece(short, null)).toBe(short);
		expect(long.pieces.length).toBeGreaterThan(4);
		expect([-1, 0, 2, 99].map((wanted) => aloneOf(long, wanted))).toEqual([0, 0, 2, long.pieces.length - 1]);
		expect(withPiece(long, 2).pieces).toEqual([long.pieces[2]]);
	});

	it("turns to the piece that carries what is chosen", () => {
		const last = long.pieces.length - 1;
		expect(pieceOf(long, { kind: "piece", index: 3 })).toBe(3);
		expect(pieceOf(long, { kind: "bracket", index: 0 })).toBe(0);
		expect(pieceOf(long, { kind: "bracket", index: long.brackets.length - 1 })).toBe(last);
		expect(pieceOf(long, { kind: "bend", index: 1 })).toBe(0);
		expect(pieceOf(long, { kind: "corner", index: 2 })).toBe(last);
		expect(pieceOf(long, { kind: "corner", index: 0 })).toBeNull();
		expect(pieceOf(long, { kind: "wall", index: 1 })).toBeNull();
		expect(pieceOf(long, null)).toBeNull();
	});
});
