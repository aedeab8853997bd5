import { distance, type Point } from "@baywright/geometry";
import type { Covariance, Gradient } from "@baywright/survey";
import type { SettledTrack, Standing, TrackFitter } from "./settled-track.ts";
import { movedBy } from "./slopes.ts";

/** Two sides of the normal distribution that hold 95 %: what ± stands for. */
export const AT_95 = 1.96;

/**
 * Within its ± the bay may be one that no track fits, one whose track bends elsewhere, or one whose cut length is off by more or less than
 * its slope says, because a leg is full there.
 */
export type MayChange = "no-fit" | "other-bends" | "uneven-length";

/** A length off from what its slope says by this share of its ±, and by this much (mm), is worth a word. */
const UNEVEN_SHARE = 0.15;
const LEAST_UNEVEN = 0.5;

/**
 * What may change for each piece within the ± of the survey. Looks at the likeliest bays in which a cut length or a run is out by its ±,
 * either way: everything moved along Cg/σ. What decides between two kinds of track is whether a leg has room, and that goes with its run.
 */
export function mayChange(
	fitter: TrackFitter,
	settled: SettledTrack,
	{ covariance, ...standing }: Standing & { readonly covariance: Covariance },
	cuts: readonly { readonly value: number; readonly sd: number; readonly gradient: Gradient }[],
): (MayChange | null)[] {
	const figures = [...cuts.map(({ gradient }) => gradient), ...runSlopes(standing)];
	const probes = figures.flatMap((figure) => {
		const along = covariance.map((row) => dot(row, figure));
		const sd = Math.sqrt(Math.max(0, dot(along, figure)));
		return sd > 0 ? [AT_95, -AT_95].map((reach) => along.map((each) => (each * reach) / sd)) : [];
	});
	const found = cuts.map(() => new Set<MayChange>());
	for (const steps of probes) {
		const other = fitter(movedBy(standing, steps), settled.joints);
		cuts.forEach(({ value, sd, gradient }, piece) => {
			const own = found[piece] as Set<MayChange>;
			if (other === null) own.add("no-fit");
			else if (other.shape !== settled.shape) own.add("other-bends");
			else {
				const off = (other.pieces[piece]?.cutLength ?? value) - value - dot(steps, gradient);
				if (Math.abs(off) > Math.max(LEAST_UNEVEN, UNEVEN_SHARE * AT_95 * sd)) own.add("uneven-length");
			}
		});
	}
	return found.map((own) => GRAVEST_FIRST.find((each) => own.has(each)) ?? null);
}

export const GRAVEST_FIRST: readonly MayChange[] = ["no-fit", "other-bends", "uneven-length"];

function runSlopes({ corners, rises }: Standing): Float64Array[] {
	return rises.map((_, wall) => {
		const [left, right] = [corners[wall] as Point, corners[wall + 1] as Point];
		const run = distance(left, right);
		const [ux, uy] = [(right.x - left.x) / run, (right.y - left.y) / run];
		const slope = new Float64Array(2 * corners.length + rises.length);
		slope.set([-ux, -uy, ux, uy], 2 * wall);
		return slope;
	});
}

function dot(a: ArrayLike<number>, b: Gradient): number {
	let sum = 0;
	for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
	return sum;
}
