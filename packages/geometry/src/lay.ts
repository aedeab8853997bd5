import { type Radians, radians } from "./angle.ts";
import type { BendPlan } from "./bend-plan.ts";
import type { WallChain, WallFace } from "./chain.ts";
import type { FittedTrack, WallPlace } from "./fit.ts";
import type { Segment } from "./path.ts";
import type { Point } from "./point.ts";
import { NO_TURN, SHORTEST_SEGMENT } from "./tolerance.ts";

/** Lays the centre line along its legs and bends from the track's left end to its right. */
export function layTrack(
	chain: WallChain,
	projections: readonly number[],
	start: WallPlace,
	bends: BendPlan,
	radii: readonly number[],
): FittedTrack {
	const { first, slope, footRight } = bends;
	const segments: Segment[] = [];
	const straightOf: number[] = [];
	const bendOf: number[] = [];
	let station = 0;
	let from = placeOff(chain, first, start.at, projections[first] as number);
	let before = 0;

	for (let leg = 0; leg < bends.length.length; leg++) {
		const wall = first + leg;
		const face = chain.walls[wall] as WallFace;
		const last = leg === slope.length;
		const after = last ? 0 : (slope[leg] as number) * (radii[leg] as number);
		const length = (bends.length[leg] as number) - before - after;
		let to = from;
		if (length > SHORTEST_SEGMENT) {
			to = { x: from.x + face.ux * length, y: from.y + face.uy * length };
			straightOf.push(segments.length);
			segments.push({ kind: "straight", from, to, start: station, length, heading: face.heading, wall });
			station += length;
		} else straightOf.push(-1);
		if (last) break;

		const corner = wall + 1;
		const turn = chain.turns[corner] as Radians;
		const radius = radii[leg] as number;
		if (Math.abs(turn) < NO_TURN) {
			bendOf.push(-1);
			from = to;
		} else {
			const next = chain.walls[corner] as WallFace;
			const side = turn > 0 ? radius : -radius;
			const sweep = radius * Math.abs(turn);
			const exit = placeOff(chain, corner, (footRight[leg] as number) + after, projections[corner] as number);
			bendOf.push(segments.length);
			segments.push({
				kind: "bend",
				from: to,
				to: exit,
				start: station,
				length: sweep,
				heading: face.heading,
				centre: { x: exit.x + next.uy * side, y: exit.y - next.ux * side },
				radius,
				turn: radians(turn),
				corners: [corner],
				sprung: bends.sprung.has(leg),
			});
			station += sweep;
			from = exit;
		}
		before = after;
	}
	return { chain, projections, path: { segments, length: station }, bends, radii, straightOf, bendOf };
}

/** The point `off` mm into the room from `at` mm along a wall face. */
function placeOff(chain: WallChain, wall: number, at: number, off: number): Point {
	const { x, y } = chain.corners[wall] as Point;
	const { ux, uy } = chain.walls[wall] as WallFace;
	return { x: x + ux * at + uy * off, y: y + uy * at - ux * off };
}
