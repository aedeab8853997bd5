import { propagate } from "@baywright/survey";
import { withPlacesTaken } from "../fitted/already-there.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { bracketRoom } from "../track/bracket-room.ts";
import { placeBrackets } from "../track/brackets.ts";
import { setBacksOf } from "../track/corners.ts";
import { heightOf } from "../track/track-rule.ts";
import { type MayChange, mayChange } from "./may-change.ts";
import type { BaySurvey } from "./settle.ts";
import { roughLength, type SettledTrack, type Standing, type TrackFitter, trackFitter } from "./settled-track.ts";
import { type Around, lookAround, slopesOf } from "./slopes.ts";

/** A figure and how sure the survey makes it. */
export interface SureFigure {
	/** mm */
	readonly value: number;
	/** One standard deviation, mm; ± shown is `AT_95` times as much. */
	readonly sd: number;
	/** Over the columns of the survey's covariance. */
	readonly gradient: Float64Array;
	/** The figure bends just here; the steeper side is taken. */
	readonly uneven: boolean;
}

export interface SureCut extends SureFigure {
	/** Name of the piece. */
	readonly piece: string;
	/** What else may come of a bay within the ± of the survey; null where only lengths do. */
	readonly mayChange: MayChange | null;
}

export interface SureSetBack extends SureFigure {
	readonly corner: number;
	readonly side: "left" | "right";
}

export interface SureBracket {
	readonly bracket: number;
	/** Taped from the corner at its left and at its right; null where it may as well go elsewhere. */
	readonly fromLeftCorner: SureFigure | null;
	readonly fromRightCorner: SureFigure | null;
}

/** How sure everything is that is cut or taped; no set-backs or brackets where other bends may be bent. */
export interface SureFigures {
	readonly cuts: readonly SureCut[];
	readonly setBacks: readonly SureSetBack[];
	readonly brackets: readonly SureBracket[];
}

/** How sure cut lengths, set-backs and tape readings of brackets are; null where no track fits the settled bay. */
export function sureFigures(
	bay: Bay,
	system: TrackSystem,
	survey: BaySurvey,
	fitter = trackFitter(bay, system),
): SureFigures | null {
	const settled = fitter(survey);
	if (settled === null) return null;
	const readingsOf = bracketReader(settled, bay, system);
	const around = tracksAround(settled, survey, fitter, (track) => ({
		cuts: cutLengthsOf(track),
		setBacks: setBackLengthsOf(track),
		brackets: readingsOf(track),
	}));
	const cuts = around && allOf(figuresOf(survey, (figures) => figures.cuts, around));
	if (around === null || cuts === null) return null;
	return {
		cuts: withChanges(cuts, settled, survey, fitter),
		setBacks: withPlaces(
			figuresOf(survey, (figures) => figures.setBacks, around),
			settled,
		),
		brackets: inPairs(figuresOf(survey, (figures) => figures.brackets, around)),
	};
}

/** How sure every cut length is; null where no track fits the settled bay. */
export function sureCuts(
	bay: Bay,
	system: TrackSystem,
	survey: BaySurvey,
	fitter = trackFitter(bay, system),
): SureCut[] | null {
	const settled = fitter(survey);
	const cuts = settled && figuresAround(settled, survey, fitter, cutLengthsOf);
	return settled && cuts && withChanges(cuts, settled, survey, fitter);
}

/** The same without a look at what lies within the ±: enough to choose readings by. */
export function cutFigures(survey: BaySurvey, fitter: TrackFitter): SureFigure[] | null {
	const settled = fitter(survey);
	return settled && figuresAround(settled, survey, fitter, cutLengthsOf);
}

/** Null where a figure is none. */
function figuresAround(
	settled: SettledTrack,
	survey: BaySurvey,
	fitter: TrackFitter,
	figures: (track: SettledTrack) => readonly number[],
): SureFigure[] | null {
	const around = tracksAround(settled, survey, fitter, figures);
	return around && allOf(figuresOf(survey, (values) => values, around));
}

