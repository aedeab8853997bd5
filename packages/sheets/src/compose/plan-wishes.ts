import {
	type Point,
	pointAt,
	pointOffFace,
	type Segment,
	type TrackPath,
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import { capital, cornerName, dimensionSureness } from "@baywright/setout";
import type { LabelWish } from "../paper/labels.ts";
import type { PaperPoint } from "../paper/place.ts";
import { acrossTrack, isBent } from "./plan-lines.ts";
import type { SheetOf } from "./sheet-of.ts";

type Put = (p: Point) => PaperPoint;

/** What would stand worse than this, as if it were so far off (mm), is left to the tables. */
const IN_THE_TABLE = 64;

/** The same of runs, which say little so far from their wall. */
export const RUN_IN_THE_TABLE = 34;

/** Names of the corners and the room angles, outside the walls; what is only drawn, not taped, in brackets. */
export function cornerWishes({ plan, bay, angle }: SheetOf, chain: WallChain, put: Put): LabelWish[] {
	const walls = chain.walls.length;
	const sure = dimensionSureness(bay, plan.system);
	return chain.corners.map((corner, i) => {
		const turn = chain.turns[i] as number;
		const before = chain.walls[Math.max(i - 1, 0)] as WallFace;
		const after = chain.walls[Math.min(i, walls - 1)] as WallFace;
		const outwards = Math.atan2(before.ux + after.ux, -(before.uy + after.uy));
		const shown = angle(Math.PI - turn);
		const isEnd = i === 0 || i === walls;
		const known = (sure?.angles[i] ?? null) !== null;
		return {
			anchor: put(corner),
			lines: [capital(cornerName(i, walls).replace(/^the /, "")), ...(isEnd ? [] : [known ? shown : `(${shown})`])],
			towards: outwards,
			elseLeft: IN_THE_TABLE,
			height: 2,
		};
	});
}

/** Numbers of the brackets, on the room's side of the track. */
export function bracketWishes({ plan }: SheetOf, put: Put): LabelWish[] {
	const track = plan.path;
	if (track === null) return [];
	return plan.brackets.map(({ at: place, station }, i) => {
		const heading = pointAt(track, station)?.heading ?? 0;
		return { anchor: put(place), lines: [String(i + 1)], towards: heading - Math.PI / 2, height: 2, layer: "BRACKETS" };
	});
}

/** Radii further off than this are not said on the drawing, mm: the table of bends has them. */
const NEAR_ENOUGH = 26;

export function bendWishes({ plan, figure }: SheetOf, put: Put): LabelWish[] {
	return (plan.path?.segments ?? []).filter(isBent).map((bent: Segment) => {
		const middle = pointAt(plan.path as TrackPath, bent.start + bent.length / 2);
		const radius = bent.kind === "straight" ? 0 : bent.radius;
		return {
			anchor: put(middle?.at ?? bent.from),
			lines: [`R ${figure(radius)}`],
			towards: (middle?.heading ?? 0) - Math.PI / 2,
			height: 2,
			atMost: NEAR_ENOUGH,
		};
	});
}

/** Rises, obstacles, joints and pieces. */
export function otherWishes({ plan, bay, figure }: SheetOf, chain: WallChain, put: Put): LabelWish[] {
	const track = plan.path;
	const sure = dimensionSureness(bay, plan.system);
	const rises = chain.walls.flatMap(({ bow, faceLength }, wall): LabelWish[] => {
		if (bow === null) return [];
		const shown = `rise ${figure(Math.abs(bow.rise))}${bow.rise < 0 ? " into the room" : ""}`;
		const isTaped = (sure?.rises[wall] ?? null) !== null;
		return [
			{
				anchor: put(pointOffFace(chain, wall, faceLength / 2, 0)),
				lines: [isTaped ? shown : `(${shown})`],
				elseLeft: IN_THE_TABLE,
				height: 2,
				layer: "DIMENSIONS",
			},
		];
	});
	const obstacles = bay.obstacles.flatMap(({ kind, wall, from, to }): LabelWish[] =>
		chain.walls[wall] === undefined
			? []
			: [
					{
						anchor: put(pointOffFace(chain, wall, (from + to) / 2, 0)),
						lines: [kind.replace("-", " ")],
						height: 1.8,
						layer: "OPENINGS",
					},
				],
	);
	if (track === null) return [...rises, ...obstacles];
	const joints = plan.joints.map(
		({ station }, i): LabelWish => ({
			anchor: put(acrossTrack(track, station, 0, 0)[0]),
			lines: [`Joint ${i + 1}`],
			height: 2,
		}),
	);
	const pieces =
		plan.pieces.length < 2
			? []
			: plan.pieces.map(
					({ name, from, to }): LabelWish => ({
						anchor: put(acrossTrack(track, (from + to) / 2, 0, 0)[0]),
						lines: [`Piece ${name}`],
						height: 2,
						atMost: IN_THE_TABLE,
					}),
				);
	return [...rises, ...joints, ...pieces, ...obstacles];
}
