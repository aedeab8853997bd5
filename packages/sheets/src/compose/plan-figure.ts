import { type Point, pointOffFace, type TrackPath, type WallChain, type WallFace } from "@baywright/geometry";
import { dimensionSureness } from "@baywright/setout";
import { sampled } from "../paper/arcs.ts";
import { boxOfAll } from "../paper/bounds.ts";
import { dimension } from "../paper/dimension.ts";
import type { Mark, PathItem, PathVertex } from "../paper/drawing.ts";
import { type LabelWish, placeLabels } from "../paper/labels.ts";
import { area, circle, line, path } from "../paper/marks.ts";
import { at, type Box, boxRound, heightOf, middleOf, moved, type PaperPoint, widthOf } from "../paper/place.ts";
import { scaleFor } from "../paper/scales.ts";
import { shifted } from "../paper/shifted.ts";
import { acrossTrack, faceVertices, hatchAngle, isBent, trackVertices, wallOutline } from "./plan-lines.ts";
import { onPaper } from "./plan-view.ts";
import { bendWishes, bracketWishes, cornerWishes, otherWishes, RUN_IN_THE_TABLE } from "./plan-wishes.ts";
import type { SheetOf } from "./sheet-of.ts";
import { spaced } from "./template-drawing.ts";

/** The bay from above, to scale. */
export interface PlanFigure {
	/** mm of the room for each mm drawn. */
	readonly scale: number;
	readonly items: readonly Mark[];
	/** What it takes up. */
	readonly height: number;
	/** What found no place beside it, to be said elsewhere. */
	readonly left: readonly LabelWish[];
}

/** Round the bay, for dimensions and names, mm of the paper. */
const AROUND = 16;
/** Enough where all of them still find their places and the bay can be drawn larger for it, mm. */
const HARDLY_AROUND = 10;
/** From the track to a dimension on the room's side of it, mm of the paper. */
const PAST_NUMBERS = 12.5;
/** Over and under the bay there is more room for names, of which only what is used is taken, mm. */
const OVER_AND_UNDER = 24;
/** How thick walls are drawn, mm of the room, and no thinner than this on the paper. */
const THICKNESS = 110;
const THINNEST = 2.5;
/** Half of what a drawn-back curtain is shown as across the track, mm of the room. */
const HALF_STACK = 45;

type Put = (p: Point) => PaperPoint;

/** Drawn in the upper left corner of a room so wide and so high, mm; the plan must have walls. */
export function planFigure(of: SheetOf, width: number, tallest: number): PlanFigure {
	const chain = of.plan.chain as WallChain;
	const whole = onPaper({ perMm: 1, turn: 0, from: { x: 0, y: 0 }, to: at(0, 0) });
	const reach = boxRound(outlinePoints(of, chain, whole)) as Box;
	const scaleWith = (around: number) =>
		scaleFor(
			{ width: widthOf(reach), height: heightOf(reach) },
			{ width: width - 2 * around, height: tallest - 2 * around },
		);
	const [usual, larger] = [scaleWith(AROUND), scaleWith(HARDLY_AROUND)];
	if (larger < usual) {
		const figure = figureAt(of, reach, width, larger);
		if (figure.left.length === 0) return figure;
	}
	return figureAt(of, reach, width, usual);
}

function figureAt(of: SheetOf, reach: Box, width: number, scale: number): PlanFigure {
	const chain = of.plan.chain as WallChain;
	const height = heightOf(reach) / scale + 2 * OVER_AND_UNDER;
	const middle = middleOf(reach);
	const put = onPaper({
		perMm: 1 / scale,
		turn: 0,
		from: { x: middle.x, y: -middle.y },
		to: at(width / 2, height / 2),
	});
	const paper = { left: 0, top: 0, right: width, bottom: height };
	const thick = Math.max(THICKNESS, THINNEST * scale);
	const items = [...wallItems(of, chain, thick, put, scale), ...trackItems(of, put)];
	const dimensions = runDimensions(of, chain, thick / scale, put, paper);
	const lines = [...items, ...dimensions.items, ...withinWalls(chain, thick, put)].flatMap((item) =>
		item.kind === "path" ? spaced(sampled(item.vertices, item.closed, 0.05), 1) : [],
	);
	const wishes = [
		...bracketWishes(of, put),
		...cornerWishes(of, chain, put),
		...dimensions.left,
		...bendWishes(of, put),
		...otherWishes(of, chain, put),
	];
	const labels = placeLabels(wishes, { area: paper, taken: [], shapes: dimensions.shapes, lines });
	// Of the room kept round the bay only what is used is taken.
	const all = [...items, ...dimensions.items, ...labels.items];
	const used = boxOfAll(all) ?? paper;
	return { scale, items: all.map((item) => shifted(item, 0, -used.top)), height: heightOf(used), left: labels.left };
}

