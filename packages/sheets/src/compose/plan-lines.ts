import {
	type Bend,
	type Bow,
	headingOfFace,
	type Point,
	partOf,
	pointAt,
	pointOffFace,
	type Segment,
	step,
	type TrackPath,
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import type { PathVertex } from "../paper/drawing.ts";
import { vertex } from "../paper/marks.ts";
import type { PaperPoint } from "../paper/place.ts";

type ToPaper = (p: Point) => PaperPoint;

/** A turn to the right is clockwise, and stays so on the paper. */
const bulgeOf = (turn: number): number => -Math.tan(turn / 4);

/** The track between two stations (mm), or a line `right` mm to the right of its centre line, as seen along it. */
export function trackVertices(path: TrackPath, from: number, to: number, right: number, put: ToPaper): PathVertex[] {
	const parts = path.segments.flatMap((segment) => partOf(segment, from, to) ?? []);
	return [
		...parts.map((part) =>
			vertex(put(beside(part.from, part.heading, right)), part.kind === "straight" ? 0 : bulgeOf(part.turn)),
		),
		...parts.slice(-1).map((part) => vertex(put(beside(part.to, headingAtEnd(part), right)))),
	];
}

const beside = (p: Point, heading: number, right: number): Point =>
	step(p, Math.cos(heading), Math.sin(heading), 0, right);

const headingAtEnd = (segment: Segment): number =>
	segment.kind === "straight" ? segment.heading : segment.heading - segment.turn;

/** A place on the track, and the line across it there. */
export function acrossTrack(path: TrackPath, station: number, left: number, right: number): readonly [Point, Point] {
	const place = pointAt(path, station);
	if (place === null) throw new Error("Broken invariant: a fitted track has at least one segment.");
	const [ux, uy] = [Math.cos(place.heading), Math.sin(place.heading)];
	return [step(place.at, ux, uy, 0, -left), step(place.at, ux, uy, 0, right)];
}

/** The wall faces from one place to another, each a wall and mm along its face. */
export interface FaceRun {
	readonly from: { readonly wall: number; readonly at: number };
	readonly to: { readonly wall: number; readonly at: number };
}

export function faceVertices(chain: WallChain, { from, to }: FaceRun, put: ToPaper): PathVertex[] {
	const vertices: PathVertex[] = [];
	for (let wall = from.wall; wall <= to.wall; wall++) {
		const face = chain.walls[wall] as WallFace;
		const [start, end] = [wall === from.wall ? from.at : 0, wall === to.wall ? to.at : face.faceLength];
		vertices.push(vertex(put(pointOffFace(chain, wall, start, 0)), faceBulge(face, end - start)));
		if (wall === to.wall) vertices.push(vertex(put(pointOffFace(chain, wall, end, 0))));
	}
	return vertices;
}

const faceBulge = ({ bow, faceLength }: WallFace, length: number): number =>
	bow === null ? 0 : bulgeOf((bow.turn * length) / faceLength);

/** A corner's mitre is cut off at this many thicknesses. */
const LONGEST_MITRE = 2.2;

/** The wall itself as drawn: its faces, and a line about `thickness` mm behind them. Nothing is measured from that. */
export function wallOutline(chain: WallChain, run: FaceRun, thickness: number, put: ToPaper): PathVertex[] {
	const faces = faceVertices(chain, run, put);
	const behind: { readonly p: Point; readonly bulge: number }[] = [];
	const { from, to } = run;
	for (let wall = from.wall; wall <= to.wall; wall++) {
		const face = chain.walls[wall] as WallFace;
		const [start, end] = [wall === from.wall ? from.at : 0, wall === to.wall ? to.at : face.faceLength];
		const first = wall === from.wall ? pointOffFace(chain, wall, start, -thickness) : mitre(chain, wall, thickness);
		const last = wall === to.wall ? pointOffFace(chain, wall, end, -thickness) : mitre(chain, wall + 1, thickness);
		behind.push({ p: first, bulge: faceBulge(face, end - start) });
		if (wall === to.wall) behind.push({ p: last, bulge: 0 });
	}
	// Back along the far side: the same arcs the other way round.
	const back = behind.toReversed().map(({ p }, i) => vertex(put(p), -(behind[behind.length - 2 - i]?.bulge ?? 0)));
	return [...faces, ...back];
}

/** Where the far sides of two walls meet. */
function mitre(chain: WallChain, corner: number, thickness: number): Point {
	const turn = chain.turns[corner] as number;
	const heading = headingOfFace(chain, corner, 0) + turn / 2;
	const reach = Math.min(thickness / Math.cos(turn / 2), LONGEST_MITRE * thickness);
	return step(chain.corners[corner] as Point, Math.cos(heading), Math.sin(heading), 0, -reach);
}

/** Directions of a hatch to choose from, the usual one first. */
const HATCH_ANGLES = [45, -45, 60, 30, -60, -30, 75, 15, -15, -75].map((each) => (each * Math.PI) / 180);
/** Hatch at less than this to a wall looks like lines along it, radians. */
const HARDLY_ACROSS = Math.PI / 9;

/** The direction of a hatch on a plan that is turned by `turn`, so that no wall drawn runs along it: the first that will do, else the best. */
export function hatchAngle({ walls }: WallChain, turn: number, run?: FaceRun): number {
	const drawn = run === undefined ? walls : walls.slice(run.from.wall, run.to.wall + 1);
	const across = (angle: number) =>
		Math.min(...drawn.map(({ heading }) => Math.abs(Math.asin(Math.sin(heading + turn - angle)))));
	const fine = HATCH_ANGLES.find((angle) => across(angle) >= HARDLY_ACROSS);
	return fine ?? HATCH_ANGLES.reduce((best, each) => (across(each) > across(best) ? each : best));
}

/** All that is bent by hand: bends but those that a slight turn springs, and bows along their walls. */
export const isBent = (segment: Segment): segment is Bend | Bow =>
	segment.kind === "bow" || (segment.kind === "bend" && !segment.sprung);
