import { distance, midpoint, type Point, step } from "@baywright/geometry";
import { onFace, type WallShape } from "../canvas/wall-shape.ts";
import type { Untaken } from "./usual-readings.ts";

/** What of a bay's plan is picked out for one reading. Plan points, mm. */
export interface PlanMarks {
	/** Faces that it is read on. */
	readonly faces: readonly (readonly Point[])[];
	/** Lines that are only stretched or laid on: a straightedge, a string. */
	readonly laid: readonly (readonly Point[])[];
	/** Marks made on the wall. */
	readonly dots: readonly Point[];
	/** From where to where the tape goes; null for an angle. */
	readonly tape: readonly [Point, Point] | null;
	/** The tape is drawn this side of its points, so that it does not lie on the wall: the room's. */
	readonly aside: boolean;
	/** Where an angle is read, and along what. */
	readonly angle: { readonly at: Point; readonly left: Point; readonly right: Point; readonly over180: boolean } | null;
	/** Corners that are named. */
	readonly corners: readonly number[];
	/** Lengths that are marked out first. */
	readonly arms: readonly (readonly [Point, Point])[];
}

const NOTHING: PlanMarks = {
	faces: [],
	laid: [],
	dots: [],
	tape: null,
	aside: false,
	angle: null,
	corners: [],
	arms: [],
};

/** Arms of an angle are drawn as long as the shorter wall has room for, by this share. */
const ARM_SHARE = 0.6;

/** `turns`: under 0 at an external corner, radians; `shapes`: the walls as drawn. */
export function planMarks(
	reading: Untaken,
	corners: readonly Point[],
	shapes: readonly (WallShape | null)[],
	turns: readonly number[],
): PlanMarks {
	const corner = (index: number) => corners[index] as Point;
	const shape = (wall: number) => shapes[wall] as WallShape;
	switch (reading.kind) {
		case "run": {
			const { wall } = reading;
			return {
				...NOTHING,
				faces: [shape(wall).face],
				tape: [corner(wall), corner(wall + 1)],
				aside: true,
				corners: [wall, wall + 1],
			};
		}
		case "diagonal": {
			const ends = [corner(reading.from), corner(reading.to)] as const;
			return { ...NOTHING, dots: ends, tape: ends, corners: [reading.from, reading.to] };
		}
		case "angle":
		case "chord": {
			const [before, after] = [shape(reading.corner - 1), shape(reading.corner)];
			const at = corner(reading.corner);
			const arm = reading.kind === "chord" ? reading.arm : ARM_SHARE * Math.min(before.length, after.length);
			const left = onFace(before, Math.max(0, before.length - arm)).at;
			const right = onFace(after, Math.min(after.length, arm)).at;
			const external = (turns[reading.corner] ?? 0) < 0;
			const named = { ...NOTHING, corners: [reading.corner] };
			if (reading.kind === "angle")
				return {
					...named,
					faces: [
						[left, at],
						[at, right],
					],
					angle: { at, left, right, over180: external },
				};
			const { ux, uy } = onFace(before, before.length);
			const ahead = step(at, ux, uy, arm);
			const first = external ? ahead : left;
			return {
				...named,
				// Beside the straightedge there is no room for a name.
				corners: external ? [] : named.corners,
				faces: [
					[left, at],
					[at, right],
				],
				laid: external ? [[left, step(ahead, ux, uy, arm * 0.12)]] : [],
				dots: [first, right],
				tape: [first, right],
				arms: [
					[at, first],
					[at, right],
				],
			};
		}
		case "rise": {
			const { wall, at } = reading;
			const own = shape(wall);
			const along = at ?? own.length / 2;
			const on = onFace(own, along).at;
			const [left, right] = [corner(wall), corner(wall + 1)];
			const foot = at === null ? midpoint(left, right) : footOn(left, right, on);
			return { ...NOTHING, faces: [own.face], laid: [[left, right]], tape: [foot, on], corners: [wall, wall + 1] };
		}
		case "square": {
			const [left, right] = [corner(reading.wall), corner(reading.wall + 1)];
			const at = corner(reading.corner);
			const foot = footOn(left, right, at);
			const near = distance(foot, left) < distance(foot, right) ? right : left;
			return {
				...NOTHING,
				faces: [shape(reading.wall).face],
				laid: [[near, foot]],
				dots: [at],
				tape: [foot, at],
				corners: [reading.corner],
			};
		}
	}
}

function footOn(left: Point, right: Point, p: Point): Point {
	const run = distance(left, right);
	const [ux, uy] = [(right.x - left.x) / run, (right.y - left.y) / run];
	return step(left, ux, uy, (p.x - left.x) * ux + (p.y - left.y) * uy);
}
