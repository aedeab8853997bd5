import type { Point } from "@baywright/geometry";
import { type Bay, cornerName, wallName } from "@baywright/setout";
import { arc, circle, type Locus, line, ray, type Side } from "./locus.ts";

/** Room angles that bays are built with, degrees, and straight on; outside corners have the same ones. */
const COMMON_ANGLES = [90, 120, 135, 150, 180] as const;

/** As much of a bay as corners are drawn to. */
type Walls = Pick<Bay, "corners" | "walls">;

/**
 * What draws a corner that is being moved: common angles at it and at the corners beside it, the lines of other walls and the
 * height of other corners, and walls as long as others. Angles beside a bowed wall are left out: they turn with its chord.
 */
export function cornerLoci(bay: Walls, corner: number): readonly Locus[] {
	const { corners } = bay;
	const walls = corners.length - 1;
	const before = placeOf(bay, corner - 1);
	const after = placeOf(bay, corner + 1);
	const loci: Locus[] = [];
	if (before && straight(bay, corner - 1)) loci.push(...anglesFrom(bay, corner - 1, corner - 2, "right"));
	if (after && straight(bay, corner)) loci.push(...anglesFrom(bay, corner + 1, corner + 1, "left"));
	if (before && after && straight(bay, corner - 1) && straight(bay, corner))
		loci.push(...anglesAt(before, after, cornerName(corner, walls)));
	for (let wall = 0; wall < walls; wall++) {
		if (wall === corner || wall === corner - 1 || !straight(bay, wall)) continue;
		loci.push(line(placeOf(bay, wall) as Point, headingOf(bay, wall), `in line with the ${wallName(wall, walls)}`));
	}
	for (let other = 0; other <= walls; other++) {
		if (other === corner) continue;
		const at = placeOf(bay, other) as Point;
		loci.push(line(at, 0, `level with ${cornerName(other, walls)}`));
		loci.push(line(at, Math.PI / 2, `straight out from ${cornerName(other, walls)}`));
	}
	for (const [neighbour, wall] of [
		[before, corner - 1],
		[after, corner],
	] as const) {
		if (!neighbour) continue;
		for (let other = 0; other < walls; other++) {
			if (other === wall || other === corner || other === corner - 1) continue;
			loci.push(circle(neighbour, lengthOf(bay, other), `as long as the ${wallName(other, walls)}`));
		}
	}
	return loci;
}

/** Ways from the corner `pivot` on which the wall there would make a common angle with the one beyond: `wall` is that one beyond, `end` the end of it that the pivot is. */
function anglesFrom(bay: Walls, pivot: number, wall: number, end: "left" | "right"): readonly Locus[] {
	const walls = bay.corners.length - 1;
	if (wall < 0 || wall >= walls || !straight(bay, wall)) return [];
	return anglesOn(placeOf(bay, pivot) as Point, headingOf(bay, wall), end, cornerName(pivot, walls));
}

/** Ways from a corner at common angles with the wall of which it is the right end or the left one, and which has this heading there. */
export function anglesOn(at: Point, heading: number, end: "left" | "right", name: string): readonly Locus[] {
	return withExternal().map((angle) =>
		ray(at, end === "right" ? heading - angle.turn : heading + angle.turn + Math.PI, `${angle.name} at ${name}`),
	);
}

/** Turns (radians, right positive) that make a common room angle, inside or outside. */
function withExternal(): { readonly turn: number; readonly name: string }[] {
	return COMMON_ANGLES.flatMap((angle) => {
		const turn = ((180 - angle) * Math.PI) / 180;
		if (angle === 180) return [{ turn: 0, name: "straight on" }];
		return [
			{ turn, name: `${angle}°` },
			{ turn: -turn, name: `${360 - angle}°` },
		];
	});
}

/** Arcs through two neighbours on which the corner between them has a common angle: internal to the left of the way from one to the other, external to its right. Source: the inscribed angle. */
function anglesAt(before: Point, after: Point, name: string): Locus[] {
	const [dx, dy] = [after.x - before.x, after.y - before.y];
	const chord = Math.hypot(dx, dy);
	if (chord === 0) return [];
	const middle = { x: (before.x + after.x) / 2, y: (before.y + after.y) / 2 };
	return COMMON_ANGLES.flatMap((angle) => {
		if (angle === 180) return [line(before, Math.atan2(dy, dx), `straight at ${name}`)];
		const theta = (angle * Math.PI) / 180;
		const off = chord / (2 * Math.tan(theta));
		const radius = chord / (2 * Math.sin(theta));
		const onSide = (hand: 1 | -1, room: number) => {
			const side: Side = { of: before, nx: (-dy / chord) * hand, ny: (dx / chord) * hand };
			const centre = { x: middle.x + side.nx * off, y: middle.y + side.ny * off };
			return arc(centre, radius, side, `${room}° at ${name}`);
		};
		return [onSide(1, angle), onSide(-1, 360 - angle)];
	});
}

const placeOf = ({ corners }: Walls, corner: number): Point | null => {
	const at = corners[corner];
	return at === undefined ? null : { x: at[0], y: at[1] };
};

const straight = ({ walls }: Walls, wall: number): boolean => (walls[wall]?.rise ?? 0) === 0;

function headingOf(bay: Walls, wall: number): number {
	const from = placeOf(bay, wall) as Point;
	const to = placeOf(bay, wall + 1) as Point;
	return Math.atan2(to.y - from.y, to.x - from.x);
}

function lengthOf(bay: Walls, wall: number): number {
	const from = placeOf(bay, wall) as Point;
	const to = placeOf(bay, wall + 1) as Point;
	return Math.hypot(to.x - from.x, to.y - from.y);
}
