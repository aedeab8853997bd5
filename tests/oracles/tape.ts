import type { Point } from "@baywright/geometry";
import type { ReadingOf, WallPlace } from "@baywright/survey";

/** A bay as it really stands: the room lies on the right of travel; rises + away from it. */
export interface TrueBay {
	readonly corners: readonly Point[];
	readonly rises: readonly number[];
}

/** What a perfect tape, bevel or rule reads of a bay, mm or degrees: straight from the circles that the faces lie on. */
export function tape(bay: TrueBay, reading: ReadingOf): number {
	const corner = (index: number) => bay.corners[index] as Point;
	switch (reading.kind) {
		case "run":
			return apart(corner(reading.wall), corner(reading.wall + 1));
		case "diagonal":
			return apart(corner(reading.from), corner(reading.to));
		case "angle":
			return interior(bay, reading.corner);
		case "chord":
			return chord(bay, reading.corner, reading.arm);
		case "rise": {
			const { rise } = faceOf(bay, reading.wall);
			return reading.at === null ? rise : -asideOf(bay, reading.wall, along(bay, reading.wall, reading.at));
		}
		case "square":
			return asideOf(bay, reading.wall, corner(reading.corner));
		case "span":
			return apart(beside(bay, reading.from), beside(bay, reading.to));
	}
}

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

/** A wall's face: its ends and the circle through them, if it is bowed. */
function faceOf({ corners, rises }: TrueBay, wall: number) {
	const left = corners[wall] as Point;
	const right = corners[wall + 1] as Point;
	const rise = rises[wall] ?? 0;
	const length = apart(left, right);
	const ux = (right.x - left.x) / length;
	const uy = (right.y - left.y) / length;
	if (rise === 0) return { left, right, rise, length, ux, uy, circle: null };
	// The top of the bow, on the left of travel, and from there back through the chord to the centre.
	const radius = (length ** 2 / 4 + rise ** 2) / (2 * rise);
	const middle = { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 };
	const centre = { x: middle.x - uy * (rise - radius), y: middle.y + ux * (rise - radius) };
	return { left, right, rise, length, ux, uy, circle: { centre, radius } };
}

/** `from` swung about a centre, counter-clockwise positive. */
function swung(from: Point, centre: Point, angle: number): Point {
	const dx = from.x - centre.x;
	const dy = from.y - centre.y;
	return {
		x: centre.x + dx * Math.cos(angle) - dy * Math.sin(angle),
		y: centre.y + dx * Math.sin(angle) + dy * Math.cos(angle),
	};
}

function along(bay: TrueBay, wall: number, at: number): Point {
	const { left, ux, uy, circle } = faceOf(bay, wall);
	if (circle === null) return { x: left.x + ux * at, y: left.y + uy * at };
	// A face that bows to the left goes round clockwise, and the other way with a negative radius.
	return swung(left, circle.centre, -at / circle.radius);
}

function beside(bay: TrueBay, { wall, at, off }: WallPlace): Point {
	const { ux, uy, circle } = faceOf(bay, wall);
	const on = along(bay, wall, at);
	if (circle === null) return { x: on.x + uy * off, y: on.y - ux * off };
	const share = off / circle.radius;
	return { x: on.x + (circle.centre.x - on.x) * share, y: on.y + (circle.centre.y - on.y) * share };
}

/** + on the right of travel. */
function asideOf(bay: TrueBay, wall: number, { x, y }: Point): number {
	const { left, ux, uy } = faceOf(bay, wall);
	return (x - left.x) * uy - (y - left.y) * ux;
}

/** Unit direction along a face where it leaves its left or reaches its right corner. */
function direction(bay: TrueBay, wall: number, end: "left" | "right") {
	const { left, right, ux, uy, circle } = faceOf(bay, wall);
	if (circle === null) return { x: ux, y: uy };
	const at = end === "left" ? left : right;
	return { x: (at.y - circle.centre.y) / circle.radius, y: -(at.x - circle.centre.x) / circle.radius };
}

function interior(bay: TrueBay, corner: number): number {
	const into = direction(bay, corner - 1, "right");
	const out = direction(bay, corner, "left");
	const turnRight = Math.atan2(into.y * out.x - into.x * out.y, into.x * out.x + into.y * out.y);
	return 180 - (turnRight * 180) / Math.PI;
}

function chord(bay: TrueBay, corner: number, arm: number): number {
	const at = bay.corners[corner] as Point;
	if (interior(bay, corner) > 180) {
		const into = direction(bay, corner - 1, "right");
		const out = direction(bay, corner, "left");
		return arm * Math.hypot(into.x - out.x, into.y - out.y);
	}
	const mark = (wall: number, onwards: 1 | -1): Point => {
		const { ux, uy, circle } = faceOf(bay, wall);
		if (circle === null) return { x: at.x + onwards * ux * arm, y: at.y + onwards * uy * arm };
		return swung(at, circle.centre, -onwards * 2 * Math.asin(arm / (2 * circle.radius)));
	};
	return apart(mark(corner - 1, -1), mark(corner, 1));
}
