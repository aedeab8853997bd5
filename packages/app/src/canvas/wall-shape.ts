import { type Point, step } from "@baywright/geometry";

/** A wall's face, straight or bowed. Lengths mm. */
export interface Face {
	/** Its left corner. */
	readonly from: Point;
	/** Along the face. */
	readonly length: number;
	/** Straight from corner to corner. */
	readonly chord: Direction & { readonly length: number };
	/** Null where the wall is straight. */
	readonly arc: FaceArc | null;
	readonly thickness: number;
}

/** A wall as drawn: its face and its outer line, sampled left to right. */
export interface WallShape extends Face {
	readonly wall: number;
	readonly face: readonly Point[];
	/** One for each point of the face; mitred with the next wall at the ends. */
	readonly outer: readonly Point[];
	/** Fills what a bevelled corner leaves open between this wall and the next; null at most corners. */
	readonly bevel: readonly Point[] | null;
	/** Unit direction of travel at each point of the face. */
	readonly along: readonly Direction[];
}

export interface Direction {
	readonly ux: number;
	readonly uy: number;
}

/** The arc of a bowed face. */
export interface FaceArc {
	readonly centre: Point;
	readonly radius: number;
	/** mm off the chord, + away from the room. */
	readonly rise: number;
}

/** A place on a wall's face with its direction of travel; the room is on the right. */
export interface FacePlace extends Direction {
	readonly at: Point;
}

/** How thick a wall is drawn, mm: a drawing convention, nothing is measured from it. */
export const DRAWN_THICKNESS = 110;

/** A mitre longer than this many thicknesses is cut off. */
const LONGEST_MITRE = 2.2;

/** Greatest distance (mm) of a sampled bow from its arc. */
const BOW_CHORD_ERROR = 0.1;
const MOST_SAMPLES = 400;

/** mm: a bow with less rise than this is drawn straight, as it is planned. */
const NO_RISE = 0.05;

/** A bow into the room so tight that its thickness would reach its centre is drawn as thick as this share of its radius. */
const THICKEST_BOW = 0.8;

/** mm; shorter walls have no direction and are not drawn. */
const SHORTEST_DRAWN = 1e-6;

/** Walls between `corners`, with what is drawn outside the room; null for a wall that has no direction. Any corners will do, a bay or not. */
export function shapeWalls(
	corners: readonly Point[],
	rises: readonly number[],
	thickness = DRAWN_THICKNESS,
): (WallShape | null)[] {
	const full = corners.slice(1).map((right, i) => faceBetween(corners[i] as Point, right, rises[i] ?? 0, thickness));
	const faces = full.map((face, i) => (face === null ? null : { ...face, thickness: fittingThickness(full, i) }));
	const joints = faces.slice(1).map((after, i) => meet(faces[i] ?? null, after));
	return faces.map((face, wall) => {
		if (face === null) return null;
		const start = joints[wall - 1]?.after ?? 0;
		const joint = joints[wall];
		const end = face.length + (joint?.before ?? 0);
		const count = face.arc === null ? 1 : sampleCount(face);
		const stops = Array.from({ length: count + 1 }, (_, i) => i / count);
		const places = stops.map((share) => onFace(face, face.length * share));
		const after = faces[wall + 1];
		return {
			...face,
			wall,
			face: places.map(({ at }) => at),
			along: places.map(({ ux, uy }) => ({ ux, uy })),
			outer: stops.map((share) => outside(face, start + (end - start) * share)),
			bevel:
				joint?.bevelled && after
					? [onFace(face, face.length).at, outside(face, end), outside(after, joint.after)]
					: null,
		};
	});
}

/** The place `at` mm along a wall's face from its left corner; beyond its ends, on its line or round its arc. */
export function onFace({ from, chord, arc }: Face, at: number): FacePlace {
	const { ux, uy, length } = chord;
	if (arc === null) return { at: step(from, ux, uy, at), ux, uy };
	const side = Math.sign(arc.rise);
	const angle = at / arc.radius - halfAngle(arc.rise, length);
	const cos = Math.cos(angle);
	const sin = Math.sin(angle);
	const { x, y } = arc.centre;
	return {
		// From the centre away from the chord's middle, swung by `angle`.
		at: {
			x: x + arc.radius * (ux * sin - side * uy * cos),
			y: y + arc.radius * (uy * sin + side * ux * cos),
		},
		ux: ux * cos + side * uy * sin,
		uy: uy * cos - side * ux * sin,
	};
}

/** The foot of a point on a wall's face: mm along it from its left corner, and mm off it into the room. Beyond its ends on its line or round its arc. */
export function footOnShape({ from, chord, arc }: Face, p: Point): { readonly at: number; readonly off: number } {
	const { ux, uy, length } = chord;
	if (arc === null) {
		const [x, y] = [p.x - from.x, p.y - from.y];
		return { at: x * ux + y * uy, off: x * uy - y * ux };
	}
	const side = Math.sign(arc.rise);
	const [x, y] = [p.x - arc.centre.x, p.y - arc.centre.y];
	const angle = Math.atan2(x * ux + y * uy, side * (y * ux - x * uy));
	return {
		at: (angle + halfAngle(arc.rise, length)) * arc.radius,
		off: side * (arc.radius - Math.hypot(x, y)),
	};
}

/** The band between two places on a wall, from `inner` to `outer` mm outside its face. */
export function wallBand(shape: WallShape, from: number, to: number, inner: number, outer: number): Point[] {
	const stops = [from, ...bowStops(shape, from, to), to].map((at) => onFace(shape, at));
	const near = stops.map(({ at, ux, uy }) => step(at, ux, uy, 0, -inner));
	const far = stops.map(({ at, ux, uy }) => step(at, ux, uy, 0, -outer)).reverse();
	return [...near, ...far];
}

