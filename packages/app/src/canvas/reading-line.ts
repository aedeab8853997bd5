import { distance, midpoint, type Point, step, toRadians } from "@baywright/geometry";
import type { CheckedReading } from "@baywright/setout";
import { roomAngle } from "./labels/figures.ts";
import type { Scene } from "./scene.ts";
import { onFace, type WallShape } from "./wall-shape.ts";

/** px: radius of the arc that stands for an angle or a chord, and points between which it is drawn straight. */
const ARC = 38;
const ARC_POINTS = 17;

/** px: what reads next to nothing is drawn as long as this all the same. */
const SHORTEST = 18;

type Drawn = Pick<Scene, "corners" | "walls" | "view">;

/** Where a reading was taken, as a line on the plan, mm: from end to end of the tape, an arc for an angle. Null where the bay has no such place. */
export function readingLine(drawn: Drawn, reading: CheckedReading["reading"]): readonly Point[] | null {
	const { corners, walls } = drawn;
	const between = (from: number, to: number) => both(corners[from], corners[to]);
	switch (reading.kind) {
		case "run":
			return between(reading.wall, reading.wall + 1);
		case "diagonal":
			return between(reading.from, reading.to);
		case "angle":
		case "chord":
			return arcAt(drawn, reading.corner);
		case "rise":
			return riseLine(drawn, walls[reading.wall], reading.at);
		case "square":
			return squareLine(drawn, corners[reading.corner], walls[reading.wall]);
		case "span":
			return both(bracketAt(drawn, reading.from), bracketAt(drawn, reading.to));
	}
}

const both = (a: Point | null | undefined, b: Point | null | undefined): readonly Point[] | null =>
	a && b && distance(a, b) > 0 ? [a, b] : null;

/** From the face on the left round through the room to that on the right. */
function arcAt({ corners, walls, view }: Drawn, corner: number): readonly Point[] | null {
	const at = corners[corner];
	const before = walls[corner - 1]?.along.at(-1);
	const after = walls[corner]?.along[0];
	if (!at || !before || !after) return null;
	const back = Math.atan2(-before.uy, -before.ux);
	const room = toRadians(roomAngle(before, after));
	const radius = ARC / view.scale;
	return Array.from({ length: ARC_POINTS }, (_, i) => {
		const angle = back + (room * i) / (ARC_POINTS - 1);
		return { x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) };
	});
}

function riseLine({ view }: Drawn, shape: WallShape | null | undefined, at: number | null): readonly Point[] | null {
	if (!shape) return null;
	const place = onFace(shape, at ?? shape.length / 2);
	return noShorter(footOnChord(shape, place.at), place.at, shape, view.scale);
}

function squareLine(
	{ view }: Drawn,
	corner: Point | undefined,
	shape: WallShape | null | undefined,
): readonly Point[] | null {
	return corner && shape ? noShorter(footOnChord(shape, corner), corner, shape, view.scale) : null;
}

const footOnChord = ({ from, chord }: WallShape, p: Point): Point =>
	step(from, chord.ux, chord.uy, (p.x - from.x) * chord.ux + (p.y - from.y) * chord.uy);

/** The line between two points, drawn out square off the wall's chord where it would hardly show. */
function noShorter(foot: Point, to: Point, { chord: { ux, uy } }: WallShape, scale: number): readonly Point[] {
	if (distance(foot, to) * scale >= SHORTEST) return [foot, to];
	const middle = midpoint(foot, to);
	const half = SHORTEST / 2 / scale;
	return [step(middle, ux, uy, 0, -half), step(middle, ux, uy, 0, half)];
}

function bracketAt({ walls }: Drawn, place: { readonly wall: number; readonly at: number; readonly off: number }) {
	const shape = walls[place.wall];
	if (!shape) return null;
	const { at, ux, uy } = onFace(shape, place.at);
	return step(at, ux, uy, 0, place.off);
}
