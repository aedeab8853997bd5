import {
	type Bend,
	type Bow,
	footOnFace,
	type Point,
	pointAt,
	type Segment,
	step,
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import { type BayPlan, type Bracket, bendName, wallName } from "@baywright/setout";
import { sampled } from "../paper/arcs.ts";
import type { HatchItem, Mark } from "../paper/drawing.ts";
import { hatchLines } from "../paper/hatching.ts";
import type { LabelWish } from "../paper/labels.ts";
import { circle, line, path, polygon } from "../paper/marks.ts";
import { at, type PaperPoint } from "../paper/place.ts";
import type { BentStretch } from "./bent-stretches.ts";
import { acrossTrack, type FaceRun, faceVertices, hatchAngle, trackVertices, wallOutline } from "./plan-lines.ts";
import { onPaper } from "./plan-view.ts";
import type { SheetOf } from "./sheet-of.ts";
import { bendLabels, bracketLabel, cornerLabels, endLabels, OVER } from "./template-labels.ts";

/** A template as one drawing at true size, however large. Lengths mm. */
export interface TemplateDrawing {
	readonly items: readonly Mark[];
	readonly labels: readonly LabelWish[];
	/** Places along all that must be on paper, no further apart than SPACING. */
	readonly points: readonly PaperPoint[];
	/** The places that all lines are drawn from: where these are the same, all is. */
	readonly bones: readonly PaperPoint[];
	/** Places along every line, close together: labels had better not stand there. */
	readonly busy: readonly PaperPoint[];
}

/** mm. */
const SPACING = 4;
export const BUSY_SPACING = 1.5;
const WALL_BAND = 7;

/** Draws a stretch turned by `turn`, with the place where it begins in the paper's corner. */
export function templateDrawing(of: SheetOf, stretch: BentStretch, turn: number): TemplateDrawing {
	const { plan } = of;
	const { path: track, chain, system } = plan;
	if (track === null || chain === null) throw new Error("Broken invariant: a template of a track that was not fitted.");
	const put = onPaper({ perMm: 1, turn, from: (pointAt(track, stretch.from) as { at: Point }).at, to: at(0, 0) });
	const half = system.profile.width / 2;
	const { leadFrom, leadTo } = stretch;
	const run = faceRun(plan, chain, leadFrom, leadTo);
	const faces = faceVertices(chain, run, put);
	const centre = trackVertices(track, leadFrom, leadTo, 0, put);
	const edges = [-half, half].map((right) => trackVertices(track, leadFrom, leadTo, right, put));
	const ends = [leadFrom, leadTo].map(
		(station) => acrossTrack(track, station, half, half).map(put) as [PaperPoint, PaperPoint],
	);
	const crosses = bendMarks(stretch).map(
		({ station }) => acrossTrack(track, station, half + OVER, half + OVER).map(put) as [PaperPoint, PaperPoint],
	);
	const brackets = plan.brackets.flatMap((bracket, i) =>
		bracket.station > leadFrom && bracket.station < leadTo ? [{ bracket, i }] : [],
	);
	const corners = plan.corners.filter(({ corner }) => corner > run.from.wall && corner <= run.to.wall);
	const hatch: HatchItem = {
		kind: "hatch",
		layer: "WALLS",
		outline: wallOutline(chain, run, WALL_BAND, put),
		spacing: 2.5,
		angle: hatchAngle(chain, turn, run),
		stroke: { pen: "narrow", ink: "light" },
	};
	const items: Mark[] = [
		hatch,
		path("WALLS", faces, { stroke: { pen: "heavy" } }),
		...brackets.map(({ bracket }) =>
			polygon("BRACKETS", bracketShape(of, bracket).map(put), { stroke: { pen: "medium" }, fill: "tint" }),
		),
		...corners.flatMap(({ corner }) => cornerCross(put(chain.corners[corner] as Point))),
		...edges.map((vertices) => path("TRACK", vertices, { stroke: { pen: "wide" } })),
		...ends.map(([a, b], i) =>
			line("CUTS", a, b, { pen: (i === 0 ? leadFrom === 0 : leadTo === track.length) ? "wide" : "narrow" }),
		),
		path("TRACK", centre, { stroke: { pen: "narrow", dash: "chain" } }),
		...brackets.map(({ bracket }) => {
			const [a, b] = acrossTrack(track, bracket.station, half + OVER / 2, half + OVER / 2).map(put) as [
				PaperPoint,
				PaperPoint,
			];
			return line("BRACKETS", a, b, { pen: "narrow" });
		}),
		...crosses.map(([a, b]) => line("CUTS", a, b, { pen: "medium" })),
	];
	const labels = [
		...cornerLabels(of, corners, put),
		...bendLabels(of, stretch, put),
		...brackets.map(({ bracket, i }) => bracketLabel(of, bracket, i, put)),
		...endLabels(of, stretch, put),
	];
	const shapes = brackets.map(({ bracket }) => bracketShape(of, bracket).map(put));
	const drawn = [faces, centre, ...edges].map((vertices) => sampled(vertices, false, 0.05));
	const rings = shapes.map((shape) => [...shape, ...shape.slice(0, 1)]);
	return {
		items,
		labels,
		points: [
			...drawn.flatMap((each) => spaced(each, SPACING)),
			...[...crosses, ...shapes].flat(),
			...labels.map(({ anchor }) => anchor),
		],
		bones: [
			...[faces, centre].flatMap((vertices) => vertices.map((each) => each.at)),
			...[...crosses, ...shapes].flat(),
		],
		busy: [...drawn, ...crosses, ...ends, ...rings, ...hatchLines(hatch)].flatMap((each) => spaced(each, BUSY_SPACING)),
	};
}

/** A light ring and a cross where the faces meet: the point to lay on the corner of the room. */
const cornerCross = (p: PaperPoint): Mark[] => [
	circle("WALLS", p, 1.6, { stroke: { pen: "medium" }, fill: "white" }),
	circle("WALLS", p, 0.35, { fill: "black" }),
];

interface BendMark {
	readonly name: string;
	readonly station: number;
}

/** Start, middle and end of all that is bent, as on the strip. */
function bendMarks({ bends, from, to }: BentStretch): BendMark[] {
	return bends.flatMap((bent) => {
		const start = Math.max(bent.start, from);
		const end = Math.min(bent.start + bent.length, to);
		const what = bent.kind === "bow" ? "bow" : "bend";
		return [
			{ name: `${what} starts`, station: start },
			{ name: `middle of ${what}`, station: (start + end) / 2 },
			{ name: `${what} ends`, station: end },
		];
	});
}

/** From where to where the wall faces are drawn: square off the ends of the track that is. */
function faceRun({ path: track }: BayPlan, chain: WallChain, from: number, to: number): FaceRun {
	const segments = track?.segments ?? [];
	const at = (station: number, isStart: boolean) => {
		const place = pointAt({ segments, length: track?.length ?? 0 }, station);
		if (place === null) throw new Error("Broken invariant: a fitted track has at least one segment.");
		const wall = wallBeside(segments[place.segment] as Segment, isStart);
		const foot = footOnFace(chain, wall, place.at).at;
		return { wall, at: Math.min(Math.max(foot, 0), (chain.walls[wall] as WallFace).faceLength) };
	};
	return { from: at(from, true), to: at(to, false) };
}

function wallBeside(segment: Segment, isStart: boolean): number {
	if (segment.kind === "bow") return segment.wall;
	if (segment.kind === "bend") return isStart ? (segment.corners[0] as number) - 1 : (segment.corners.at(-1) as number);
	if (segment.crosses) return isStart ? segment.wall - 1 : segment.wall + 1;
	return segment.wall;
}

/** From the wall across the track; on a ceiling across the track alone. */
function bracketShape({ plan, bay }: SheetOf, { at: place, station, projection }: Bracket): Point[] {
	const heading = pointAt(plan.path as NonNullable<BayPlan["path"]>, station)?.heading ?? 0;
	const [ux, uy] = [Math.cos(heading), Math.sin(heading)];
	const { profile, bracket } = plan.system;
	const past = profile.width / 2 + 2.5;
	const back = bay.track.mounting === "ceiling" ? past : Math.max(projection, past);
	return (
		[
			[-1, -back],
			[1, -back],
			[1, past],
			[-1, past],
		] as const
	).map(([along, right]) => step(place, ux, uy, (along * bracket.width) / 2, right));
}

/** A line's places with more put between those that are far apart. */
export function spaced(points: readonly PaperPoint[], spacing: number): PaperPoint[] {
	return points.flatMap((p, i) => {
		const next = points[i + 1];
		if (next === undefined) return [p];
		const parts = Math.max(1, Math.ceil(Math.hypot(next.x - p.x, next.y - p.y) / spacing));
		return Array.from({ length: parts }, (_, k) =>
			at(p.x + ((next.x - p.x) * k) / parts, p.y + ((next.y - p.y) * k) / parts),
		);
	});
}

/** What a bend or bow is called. */
export const stretchName = (bent: Bend | Bow, walls: number): string =>
	bent.kind === "bow" ? `bow of the ${wallName(bent.wall, walls)}` : bendName(bent.corners, walls);
