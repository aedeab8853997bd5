import { type Point, step } from "@baywright/geometry";

/** A wall as drawn: its face and its outer line, sampled left to right. Lengths mm. */
export interface WallShape {
	readonly wall: number;
	/** Along the face. */
	readonly length: number;
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

/** A place on a wall's face with its direction of travel; the room is on the right. */
export interface FacePlace extends Direction {
	readonly at: Point;
}

/** How thick a wall is drawn, mm: a drawing convention, nothing is measured from it. */
export const DRAWN_THICKNESS = 110;

/** A mitre longer than this many thicknesses is cut off. */
const LONGEST_MITRE = 2.2;

/** Greatest distance (mm) of a sampled bow from its arc. */
const BOW_CHORD_ERROR = 0.25;

/** mm; shorter walls have no direction and are not drawn. */
const SHORTEST_DRAWN = 1e-6;

/** Walls between `corners`, with what is drawn outside the room; null for a wall that has no direction. Any corners will do, a bay or not. */
export function shapeWalls(corners: readonly Point[], rises: readonly number[]): (WallShape | null)[] {
	const faces = corners.slice(1).map((right, i) => sampleFace(corners[i] as Point, right, rises[i] ?? 0));
	return faces.map((face, wall) => {
		if (face === null) return null;
		const before = faces[wall - 1] ?? null;
		const after = faces[wall + 1] ?? null;
		const last = face.points.length - 1;
		const startReach = before === null ? 0 : mitre(lastOf(before.along), face.along[0] as Direction);
		const endReach = after === null ? 0 : mitre(lastOf(face.along), after.along[0] as Direction);
		const outer = face.points.map((at, i) => {
			const { ux, uy } = face.along[i] as Direction;
			const reach = i === 0 ? -clampMitre(startReach, face.length) : i === last ? clampMitre(endReach, face.length) : 0;
			return step(at, ux, uy, reach, -DRAWN_THICKNESS);
		});
		const bevelled = after !== null && endReach > LONGEST_MITRE * DRAWN_THICKNESS;
		return {
			wall,
			length: face.length,
			face: face.points,
			outer,
			bevel: bevelled ? bevelAt(face.points[last] as Point, outer[last] as Point, after) : null,
			along: face.along,
		};
	});
}

/** The place `at` mm along a wall's face from its left corner; beyond its ends, on its line. */
export function onFace(shape: WallShape, at: number): FacePlace {
	let left = at;
	for (let i = 0; i + 1 < shape.face.length; i++) {
		const from = shape.face[i] as Point;
		const to = shape.face[i + 1] as Point;
		const length = Math.hypot(to.x - from.x, to.y - from.y);
		if (left <= length || i + 2 === shape.face.length) {
			const ux = (to.x - from.x) / length;
			const uy = (to.y - from.y) / length;
			return { at: step(from, ux, uy, left), ux, uy };
		}
		left -= length;
	}
	throw new Error("Broken invariant: a drawn wall has at least two points.");
}

/** The band between two places on a wall, from `inner` to `outer` mm outside its face. */
export function wallBand(shape: WallShape, from: number, to: number, inner: number, outer: number): Point[] {
	const stops = [from, ...bowStops(shape, from, to), to].map((at) => onFace(shape, at));
	const near = stops.map(({ at, ux, uy }) => step(at, ux, uy, 0, -inner));
	const far = stops.map(({ at, ux, uy }) => step(at, ux, uy, 0, -outer)).reverse();
	return [...near, ...far];
}

function bowStops(shape: WallShape, from: number, to: number): number[] {
	if (shape.face.length === 2) return [];
	const count = shape.face.length - 1;
	return Array.from({ length: count - 1 }, (_, i) => (shape.length * (i + 1)) / count).filter(
		(at) => at > from && at < to,
	);
}

interface SampledFace {
	readonly points: readonly Point[];
	readonly along: readonly Direction[];
	readonly length: number;
}

function sampleFace(left: Point, right: Point, rise: number): SampledFace | null {
	const chord = Math.hypot(right.x - left.x, right.y - left.y);
	if (!(chord > SHORTEST_DRAWN) || !Number.isFinite(chord)) return null;
	const ux = (right.x - left.x) / chord;
	const uy = (right.y - left.y) / chord;
	if (rise === 0 || !Number.isFinite(rise)) {
		return {
			points: [left, right],
			along: [
				{ ux, uy },
				{ ux, uy },
			],
			length: chord,
		};
	}
	return sampleBow(left, { ux, uy }, chord, rise);
}

/** Radius of the face ρ = (c²/4 + h²)/(2|h|), design section 5; the half angle is 2·atan(2|h|/c). */
function sampleBow(left: Point, { ux, uy }: Direction, chord: number, rise: number): SampledFace {
	const high = Math.abs(rise);
	const radius = (chord ** 2 / 4 + high ** 2) / (2 * high);
	const half = 2 * Math.atan((2 * high) / chord);
	const side = Math.sign(rise);
	const stepAngle = 2 * Math.acos(Math.max(0, 1 - BOW_CHORD_ERROR / radius));
	const count = Math.max(2, Math.min(400, Math.ceil((2 * half) / stepAngle)));
	const points: Point[] = [];
	const along: Direction[] = [];
	for (let i = 0; i <= count; i++) {
		const angle = -half + (2 * half * i) / count;
		const forward = chord / 2 + radius * Math.sin(angle);
		const out = side * (radius * Math.cos(angle) - (radius - high));
		points.push(step(left, ux, uy, forward, -out));
		const cos = Math.cos(angle);
		const sin = side * Math.sin(angle);
		along.push({ ux: ux * cos + uy * sin, uy: uy * cos - ux * sin });
	}
	return { points, along, length: 2 * radius * half };
}

/** How far (mm) the outer line runs past the corner to meet the next wall's; negative where it stops short. */
function mitre(before: Direction, after: Direction): number {
	const turn = Math.atan2(before.uy * after.ux - before.ux * after.uy, before.ux * after.ux + before.uy * after.uy);
	return DRAWN_THICKNESS * Math.tan(turn / 2);
}

const clampMitre = (reach: number, length: number): number =>
	Math.max(-length / 2, reach > LONGEST_MITRE * DRAWN_THICKNESS ? DRAWN_THICKNESS : reach);

function bevelAt(corner: Point, outerEnd: Point, after: SampledFace): Point[] {
	const { ux, uy } = after.along[0] as Direction;
	return [corner, outerEnd, step(corner, ux, uy, -DRAWN_THICKNESS, -DRAWN_THICKNESS)];
}

const lastOf = <Item>(items: readonly Item[]): Item => items[items.length - 1] as Item;