/** What is read off tracks of the same shape and with the same pieces, in the bay as settled and in those beside it. */
function tracksAround<Seen>(
	settled: SettledTrack,
	survey: BaySurvey,
	fitter: TrackFitter,
	read: (track: SettledTrack) => Seen,
): Around<Seen> | null {
	const see = (standing: Standing) => {
		const other = fitter(standing, settled.joints);
		return other === null || other.shape !== settled.shape ? null : read(other);
	};
	return lookAround(see, survey, (column) => canMove(survey, column), read(settled));
}

const cutLengthsOf = ({ pieces }: SettledTrack): readonly number[] => pieces.map(({ cutLength }) => cutLength);

function withChanges(
	cuts: readonly SureFigure[],
	settled: SettledTrack,
	survey: BaySurvey,
	fitter: TrackFitter,
): SureCut[] {
	const changes = mayChange(fitter, settled, survey, cuts);
	return cuts.map((cut, i) => ({ ...cut, piece: settled.pieces[i]?.name as string, mayChange: changes[i] ?? null }));
}

interface SetBack {
	readonly corner: number;
	readonly side: "left" | "right";
	readonly value: number;
}

const eachSetBack = ({ track }: SettledTrack): SetBack[] =>
	setBacksOf(track).flatMap(({ corner, setBack }) =>
		(["left", "right"] as const).flatMap((side, i) => {
			const value = setBack[i];
			return value === null || value === undefined ? [] : [{ corner, side, value }];
		}),
	);

const setBackLengthsOf = (track: SettledTrack): readonly number[] => eachSetBack(track).map(({ value }) => value);

function withPlaces(figures: readonly (SureFigure | null)[], settled: SettledTrack): SureSetBack[] {
	const places = eachSetBack(settled);
	return figures.flatMap((figure, i) => (figure === null ? [] : [{ ...figure, ...(places[i] as SetBack) }]));
}

/**
 * Both tape readings of every bracket of the settled track, in another one. Brackets are set out anew there: the same where there are as many, each
 * of its role and on its wall; null for others.
 */
function bracketReader(
	settled: SettledTrack,
	bay: Bay,
	system: TrackSystem,
): (track: SettledTrack) => readonly (number | null)[] {
	const pinned = withPlacesTaken(bay);
	const height = heightOf(bay);
	const setOut = ({ track, joints }: SettledTrack) =>
		placeBrackets(pinned, system, track, joints, bracketRoom(bay, system, track, height)).brackets;
	const brackets = setOut(settled);
	return (track) => {
		const others = track === settled ? brackets : setOut(track);
		return brackets.flatMap(({ role, wall }, i) => {
			const other = others[i];
			const isSame = others.length === brackets.length && other?.role === role && other.wall === wall;
			return isSame ? [other.fromLeftCorner, other.fromRightCorner] : [null, null];
		});
	};
}

const inPairs = (figures: readonly (SureFigure | null)[]): SureBracket[] =>
	Array.from({ length: figures.length / 2 }, (_, bracket) => ({
		bracket,
		fromLeftCorner: figures[2 * bracket] ?? null,
		fromRightCorner: figures[2 * bracket + 1] ?? null,
	}));

/** What to go by while no track fits, as when the first readings are taken from a poor sketch: about the length of the whole track. */
export function roughFigure(bay: Bay, system: TrackSystem, survey: BaySurvey): SureFigure[] {
	const around = lookAround(
		(standing) => roughLength(bay, system, standing),
		survey,
		(column) => canMove(survey, column),
	);
	return (around && allOf(figuresOf(survey, (length) => [length], around))) ?? [];
}

function figuresOf<Seen>(
	{ covariance }: BaySurvey,
	figures: (seen: Seen) => readonly (number | null)[],
	around: Around<Seen>,
): (SureFigure | null)[] {
	const values = figures(around.now);
	return slopesOf(figures, around).map(
		(slope, i) => slope && { value: values[i] as number, sd: propagate(covariance, slope.gradient), ...slope },
	);
}

const canMove = ({ covariance }: BaySurvey, column: number): boolean => (covariance[column]?.[column] as number) > 0;

/** Null where one of them is. */
const allOf = <Each>(all: readonly (Each | null)[]): Each[] | null => {
	const found = all.filter((each) => each !== null);
	return found.length === all.length ? found : null;
};
