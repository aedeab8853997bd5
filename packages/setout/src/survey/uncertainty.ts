import { propagate } from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { cornersOf } from "../track/corners.ts";
import { type MayChange, mayChange } from "./may-change.ts";
import type { BaySurvey } from "./settle.ts";
import { roughLength, type SettledTrack, type Standing, type TrackFitter, trackFitter } from "./settled-track.ts";
import { type Slope, slopesOf } from "./slopes.ts";

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

/** How sure every cut length is; null where no track fits the settled bay. */
export function sureCuts(
	bay: Bay,
	system: TrackSystem,
	survey: BaySurvey,
	fitter = trackFitter(bay, system),
): SureCut[] | null {
	const settled = fitter(survey);
	if (settled === null) return null;
	const cuts = figuresOf(survey, cutLengthsLike(fitter, settled));
	if (cuts === null) return null;
	const changes = mayChange(fitter, settled, survey, cuts);
	return cuts.map((cut, i) => ({ ...cut, piece: settled.pieces[i]?.name as string, mayChange: changes[i] ?? null }));
}

/** The same without a look at what lies within the ±: enough to choose readings by. */
export function cutFigures(survey: BaySurvey, fitter: TrackFitter): SureFigure[] | null {
	const settled = fitter(survey);
	return settled && figuresOf(survey, cutLengthsLike(fitter, settled));
}

/** How sure every set-back is, from its corner along the wall face to where the bend starts; null where no track fits. */
export function sureSetBacks(bay: Bay, system: TrackSystem, survey: BaySurvey): SureSetBack[] | null {
	const fitter = trackFitter(bay, system);
	const settled = fitter(survey);
	if (settled === null) return null;
	const places = setBacksOf(settled);
	const figures = figuresOf(survey, (standing) => {
		const other = fitter(standing, settled.joints);
		return other === null || other.shape !== settled.shape ? null : setBacksOf(other).map(({ value }) => value);
	});
	return figures?.map((figure, i) => ({ ...figure, ...(places[i] as (typeof places)[number]) })) ?? null;
}

const setBacksOf = ({ track }: SettledTrack) =>
	cornersOf(track).flatMap(({ corner, setBack }) =>
		(["left", "right"] as const).flatMap((side, i) => {
			const value = setBack[i];
			return value === null || value === undefined ? [] : [{ corner, side, value }];
		}),
	);

/** What to go by while no track fits, as when the first readings are taken from a poor sketch: about the length of the whole track. */
export function roughFigure(bay: Bay, system: TrackSystem, survey: BaySurvey): SureFigure[] {
	return figuresOf(survey, (standing) => [roughLength(bay, system, standing)]) ?? [];
}

/** Cut lengths of the same pieces of a track of the same shape, in a bay that stands a little otherwise. */
const cutLengthsLike = (fitter: TrackFitter, { joints, shape }: SettledTrack) => {
	return (standing: Standing): number[] | null => {
		const other = fitter(standing, joints);
		return other === null || other.shape !== shape ? null : other.pieces.map(({ cutLength }) => cutLength);
	};
};

function figuresOf(survey: BaySurvey, measure: (standing: Standing) => readonly number[] | null): SureFigure[] | null {
	const { covariance } = survey;
	const values = measure(survey);
	const slopes = slopesOf(measure, survey, (column) => (covariance[column]?.[column] as number) > 0);
	if (values === null || slopes === null) return null;
	return slopes.map(({ gradient, uneven }: Slope, i) => ({
		value: values[i] as number,
		sd: propagate(covariance, gradient),
		gradient,
		uneven,
	}));
}