function bowStops({ arc, length, face }: WallShape, from: number, to: number): number[] {
	if (arc === null) return [];
	const count = face.length - 1;
	return Array.from({ length: count - 1 }, (_, i) => (length * (i + 1)) / count).filter((at) => at > from && at < to);
}

/** Radius of the face ρ = (c²/4 + h²)/(2|h|), design section 5. */
function faceBetween(from: Point, right: Point, rise: number, thickness: number): Face | null {
	const length = Math.hypot(right.x - from.x, right.y - from.y);
	if (!(length > SHORTEST_DRAWN) || !Number.isFinite(length)) return null;
	const ux = (right.x - from.x) / length;
	const uy = (right.y - from.y) / length;
	const chord = { ux, uy, length };
	if (!(Math.abs(rise) > NO_RISE) || !Number.isFinite(rise)) return { from, length, chord, arc: null, thickness };
	const high = Math.abs(rise);
	const radius = (length ** 2 / 4 + high ** 2) / (2 * high);
	const centre = step(from, ux, uy, length / 2, Math.sign(rise) * (radius - high));
	return {
		from,
		length: 2 * radius * halfAngle(rise, length),
		chord,
		arc: { centre, radius, rise },
		thickness: rise < 0 ? Math.min(thickness, radius * THICKEST_BOW) : thickness,
	};
}

/** Half the angle of an arc over a chord: 2·atan(2|h|/c). */
const halfAngle = (rise: number, chord: number): number => 2 * Math.atan((2 * Math.abs(rise)) / chord);

/** Turns (rad, left) from which a wall between two of them is the end of a nib. */
const NIB_TURN = Math.PI / 4;

/** A wall at the end of which a nib's end stands is no thicker than half the nib: its other half belongs to the wall beyond. */
function fittingThickness(faces: readonly (Face | null)[], wall: number): number {
	const face = faces[wall] as Face;
	const halves = [wall - 1, wall + 1].flatMap((end) => {
		const nib = faces[end];
		const [before, after] = [faces[end - 1], faces[end + 1]];
		if (!nib || !before || !after) return [];
		const turns = [turnBetween(before, nib), turnBetween(nib, after)];
		return turns.every((turn) => turn < -NIB_TURN) ? [nib.length / 2] : [];
	});
	return Math.min(face.thickness, ...halves);
}

function sampleCount({ arc, chord }: Face): number {
	if (arc === null) return 1;
	const stepAngle = 2 * Math.acos(Math.max(0, 1 - BOW_CHORD_ERROR / arc.radius));
	return Math.max(4, Math.min(MOST_SAMPLES, Math.ceil((2 * halfAngle(arc.rise, chord.length)) / stepAngle)));
}

/** On the outer line, square off `at` mm along the face. */
function outside(face: Face, at: number): Point {
	const { at: on, ux, uy } = onFace(face, at);
	return step(on, ux, uy, 0, -face.thickness);
}

/** How far (mm along the faces) the outer lines of two walls run past their corner before they meet; negative where they stop short. */
interface Meeting {
	readonly before: number;
	readonly after: number;
	readonly bevelled: boolean;
}

function meet(before: Face | null, after: Face | null): Meeting {
	if (before === null || after === null) return { before: 0, after: 0, bevelled: false };
	const thickness = Math.max(before.thickness, after.thickness);
	const reach = thickness * Math.tan(turnBetween(before, after) / 2);
	if (reach > LONGEST_MITRE * thickness) return { before: thickness, after: -thickness, bevelled: true };
	const even = before.arc === null && after.arc === null && before.thickness === after.thickness;
	const met = even ? { before: reach, after: -reach } : crossing(before, after, reach);
	return {
		before: Math.max(-before.length / 2, met.before),
		after: Math.min(after.length / 2, met.after),
		bevelled: false,
	};
}

/** Turn (rad, right positive) from the end of one wall's face to the start of the next. */
function turnBetween(before: Face, after: Face): number {
	const a = onFace(before, before.length);
	const b = onFace(after, 0);
	return Math.atan2(a.uy * b.ux - a.ux * b.uy, a.ux * b.ux + a.uy * b.uy);
}

const ROUNDS = 12;
const MET = 0.01;

/** Where two outer lines cross of which one at least is bowed: Newton's way from where their tangents do, which will do where they never cross. */
function crossing(before: Face, after: Face, reach: number): { readonly before: number; readonly after: number } {
	let a = reach;
	let b = -reach;
	for (let i = 0; i < ROUNDS; i++) {
		const p = outside(before, before.length + a);
		const q = outside(after, b);
		const [dx, dy] = [q.x - p.x, q.y - p.y];
		if (Math.hypot(dx, dy) < MET) return { before: a, after: b };
		const along = onFace(before, before.length + a);
		const on = onFace(after, b);
		const cross = along.ux * on.uy - along.uy * on.ux;
		if (Math.abs(cross) < 1e-6) break;
		a += (dx * on.uy - dy * on.ux) / cross / stretch(before);
		b += (dx * along.uy - dy * along.ux) / cross / stretch(after);
		if (Math.max(Math.abs(a), Math.abs(b)) > 4 * before.thickness + 4 * after.thickness) break;
	}
	return { before: Math.min(reach, before.thickness), after: -Math.min(reach, after.thickness) };
}

/** mm of outer line to a mm of face. */
const stretch = ({ arc, thickness }: Face): number =>
	arc === null ? 1 : (arc.radius + Math.sign(arc.rise) * thickness) / arc.radius;
