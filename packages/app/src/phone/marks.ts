import type { TrackPath, WallChain, WallFace } from "@baywright/geometry";
import {
	type BayPlan,
	type BracketRole,
	bendsToMake,
	bowsToMake,
	type CableZone,
	type CornerSetOut,
	type OnPiece,
	onPiece,
	type WallPlace,
} from "@baywright/setout";

/** What a tape reads along a wall face, from the corner it is held at, mm. */
export interface TapeReading {
	readonly mm: number;
	readonly corner: number;
}

interface OnWall {
	/** The wall and the place on it, from its left corner: what a tick keeps. */
	readonly place: WallPlace;
	readonly nearer: TapeReading;
	readonly further: TapeReading;
	/** The wall is bowed: the tape follows the curve of the face. */
	readonly curved: boolean;
}

interface Bent {
	/** On the centre line, mm. */
	readonly radius: number;
	/** Length along the curve, mm. */
	readonly sweep: number;
	/** Where it lies on its piece; null where no piece has it. */
	readonly on: OnPiece | null;
}

export interface BracketMark extends OnWall {
	readonly kind: "bracket";
	readonly role: BracketRole;
	/** Wall face to centre line, mm. */
	readonly projection: number;
	/** Wall face to centre line, mm, where it is another than along the rest of the wall; else null. */
	readonly standsOff: number | null;
	/** How far on the bend starts, or how far back it ended, mm along the track; null for a bracket that is not beside one. */
	readonly besideBend: { readonly side: "before" | "after"; readonly mm: number } | null;
	/** Zones of concealed cables that its holes lie in; the wall top not where all do, which is said once. */
	readonly cables: readonly CableZone[];
}

export interface BendMark extends Bent {
	readonly kind: "bend";
	readonly corners: readonly number[];
	/** From its first corner back, and from its last on, along the wall face to where it starts and ends, mm. */
	readonly setBack: CornerSetOut["setBack"];
	/** Each corner's distance to the middle of the bend, mm; past several corners to the track in front of each. */
	readonly gaps: readonly number[];
	/** Half of a reverse bend. */
	readonly reverse: boolean;
}

export interface BowMark extends Bent {
	readonly kind: "bow";
	readonly wall: number;
}

export interface JointMark extends OnWall {
	readonly kind: "joint";
}

/** One thing to mark out, known by the name that its tick is kept under: "bracket-1". */
export type SiteMark = (BracketMark | BendMark | BowMark | JointMark) & {
	readonly name: string;
	/** Its number among its kind, from 1. */
	readonly number: number;
	/** mm along the centre line from the finished left end. */
	readonly station: number;
};

/** Everything to mark out, in the order of the work: along the track from its left end. */
export function marksOf(plan: BayPlan): readonly SiteMark[] {
	const { path, chain } = plan;
	if (path === null || chain === null) return [];
	const marks = [
		...bracketMarks(plan, chain),
		...jointMarks(plan, chain),
		...bendMarks(plan, path),
		...bowMarks(plan, path),
	];
	return marks.sort((a, b) => a.station - b.station || ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
}

/** At one and the same place: what is drilled comes before what is bent. */
const ORDER: readonly SiteMark["kind"][] = ["bracket", "joint", "bend", "bow"];

/** Projections that agree this closely are one to a fitter, mm. */
const SAME_PROJECTION = 0.5;

function bracketMarks(plan: BayPlan, chain: WallChain): SiteMark[] {
	const allNearTop = topOfAll(plan) !== null;
	return plan.brackets.map(({ station, wall, fromLeftCorner, projection, role }, i) => {
		const usual = plan.projections[wall] ?? projection;
		return {
			kind: "bracket",
			name: `bracket-${i + 1}`,
			number: i + 1,
			station,
			...onWall(chain, { wall, at: fromLeftCorner }),
			role,
			projection,
			standsOff: Math.abs(projection - usual) < SAME_PROJECTION ? null : projection,
			besideBend: besideBend(plan, i),
			cables: (plan.fixings[i]?.zones ?? []).filter(({ kind }) => !(allNearTop && kind === "wall-top")),
		};
	});
}

/** The zone at the top of the wall, where every hole of a plan lies in it; else null. */
export function topOfAll({ fixings }: BayPlan): CableZone | null {
	const tops = fixings.map(({ zones }) => zones.find(({ kind }) => kind === "wall-top"));
	return tops.includes(undefined) ? null : (tops[0] ?? null);
}

/** The bend that runs on from a bracket, or up to it, with no other bracket between. */
function besideBend({ path, brackets }: BayPlan, index: number): BracketMark["besideBend"] {
	const at = brackets[index]?.station ?? 0;
	const before = brackets[index - 1]?.station ?? Number.NEGATIVE_INFINITY;
	const next = brackets[index + 1]?.station ?? Number.POSITIVE_INFINITY;
	const bends = (path?.segments ?? []).filter((segment) => segment.kind === "bend" && !segment.sprung);
	const on = bends.find(({ start }) => start >= at && start < next);
	if (on !== undefined) return { side: "before", mm: on.start - at };
	const back = bends.findLast(({ start, length }) => start + length <= at && start + length > before);
	return back === undefined ? null : { side: "after", mm: at - back.start - back.length };
}

function jointMarks(plan: BayPlan, chain: WallChain): SiteMark[] {
	return plan.joints.map(({ station, wall, at }, i) => ({
		kind: "joint",
		name: `joint-${i + 1}`,
		number: i + 1,
		station,
		...onWall(chain, { wall, at }),
	}));
}

function onWall({ walls }: WallChain, place: WallPlace): OnWall {
	const { faceLength, bow } = walls[place.wall] as WallFace;
	const left = { mm: place.at, corner: place.wall };
	const right = { mm: faceLength - place.at, corner: place.wall + 1 };
	const [nearer, further] = left.mm <= right.mm ? [left, right] : [right, left];
	return { place, nearer, further, curved: bow !== null };
}

function bendMarks(plan: BayPlan, path: TrackPath): SiteMark[] {
	return bendsToMake(path).map((bend, i) => {
		const { start, length, radius, corners, reverse } = bend;
		const sets = plan.corners.filter(({ corner }) => corners.includes(corner));
		return {
			kind: "bend",
			name: `bend-${i + 1}`,
			number: i + 1,
			station: start,
			radius,
			sweep: length,
			on: onPiece(bend, plan.pieces, plan.system),
			corners,
			setBack: [sets[0]?.setBack[0] ?? null, sets.at(-1)?.setBack[1] ?? null],
			gaps: sets.map(({ cornerGap }) => cornerGap),
			reverse,
		};
	});
}

function bowMarks({ pieces, system }: BayPlan, path: TrackPath): SiteMark[] {
	return bowsToMake(path).map((bow, i) => ({
		kind: "bow",
		name: `bow-${i + 1}`,
		number: i + 1,
		station: bow.start,
		radius: bow.radius,
		sweep: bow.length,
		on: onPiece(bow, pieces, system),
		wall: bow.wall,
	}));
}