/** All that the scale is chosen by. */
function outlinePoints({ plan }: SheetOf, chain: WallChain, put: Put): PaperPoint[] {
	const walls = faceVertices(chain, wholeRun(chain), put);
	const track = plan.path === null ? [] : trackVertices(plan.path, 0, plan.path.length, 0, put);
	return [walls, track].flatMap((vertices) => sampled(vertices, false, 5));
}

/** Lines along the inside of the walls, not drawn: words do not read well on hatching. */
const withinWalls = (chain: WallChain, thick: number, put: Put): PathItem[] =>
	[thick / 3, (2 * thick) / 3].map((deep) => area("WALLS", wallOutline(chain, wholeRun(chain), deep, put), {}));

export const wholeRun = ({ walls }: WallChain) => ({
	from: { wall: 0, at: 0 },
	to: { wall: walls.length - 1, at: (walls.at(-1) as WallFace).faceLength },
});

/** `scale`: mm of the room for each mm drawn; left out of a sketch. */
export function wallItems({ bay }: SheetOf, chain: WallChain, thick: number, put: Put, scale?: number): Mark[] {
	const openings = bay.openings.flatMap(({ wall, from, to }): PathItem[] => {
		const face = chain.walls[wall];
		if (face === undefined) return [];
		const run = { from: { wall, at: Math.max(from, 0) }, to: { wall, at: Math.min(to, face.faceLength) } };
		if (!(run.to.at > run.from.at)) return [];
		return [
			area("OPENINGS", wallOutline(chain, run, thick, put), { stroke: { pen: "medium" }, fill: "white" }),
			area("OPENINGS", wallOutline(chain, run, thick / 2, put), { stroke: { pen: "narrow" } }),
		];
	});
	const obstacles = bay.obstacles.flatMap(({ wall, from, to, depth }): PathItem[] => {
		const face = chain.walls[wall];
		if (face === undefined || !(to > from)) return [];
		const run = { from: { wall, at: Math.max(from, 0) }, to: { wall, at: Math.min(to, face.faceLength) } };
		if (!(run.to.at > run.from.at)) return [];
		return [
			area("OPENINGS", wallOutline(chain, run, -Math.max(depth, 20), put), {
				stroke: { pen: "narrow", ink: "grey" },
				fill: "tint",
			}),
		];
	});
	return [
		{
			kind: "hatch",
			layer: "WALLS",
			outline: wallOutline(chain, wholeRun(chain), thick, put),
			spacing: 1.6,
			angle: hatchAngle(chain, 0),
			stroke: { pen: "narrow", ink: "light" },
		},
		area("WALLS", wallOutline(chain, wholeRun(chain), thick, put), { stroke: { pen: "narrow", ink: "grey" } }),
		...openings,
		...obstacles,
		{
			...path("WALLS", faceVertices(chain, wholeRun(chain), put), { stroke: { pen: "wide" } }),
			...(scale === undefined ? {} : { scale }),
		},
	];
}

function trackItems({ plan, bay }: SheetOf, put: Put): Mark[] {
	const { path: track, chain } = plan;
	if (track === null || chain === null) return [];
	const stacks = plan.stackBack.flatMap(({ from, to }) =>
		to > from
			? [area("STACK", band(track, from, to, put), { stroke: { pen: "narrow", ink: "light" }, fill: "tint" })]
			: [],
	);
	const brackets = plan.brackets.flatMap(({ at: place, wall, fromLeftCorner }): Mark[] => {
		const foot = pointOffFace(chain, wall, fromLeftCorner, 0);
		const stem = bay.track.mounting === "ceiling" ? [] : [line("BRACKETS", put(foot), put(place), { pen: "medium" })];
		return [...stem, circle("BRACKETS", put(place), 0.9, { fill: "black" })];
	});
	const ticks = track.segments
		.filter(isBent)
		.flatMap((bent) => [bent.start, bent.start + bent.length].map((station) => tick("CUTS", track, station, 1.6, put)));
	const joints = plan.joints.map(({ station }) => tick("CUTS", track, station, 2.6, put));
	return [
		...stacks,
		path("TRACK", trackVertices(track, 0, track.length, 0, put), { stroke: { pen: "heavy" } }),
		...brackets,
		...ticks,
		...joints,
	];
}

