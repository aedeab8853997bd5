import type { Point } from "@baywright/geometry";
import { type Bay, cornerName, parseDegrees, parseLength, ROOM_ANGLE } from "@baywright/setout";
import { type ChainEnd, FIRST_WAY, headingFor, type Pivot, pivotOf } from "../edits/chain.ts";
import { anglesOn } from "../snap/corner-loci.ts";
import { evenRuns, stepFor } from "../snap/even.ts";
import { circle, footOn, type Locus, line } from "../snap/locus.ts";
import { snapPoint } from "../snap/snap.ts";
import { bayOf, type World } from "./tool.ts";
import { endOf, type WallsState } from "./walls-state.ts";

/** The wall that would be drawn next. */
export interface NextWall {
	/** Where a bay that is still empty starts; null for all others. */
	readonly from: Point | null;
	readonly at: Point;
	/** mm. */
	readonly run: number;
	/** Room angle that it makes with the wall before, degrees; null where there is none. */
	readonly angle: number | null;
	/** What of both was typed, mm and degrees. */
	readonly typedRun: number | null;
	readonly typedAngle: number | null;
	readonly guides: readonly Locus[];
	/** Why it cannot be drawn; "" where it can. */
	readonly trouble: string;
}

/** mm: a wall that is tapped shorter than this is a slip of the hand. */
const SHORTEST = 10;

/** What pointing and typing say so far; null where nothing points anywhere yet. */
export function nextWall(state: WallsState, world: World): NextWall | null {
	const bay = bayOf(world);
	const end = endOf(state, world);
	const there = pivotOf(bay, end);
	const pivot = there ?? pressedAt(state);
	const run = readRun(state.run, world);
	const angle = readAngle(state.angle);
	const trouble = troubleIn(state, world);
	const typedRun = typeof run === "number" ? run : null;
	const typedAngle = typeof angle === "number" ? angle : null;
	if (pivot === null) return firstWall(state, typedRun, trouble);
	const way = wayOf(state, world, pivot, end, typedRun, typedAngle);
	if (way === null) return null;
	const length = typedRun ?? way.run;
	const at = { x: pivot.at.x + Math.cos(way.heading) * length, y: pivot.at.y + Math.sin(way.heading) * length };
	const travel = end === "right" ? way.heading : way.heading + Math.PI;
	return {
		from: there === null ? pivot.at : null,
		at: typedRun === null && typedAngle === null ? way.at : at,
		run: length,
		angle: pivot.beyond === null ? null : roomAngle(pivot.beyond, travel, end),
		typedRun,
		typedAngle,
		guides: way.guides,
		trouble:
			trouble ||
			(length < SHORTEST && typedRun === null ? "Too short for a wall: point further off, or type its run." : ""),
	};
}

/** Why what is typed is no run or no angle; "" where it is, or where nothing is typed. */
export function troubleIn({ run, angle }: Pick<WallsState, "run" | "angle">, world: World): string {
	return [readRun(run, world), readAngle(angle)].find((it) => typeof it === "string") ?? "";
}

/** A drag over an empty sheet draws the first wall from where it started. */
function pressedAt({ pressed, over }: WallsState): Pivot | null {
	if (pressed === null || over === null) return null;
	const at = { x: Math.round(pressed.at.x), y: Math.round(pressed.at.y) };
	const isSlip = Math.hypot(over.at.x - at.x, over.at.y - at.y) < SHORTEST;
	return isSlip ? null : { at, corner: 0, beyond: null };
}

/** Nothing is there yet: the first corner, or with a run typed the first wall at once. */
function firstWall({ over, heading }: WallsState, run: number | null, trouble: string): NextWall | null {
	if (run === null && over === null) return null;
	const at = over === null ? { x: 0, y: 0 } : { x: Math.round(over.at.x), y: Math.round(over.at.y) };
	if (run === null)
		return { from: null, at, run: 0, angle: null, typedRun: null, typedAngle: null, guides: [], trouble };
	const way = heading ?? FIRST_WAY;
	const to = { x: at.x + Math.cos(way) * run, y: at.y + Math.sin(way) * run };
	return { from: at, at: to, run, angle: null, typedRun: run, typedAngle: null, guides: [], trouble };
}

interface Way {
	/** From the pivot. */
	readonly heading: number;
	readonly run: number;
	readonly at: Point;
	readonly guides: readonly Locus[];
}

