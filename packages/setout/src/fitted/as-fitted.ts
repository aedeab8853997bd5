import type { FittedTrack } from "@baywright/geometry";
import type { Bracket, Piece } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { projectionsPlanned } from "../track/track-rule.ts";
import { type FittedProjection, fittedProjections } from "./already-there.ts";

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
	/** `short-in-play`: too short, but the ends may stand further in by as much. */
	readonly verdict: "fits" | "long" | "short-in-play" | "too-short";
	/** How far each free end may stand further in while its last bracket still holds the track; 0 at a joint. */
	readonly play: { readonly left: number; readonly right: number };
	/** One standard deviation of the needed length from the survey; null while nothing is taped, and in a plan made in haste. */
	readonly sd: number | null;
}

/** A length that is out by no more (mm) is as good as cut to the figure: what a saw and a tape do between them (common practice, no source). */
const SAWN_TO = 2;

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
			return piece === undefined ? [] : [checked(index, length, piece, playOf(piece, system, track, brackets))];
		}),
	};
}

function checked(index: number, cut: number, piece: Piece, play: CutPiece["play"]): CutPiece {
	const over = cut - piece.cutLength;
	const verdict =
		Math.abs(over) <= SAWN_TO
			? "fits"
			: over > 0
				? "long"
				: -over <= play.left + play.right
					? "short-in-play"
					: "too-short";
	return { index, piece: piece.name, cut, needed: piece.cutLength, verdict, play, sd: piece.sd };
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
