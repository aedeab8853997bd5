import { FITS_WITHIN } from "@baywright/setout";

/** Bays whose worst piece is out by `from` to `to` mm; null: by that or more. */
export interface Bar {
	readonly from: number;
	readonly to: number | null;
	readonly bays: number;
	/** Of all bays, 0 to 1. */
	readonly share: number;
	/** Such a piece fits. */
	readonly fits: boolean;
}

/** A histogram by the millimetre as bars; its last count is of all beyond. */
export function barsOf(histogram: readonly number[]): readonly Bar[] {
	const all = histogram.reduce((sum, bays) => sum + bays, 0);
	const last = histogram.length - 1;
	return histogram.map((bays, from) => ({
		from,
		to: from === last ? null : from + 1,
		bays,
		share: all === 0 ? 0 : bays / all,
		fits: from < FITS_WITHIN && from !== last,
	}));
}

/** The top of the scale, 0 to 1: the least of a few plain shares that holds every bar. */
export function scaleTop(bars: readonly Bar[]): number {
	const most = Math.max(0, ...bars.map(({ share }) => share));
	return SCALES.find((top) => most <= top) ?? 1;
}

const SCALES = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1];
