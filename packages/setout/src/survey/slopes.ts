import type { Point } from "@baywright/geometry";
import type { Standing } from "./settled-track.ts";

/** How a figure changes with x and y of every corner in turn, then with the rises: over the columns of a survey's covariance. */
export interface Slope {
	readonly gradient: Float64Array;
	/** It bends just here, a leg fills up for one: the steeper side is given. */
	readonly uneven: boolean;
}

/** Differences are taken this far either side, mm: far above rounding, far below what any figure bends within. */
const STEP = 0.05;

/** Slopes either side that differ by more than this (mm a mm) belong to a figure that bends just here. */
const UNEVEN = 0.02;

/**
 * Slopes of several figures by differences to both sides, so that whatever the figures come through takes part: sharing of radii, bridged
 * facets, bows, joints. Figures are null where there are none (nothing fits, or a track of another shape); then the other side alone
 * counts. Columns that cannot move (`moves`) have no slope. Null where a figure has none on either side.
 */
export function slopesOf(
	figures: (standing: Standing) => readonly number[] | null,
	standing: Standing,
	moves: (column: number) => boolean,
): readonly Slope[] | null {
	const now = figures(standing);
	if (now === null) return null;
	const columns = 2 * standing.corners.length + standing.rises.length;
	const slopes = now.map(() => ({ gradient: new Float64Array(columns), uneven: false }));
	for (let column = 0; column < columns; column++) {
		if (!moves(column)) continue;
		const ahead = figures(moved(standing, column, STEP));
		const behind = figures(moved(standing, column, -STEP));
		if (ahead === null && behind === null) return null;
		slopes.forEach((slope, i) => {
			const onwards = ahead === null ? null : ((ahead[i] as number) - (now[i] as number)) / STEP;
			const backwards = behind === null ? null : ((now[i] as number) - (behind[i] as number)) / STEP;
			const [one, other] = [onwards ?? (backwards as number), backwards ?? (onwards as number)];
			if (Math.abs(one - other) <= UNEVEN) slope.gradient[column] = (one + other) / 2;
			else {
				slope.uneven = true;
				slope.gradient[column] = Math.abs(one) > Math.abs(other) ? one : other;
			}
		});
	}
	return slopes;
}

/** One x, y or rise further on. */
function moved(standing: Standing, column: number, by: number): Standing {
	const { corners, rises } = standing;
	const corner = column >> 1;
	if (corner < corners.length) {
		const { x, y } = corners[corner] as Point;
		return { corners: corners.with(corner, column % 2 === 0 ? { x: x + by, y } : { x, y: y + by }), rises };
	}
	const wall = column - 2 * corners.length;
	return { corners, rises: rises.with(wall, (rises[wall] as number) + by) };
}

/** Everything moved at once, a step a column. */
export function movedBy({ corners, rises }: Standing, steps: ArrayLike<number>): Standing {
	const step = (column: number) => steps[column] as number;
	return {
		corners: corners.map(({ x, y }, i) => ({ x: x + step(2 * i), y: y + step(2 * i + 1) })),
		rises: rises.map((rise, wall) => rise + step(2 * corners.length + wall)),
	};
}