function wayOf(
	state: WallsState,
	world: World,
	pivot: Pivot,
	end: ChainEnd,
	run: number | null,
	angle: number | null,
): Way | null {
	const typed = angle !== null && pivot.beyond !== null ? headingFor(pivot.beyond, angle, end) : null;
	const { over } = state;
	const points = over !== null && Math.hypot(over.at.x - pivot.at.x, over.at.y - pivot.at.y) >= SHORTEST;
	const unpointed = run !== null && !points;
	const fixed = typed ?? state.heading ?? (unpointed && pivot.beyond === null ? FIRST_WAY : null);
	if (fixed !== null) {
		const away = run ?? (over === null ? 0 : alongWay(pivot.at, fixed, over.at));
		const step = stepFor(over?.reach ?? 0);
		const even = run ?? Math.round(away / step) * step;
		const at = { x: pivot.at.x + Math.cos(fixed) * even, y: pivot.at.y + Math.sin(fixed) * even };
		return { heading: fixed, run: even, at, guides: [] };
	}
	if (over === null || unpointed) return null;
	const { at: raw, reach } = over;
	const loci = reach > 0 ? lociFor(bayOf(world), pivot, end) : [];
	if (run !== null) {
		const drawn = nearestWay(
			raw,
			loci.filter((it) => it.kind === "line" && goesThrough(it, pivot.at)),
			reach,
		);
		const to = drawn?.at ?? raw;
		const heading = Math.atan2(to.y - pivot.at.y, to.x - pivot.at.x);
		return { heading, run, at: to, guides: drawn === null ? [] : [drawn.guide] };
	}
	const snap = snapPoint(raw, loci, reach, (near) => evenRuns([pivot.at], near, stepFor(reach)));
	const [dx, dy] = [snap.at.x - pivot.at.x, snap.at.y - pivot.at.y];
	return { heading: Math.atan2(dy, dx), run: Math.hypot(dx, dy), at: snap.at, guides: snap.guides };
}

/** What draws a wall that is being drawn: common angles with the wall before, level and upright, the height of other corners, walls as long as others. */
function lociFor(bay: Bay, { at, corner, beyond }: Pivot, end: ChainEnd): readonly Locus[] {
	const walls = bay.corners.length - 1;
	const name = cornerName(corner, walls);
	const axes = [line(at, 0, "level"), line(at, Math.PI / 2, "straight out")];
	const others = bay.corners.flatMap(([x, y], i): Locus[] => {
		if (i === corner) return [];
		const other = cornerName(i, walls);
		return [line({ x, y }, 0, `level with ${other}`), line({ x, y }, Math.PI / 2, `straight out from ${other}`)];
	});
	const lengths = Array.from({ length: walls }, (_, wall) => {
		const [from, to] = [bay.corners[wall], bay.corners[wall + 1]] as const;
		return from && to ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0;
	});
	const equal = lengths.map((length) => circle(at, length, "as long as another wall"));
	return [...(beyond === null ? [] : anglesOn(at, beyond, end, name)), ...axes, ...others, ...equal];
}

function nearestWay(
	raw: Point,
	loci: readonly Locus[],
	reach: number,
): { readonly at: Point; readonly guide: Locus } | null {
	let best: { readonly at: Point; readonly guide: Locus } | null = null;
	let least = reach;
	for (const guide of loci) {
		const at = footOn(guide, raw);
		const away = at === null ? Number.POSITIVE_INFINITY : Math.hypot(at.x - raw.x, at.y - raw.y);
		if (at !== null && away <= least) {
			best = { at, guide };
			least = away;
		}
	}
	return best;
}

const goesThrough = (locus: Locus, at: Point): boolean =>
	locus.kind === "line" && Math.abs((at.x - locus.through.x) * locus.uy - (at.y - locus.through.y) * locus.ux) < 1e-6;

const alongWay = (from: Point, heading: number, to: Point): number =>
	Math.max(0, (to.x - from.x) * Math.cos(heading) + (to.y - from.y) * Math.sin(heading));

function roomAngle(beyond: number, travel: number, end: ChainEnd): number {
	const turn = end === "right" ? beyond - travel : travel - beyond;
	const wrapped = turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
	return 180 - (wrapped * 180) / Math.PI;
}

/** mm; null for nothing typed; why not, for what is no length. */
function readRun(text: string, { job }: World): number | string | null {
	if (text.trim() === "") return null;
	const parsed = parseLength(text, job.display.length);
	if (!parsed.ok) return parsed.message;
	return parsed.value >= 1 ? parsed.value : "A wall is at least 1 mm long.";
}

function readAngle(text: string): number | string | null {
	const typed = text.trim();
	if (typed === "") return null;
	const value = parseDegrees(typed);
	const { least, greatest } = ROOM_ANGLE;
	if (value !== null && value >= least && value <= greatest) return value;
	return `“${typed}” is not an angle of a room: write ${least} to ${greatest} degrees.`;
}
