import { footOnFace, type Point, pointOffFace, type WallChain } from "@baywright/geometry";
import { faceLength, facesOf, nearestOnWalls } from "../edits/faces.ts";
import { NARROWEST, type Stretch } from "../edits/on-walls.ts";
import { guidesAt } from "../grips/stretch.ts";
import { snapAlong, stopsOn } from "../snap/along.ts";
import type { Locus } from "../snap/locus.ts";
import { bayOf, type Sketch, type Touch, type World } from "./tool.ts";

/** A place on the face of the wall that is meant. */
export interface Spot {
	readonly chain: WallChain;
	readonly wall: number;
	readonly length: number;
	readonly at: number;
	readonly guides: readonly Locus[];
}

/** The place on the nearest wall, or on `wall` if one is named, drawn to what is there; null where the bay has none. */
export function spotOf(world: World, { at, reach }: Touch, wall: number | null = null): Spot | null {
	const bay = bayOf(world);
	const chain = facesOf(bay);
	if (chain === null) return null;
	const on = wall ?? nearestOnWalls(chain, at)?.wall;
	if (on === undefined) return null;
	const length = faceLength(chain, on);
	const raw = Math.min(Math.max(footOnFace(chain, on, at).at, 0), length);
	const drawn = snapAlong([raw], stopsOn(bay, on, length), reach);
	const place = Math.min(Math.max(raw + drawn.by, 0), length);
	return { chain, wall: on, length, at: place, guides: guidesAt(chain, on, drawn) };
}

/** The stretch between two places of a wall, no narrower than may be. */
export function between(wall: number, length: number, a: number, b: number): Stretch {
	const from = Math.min(a, b);
	const to = Math.max(a, b);
	if (to - from >= NARROWEST) return { wall, from, to };
	const start = Math.max(0, Math.min(from, length - NARROWEST));
	return { wall, from: start, to: Math.min(length, start + NARROWEST) };
}

/** A stretch of wall as drawn before it is there. */
export function stretchSketch(chain: WallChain, { wall, from, to }: Stretch, guides: readonly Locus[]): Sketch {
	const on = (at: number): Point => pointOffFace(chain, wall, at, 0);
	return {
		guides,
		lines: [{ from: on(from), to: on(to), kind: "stretch", length: to - from }],
		points: [],
		figures: [
			{ name: "from the left corner", kind: "length", mm: from },
			{ name: "width", kind: "length", mm: to - from },
			{ name: "from the right corner", kind: "length", mm: faceLength(chain, wall) - to },
		],
	};
}
