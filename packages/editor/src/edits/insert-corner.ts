import { pointOffFace, type WallFace } from "@baywright/geometry";
import type { Bay, Reading, Wall } from "@baywright/setout";
import { carryOver } from "./carry-over.ts";
import { faceLength, facesOf } from "./faces.ts";
import { type Corner, kept } from "./on-bay.ts";

/** mm: a new corner stands no nearer to those on either side. */
export const LEAST_WALL = 20;

/**
 * Puts a corner into wall `wall`, `at` mm along its face: the bay keeps its shape, a bow becomes two of the same circle, and
 * what stands on the wall stays where it is. A run that was taped over the whole wall becomes the diagonal that it now is.
 * Gives the bay back as it was where the new corner would stand within `LEAST_WALL` of another.
 */
export function insertCorner(bay: Bay, wall: number, at: number): Bay {
	const chain = facesOf(bay);
	const old = bay.walls[wall];
	if (chain === null || old === undefined) return bay;
	const length = faceLength(chain, wall);
	if (at < LEAST_WALL || at > length - LEAST_WALL) return bay;
	const { x, y } = pointOffFace(chain, wall, at, 0);
	const corner: Corner = [kept(x), kept(y)];
	const face = chain.walls[wall] as WallFace;
	const parts: readonly Wall[] = [
		{ ...old, rise: riseOfPart(face, at) },
		{ ...old, rise: riseOfPart(face, length - at) },
	];
	const next: Bay = {
		...bay,
		corners: [...bay.corners.slice(0, wall + 1), corner, ...bay.corners.slice(wall + 1)] as Bay["corners"],
		walls: [...bay.walls.slice(0, wall), ...parts, ...bay.walls.slice(wall + 1)],
	};
	const onCorner = (it: number) => (it > wall ? it + 1 : it);
	return carryOver(next, bay, {
		place: (on, from) => {
			if (on === wall) return from <= at ? { wall, at: from } : { wall: wall + 1, at: kept(from - at) };
			return { wall: onCorner(on), at: from };
		},
		corner: onCorner,
		reading: (reading) => readingAfter(reading, wall, face.bow === null, onCorner),
	});
}

/** The rise of a stretch of a bow, mm: r(1 − cos(φ/2)) for the angle φ that it turns through. */
function riseOfPart({ bow }: WallFace, length: number): number {
	if (bow === null) return 0;
	return kept(Math.sign(bow.rise) * bow.radius * (1 - Math.cos(length / bow.radius / 2)));
}

function readingAfter(reading: Reading, wall: number, straight: boolean, onCorner: (it: number) => number) {
	switch (reading.kind) {
		case "run":
			if (reading.wall !== wall) return { ...reading, wall: onCorner(reading.wall) };
			return { kind: "diagonal", from: wall, to: wall + 2, value: reading.value, sd: reading.sd } as const;
		case "rise":
			return reading.wall === wall ? null : { ...reading, wall: onCorner(reading.wall) };
		case "diagonal":
			return { ...reading, from: onCorner(reading.from), to: onCorner(reading.to) };
		case "angle":
		case "chord":
			return { ...reading, corner: onCorner(reading.corner) };
		case "square":
			if (reading.wall === wall && !straight) return null;
			return { ...reading, corner: onCorner(reading.corner), wall: onCorner(reading.wall) };
	}
}
