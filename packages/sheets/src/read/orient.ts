import type { Point } from "@baywright/geometry";
import type { Chain } from "./chains.ts";
import { wallOutline } from "./faces.ts";
import { lengthOf, type Piece, radiusOf, turnedRound, turnOf } from "./stroke.ts";

export interface Oriented {
	/** From left to right as seen from the room, which lies on their right. Of a closed outline the longest, the side most likely open, is the last. */
	readonly walls: readonly Piece[];
	/** Neither turns nor area tell on which side the room lies. */
	readonly sideGuessed: boolean;
	/** Where the outline is that of a wall, with both its faces: its thickness, and how many walls the face to the room has, which come first. */
	readonly outline: { readonly thick: number; readonly face: number } | null;
}

/** Less turn than this says nothing about the side that the room lies on (10°). */
const SOME_TURN = Math.PI / 18;
/** Nor does less area, by share of the square on the way from end to end. */
const SOME_AREA = 0.01;

/** A chain in the order of a job file. `otherSide` puts the room where it was not thought to be. */
export function oriented({ walls, closed }: Chain, otherSide: boolean): Oriented {
	const { keep, sideGuessed } = sideOf(walls, closed);
	if (closed) {
		const face = faceToRoom(keep ? walls : reversed(walls), otherSide);
		if (face !== null) return face;
	}
	const way = keep === otherSide ? reversed(walls) : walls;
	return { walls: closed ? longestLast(way) : way, sideGuessed, outline: null };
}

/** Round the outline of a wall the room lies outside it, before the face that turns round the room. */
function faceToRoom(clockwise: readonly Piece[], otherSide: boolean): Oriented | null {
	const outline = wallOutline(clockwise);
	if (outline === null) return null;
	const [one, two] = outline.faces.map(turnOf) as [number, number];
	// A narrow rectangle may as well be a recess.
	if (Math.abs(one - two) < SOME_TURN) return null;
	const which = one <= two !== otherSide ? 0 : 1;
	return {
		walls: outline.startingWith(which),
		sideGuessed: false,
		outline: { thick: outline.thick, face: outline.faces[which].length },
	};
}

const reversed = (walls: readonly Piece[]): Piece[] => walls.toReversed().map(turnedRound);

function sideOf(walls: readonly Piece[], closed: boolean): { readonly keep: boolean; readonly sideGuessed: boolean } {
	const area = areaOf(walls);
	// Is it a room's own outline? Then the room is inside, and clockwise has it on the right.
	if (closed) return { keep: area < 0, sideGuessed: false };
	// Does it turn round the room?
	const turn = turnOf(walls);
	if (Math.abs(turn) > SOME_TURN) return { keep: turn < 0, sideGuessed: false };
	// Does it stand out from the line between its ends, as a bay between two walls does?
	const [first, last] = [walls[0] as Piece, walls.at(-1) as Piece];
	const across = Math.hypot(last.to.x - first.from.x, last.to.y - first.from.y);
	if (Math.abs(area) > SOME_AREA * across * across) return { keep: area < 0, sideGuessed: false };
	const right = last.to.x - first.from.x;
	return { keep: Math.abs(right) > across / 1e6 ? right > 0 : last.to.y > first.from.y, sideGuessed: true };
}

/** Between the walls and the line from end to end, counter-clockwise positive. Source: r²(θ − sin θ)/2 for the segment of an arc. */
function areaOf(walls: readonly Piece[]): number {
	const origin = (walls[0] as Piece).from;
	const off = ({ x, y }: Point) => [x - origin.x, y - origin.y] as const;
	return walls.reduce((sum, wall) => {
		const [[ax, ay], [bx, by]] = [off(wall.from), off(wall.to)];
		const { bulge } = wall;
		const angle = 4 * Math.atan(bulge);
		const radius = bulge === 0 ? 0 : radiusOf(wall);
		return sum + (ax * by - bx * ay) / 2 + (radius * radius * (angle - Math.sin(angle))) / 2;
	}, 0);
}

function longestLast(walls: readonly Piece[]): Piece[] {
	const longest = walls.reduce(
		(best, wall, i) => (lengthOf(wall) > lengthOf(walls[best] as Piece) + ALIKE ? i : best),
		0,
	);
	return [...walls.slice(longest + 1), ...walls.slice(0, longest + 1)];
}

/** Walls this alike are equally long, mm. */
const ALIKE = 0.01;

/** Turns the plan by whole quarters, so that the room lies at the bottom, and moves the first corner to the origin. */
export function laid(walls: readonly Piece[]): (p: Point) => Point {
	const [first, last] = [walls[0] as Piece, walls.at(-1) as Piece];
	const { x, y } = first.from;
	const quarters = Math.round(Math.atan2(last.to.y - y, last.to.x - x) / (Math.PI / 2));
	const [cos, sin] = QUARTERS[((quarters % 4) + 4) % 4] as readonly [number, number];
	return (p) => ({ x: (p.x - x) * cos + (p.y - y) * sin + 0, y: (p.y - y) * cos - (p.x - x) * sin + 0 });
}

const QUARTERS = [
	[1, 0],
	[0, 1],
	[-1, 0],
	[0, -1],
] as const;
