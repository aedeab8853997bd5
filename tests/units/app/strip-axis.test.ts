import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	fitStrip,
	holdStrip,
	PIECE_GAP,
	placeOn,
	placeUnder,
	STRIP_MARGIN,
	zoomStrip,
} from "../../../packages/app/src/strip/axis.ts";
import { between } from "./between.ts";

const WIDTH = 1000;
const lengths = fc.array(fc.integer({ min: 200, max: 6000 }), { minLength: 1, maxLength: 5 });

describe("the strip's axis", () => {
	it("fits all pieces with gaps between and a margin at both ends", () => {
		fc.assert(
			fc.property(lengths, (pieces) => {
				const view = fitStrip(pieces, WIDTH);
				expect(placeOn(view, pieces, { piece: 0, mm: 0 })).toBeCloseTo(STRIP_MARGIN, 6);
				const last = pieces.length - 1;
				expect(placeOn(view, pieces, { piece: last, mm: pieces[last] as number })).toBeCloseTo(WIDTH - STRIP_MARGIN, 6);
				for (let i = 0; i < last; i++) {
					const end = placeOn(view, pieces, { piece: i, mm: pieces[i] as number });
					expect(placeOn(view, pieces, { piece: i + 1, mm: 0 }) - end).toBeCloseTo(PIECE_GAP, 6);
				}
			}),
		);
	});

	it("finds the place under the pointer again", () => {
		fc.assert(
			fc.property(lengths, fc.nat(4), between(0.01, 0.99), (pieces, which, share) => {
				const piece = which % pieces.length;
				const mm = share * (pieces[piece] as number);
				const view = fitStrip(pieces, WIDTH);
				const found = placeUnder(view, pieces, placeOn(view, pieces, { piece, mm }));
				expect(found.piece).toBe(piece);
				expect(found.mm).toBeCloseTo(mm, 6);
			}),
		);
	});

	it("keeps what is under the pointer there while zooming in", () => {
		fc.assert(
			fc.property(lengths, between(60, 940), between(1, 4), (pieces, at, factor) => {
				const view = fitStrip(pieces, WIDTH);
				const held = placeUnder(view, pieces, at);
				const before = placeOn(view, pieces, held);
				const next = zoomStrip(view, pieces, WIDTH, at, factor);
				expect(placeOn(next, pieces, held)).toBeCloseTo(before, 6);
			}),
		);
	});

	it("never zooms out beyond the whole and never lets the ends come in", () => {
		const pieces = [1500, 2000];
		const whole = fitStrip(pieces, WIDTH);
		expect(zoomStrip(whole, pieces, WIDTH, 400, 0.1)).toEqual(whole);
		const close = zoomStrip(whole, pieces, WIDTH, 400, 3);
		const right = holdStrip({ ...close, left: -1e6 }, pieces, WIDTH);
		expect(placeOn(right, pieces, { piece: 1, mm: 2000 })).toBeCloseTo(WIDTH - STRIP_MARGIN, 6);
		expect(holdStrip({ ...close, left: 1e6 }, pieces, WIDTH).left).toBe(STRIP_MARGIN);
	});
});