/** A line across the track, so many mm of the paper to either side. */
function tick(layer: "CUTS", track: TrackPath, station: number, reach: number, put: Put): PathItem {
	const [a, b] = acrossTrack(track, station, 1, 1).map(put) as [PaperPoint, PaperPoint];
	const long = Math.hypot(b.x - a.x, b.y - a.y) / 2;
	const middle = at((a.x + b.x) / 2, (a.y + b.y) / 2);
	const by = reach / long / 2;
	const [dx, dy] = [(b.x - a.x) * by, (b.y - a.y) * by];
	return line(layer, moved(middle, -dx, -dy), moved(middle, dx, dy), { pen: "medium" });
}

/** The strip to both sides of the track between two stations. */
function band(track: TrackPath, from: number, to: number, put: Put): PathVertex[] {
	const right = trackVertices(track, from, to, HALF_STACK, put);
	const left = trackVertices(track, from, to, -HALF_STACK, put);
	const back = left.toReversed().map((each, i) => ({ at: each.at, bulge: -(left[left.length - 2 - i]?.bulge ?? 0) }));
	return [...right, ...back];
}

/** The run of every wall, outside it. What is only drawn, not taped, stands in brackets. Source: ISO 129-1, auxiliary dimensions. */
function runDimensions(of: SheetOf, chain: WallChain, thick: number, put: Put, paper: Box) {
	const { bay, plan, figure } = of;
	const sure = dimensionSureness(bay, plan.system);
	const taken: (readonly PaperPoint[])[] = [solid(of, chain, put)].flat();
	const shapes: (readonly PaperPoint[])[] = [];
	const items: Mark[] = [];
	const left: LabelWish[] = [];
	chain.walls.forEach((face, wall) => {
		const [from, to] = [chain.corners[wall], chain.corners[wall + 1]].map((p) => put(p as Point)) as [
			PaperPoint,
			PaperPoint,
		];
		const known = (sure?.runs[wall] ?? null) !== null;
		const words = known ? figure(face.length) : `(${figure(face.length)})`;
		const perMm = Math.hypot(to.x - from.x, to.y - from.y) / face.length;
		const far = thick + 5.5 + Math.max(0, face.bow?.rise ?? 0) * perMm;
		// Behind an external corner the dimensions of its walls would cross: then one stands on the room's side, past the numbers of the brackets.
		const inside = (plan.projections[wall] ?? 0) * perMm + PAST_NUMBERS;
		const sides = [
			{ side: "left", offsets: [far, far + 5, far + 10] },
			{ side: "right", offsets: [inside, inside - 2.5] },
		] as const;
		const placed = sides.reduce<ReturnType<typeof dimension>>(
			(found, each) => found ?? dimension({ from, to, text: words, ...each }, [...taken, ...shapes], paper),
			null,
		);
		if (placed === null)
			left.push({
				anchor: at((from.x + to.x) / 2, (from.y + to.y) / 2),
				lines: [words],
				towards: face.heading + Math.PI / 2,
				elseLeft: RUN_IN_THE_TABLE,
				height: 2,
				layer: "DIMENSIONS",
			});
		else {
			items.push(...placed.items);
			shapes.push(...placed.shapes);
		}
	});
	return { items, shapes, left };
}

/** What no dimension may lie on: the walls and the track, as short convex pieces. */
function solid({ plan }: SheetOf, chain: WallChain, put: Put): (readonly PaperPoint[])[] {
	const faces = spaced(sampled(faceVertices(chain, wholeRun(chain), put), false, 0.1), 3);
	const track =
		plan.path === null ? [] : spaced(sampled(trackVertices(plan.path, 0, plan.path.length, 0, put), false, 0.1), 3);
	return [faces, track].flatMap((points) => points.slice(1).map((p, i) => [points[i] as PaperPoint, p]));
}
