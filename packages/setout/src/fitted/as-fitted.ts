import type { FittedTrack } from "@baywright/geometry";
import type { Bracket, Piece } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { projectionsPlanned } from "../track/track-rule.ts";
import { type FittedProjection, fittedProjections } from "./already-there.ts";
import { type BendOfPiece, type BentPiece, bendsOfPiece, bentPiece } from "./bent-piece.ts";

/** What is already on the wall and already cut, held against the plan that goes round it. Lengths mm. */
export interface AsFitted {
	/** In the order they were entered. */
	readonly brackets: readonly BracketAsFitted[];
	/** Walls along which the track runs as its brackets really stand off. */
	readonly walls: readonly (FittedProjection & { readonly planned: number })[];
	readonly cut: readonly CutPiece[];
}

export interface BracketAsFitted {
	readonly wall: number;
	readonly at: number;
	/** How far right of its planned place it is; null where the plan had none. */
	readonly off: number | null;
	/** How much further off the wall than planned; null where that was not measured. */
	readonly further: number | null;
}

/** A piece that is cut already, against what the plan needs now. Lengths mm. */
export interface CutPiece {
	/** Its place in `fitted.cut`. */
	readonly index: number;
	readonly piece: string;
	readonly cut: number;
	readonly needed: number;
	/** `short-in-play`: too short, but the ends may stand further in by as much; `bends-apart`: its bends are not as far apart as is needed. */
	readonly verdict: "fits" | "long" | "short-in-play" | "too-short" | "bends-apart";
	/** How far each free end may stand further in while its last bracket still holds the track; 0 at a joint. */
	readonly play: { readonly left: number; readonly right: number };
	/** From its left end. */
	readonly bends: readonly BendOfPiece[];
	/** What it has too much on either side of the bends made; null where none is, or not known where. */
	readonly bent: BentPiece | null;
	/** One standard deviation of the needed length from the survey; null while nothing is taped, and in a plan made in haste. */
	readonly sd: number | null;
}

/** A length that is out by no more (mm) is as good as cut to the figure: what a saw and a tape do between them (common practice, no source). */
export const SAWN_TO = 2;

/** What was entered as fitted or cut, held against the plan; null where nothing was. */
export function asFitted(
	bay: Bay,
	system: TrackSystem,
	track: FittedTrack,
	brackets: readonly Bracket[],
	pieces: readonly Piece[],
): AsFitted | null {
	const { fitted } = bay;
	if (fitted.brackets.length + fitted.spans.length + fitted.cut.length === 0) return null;
	const planned = projectionsPlanned(bay, system);
	return {
		brackets: fitted.brackets.map(({ wall, at, planned: place, projection }) => ({
			wall,
			at,
			off: place === null ? null : at - place,
			further: projection === null ? null : projection - (planned[wall] as number),
		})),
		walls: fittedProjections(fitted, bay.walls.length).map((each) => ({
			...each,
			planned: planned[each.wall] as number,
		})),
		cut: fitted.cut.flatMap(({ piece: name, length }, index) => {
			const piece = pieces.find((each) => each.name === name);
			if (piece === undefined) return [];
			const play = playOf(piece, system, track, brackets);
			const bends = bendsOfPiece(piece, pieces, track.path, system, fitted);
			return [checked(index, length, piece, play, bends)];
		}),
	};
}

function checked(
	index: number,
	cut: number,
	{ name, cutLength, sd }: Piece,
	play: CutPiece["play"],
	bends: readonly BendOfPiece[],
): CutPiece {
	const bent = bentPiece(bends, cut, cutLength);
	const verdict = bent === null ? lengthVerdict(cut - cutLength, play) : bentVerdict(bent, play);
	return { index, piece: name, cut, needed: cutLength, verdict, play, bends, bent, sd };
}

function lengthVerdict(over: number, { left, right }: CutPiece["play"]): CutPiece["verdict"] {
	if (Math.abs(over) <= SAWN_TO) return "fits";
	if (over > 0) return "long";
	return -over <= left + right ? "short-in-play" : "too-short";
}

/** A piece that is bent has to fit on either side of its bends and between them: what one end has too much is of no use at the other. */
function bentVerdict({ left, right, between }: BentPiece, play: CutPiece["play"]): CutPiece["verdict"] {
	if (between !== null && Math.abs(between.by) > SAWN_TO) return "bends-apart";
	if (Math.max(Math.abs(left), Math.abs(right)) <= SAWN_TO) return "fits";
	if (Math.min(left, right) >= -SAWN_TO) return "long";
	const isInPlay = (over: number, give: number) => over >= -SAWN_TO || -over <= give;
	return isInPlay(left, play.left) && isInPlay(right, play.right) ? "short-in-play" : "too-short";
}

/**
 * How much of what was sawn off a piece, now `length` long, came off its left end, mm: where the answer said to saw. Null where
 * that cannot be told, and so neither where its bends are now.
 */
export function sawnAtLeft({ cut, bent }: CutPiece, length: number): number | null {
	const sawn = cut - length;
	if (bent === null || sawn <= 0) return 0;
	const [left, right] = [bent.left, bent.right].map((over) => (over > SAWN_TO ? over : 0)) as [number, number];
	if (left === 0) return sawn <= right + SAWN_TO ? 0 : null;
	if (right === 0) return sawn <= left + SAWN_TO ? sawn : null;
	return Math.abs(sawn - left - right) <= SAWN_TO ? left : null;
}

/** From each free cut end to the near edge of the bracket that must go on holding it. */
function playOf(
	{ from, to }: Piece,
	{ endTakeUp, bracket }: TrackSystem,
	{ path }: FittedTrack,
	brackets: readonly Bracket[],
): CutPiece["play"] {
	const [first, last] = [brackets[0], brackets.at(-1)];
	const toEdge = (gap: number) => Math.max(0, gap - endTakeUp - bracket.width / 2);
	return {
		left: from > 0 || first === undefined ? 0 : toEdge(first.station),
		right: to < path.length || last === undefined ? 0 : toEdge(path.length - last.station),
	};
}

/** The same with what the survey has made of each cut length. */
export const withCutsSure = (fitted: AsFitted | null, pieces: readonly Piece[]): AsFitted | null =>
	fitted && {
		...fitted,
		cut: fitted.cut.map((each) => ({ ...each, sd: pieces.find(({ name }) => name === each.piece)?.sd ?? null })),
	};
