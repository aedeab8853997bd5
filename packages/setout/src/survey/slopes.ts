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

/** A figure that leaps by so much (mm) on one side, and by so many times as much as on the other, is another figure there: a bracket that goes elsewhere. */
const LEAP = 0.5;
const LEAP_TIMES = 3;

/** What is seen of a bay as it stands, and with each x, y and rise a step further on and back; null where nothing is to be seen, or what cannot move. */
export interface Around<Seen> {
	readonly now: Seen;
	readonly columns: readonly ({ readonly ahead: Seen | null; readonly behind: Seen | null } | null)[];
}

/** Looks at a bay from all sides, once for all figures that are asked of it. Columns that cannot move (`moves`) are left out. */
export function lookAround<Seen>(
	see: (standing: Standing) => Seen | null,
	standing: Standing,
	moves: (column: number) => boolean,
	now: Seen | null = see(standing),
): Around<Seen> | null {
	if (now === null) return null;
	const columns = Array.from({ length: 2 * standing.corners.length + standing.rises.length }, (_, column) =>
		moves(column) ? { ahead: see(moved(standing, column, STEP)), behind: see(moved(standing, column, -STEP)) } : null,
	);
	return { now, columns };
}

/**
 * Slopes of several figures by differences to both sides, so that whatever the figures come through takes part: sharing of radii, bridged
 * facets, bows, joints. A figure is null where there is none (nothing fits, or a track of another shape); then the other side alone counts. What
 * cannot move has no slope. Null for a figure that has none on either side.
 */
export function slopesOf<Seen>(
	figures: (seen: Seen) => readonly (number | null)[],
	{ now, columns }: Around<Seen>,
): readonly (Slope | null)[] {
	const here = figures(now);
	const sides = columns.map((column) => column && { ahead: read(column.ahead), behind: read(column.behind) });
	function read(seen: Seen | null): readonly (number | null)[] {
		return seen === null ? [] : figures(seen);
	}
	return here.map((value, i) => {
		if (value === null) return null;
		const gradient = new Float64Array(columns.length);
		let uneven = false;
		for (const [column, side] of sides.entries()) {
			if (side === null) continue;
			const slope = slopeBetween(value, side.ahead[i] ?? null, side.behind[i] ?? null);
			if (slope === null) return null;
			gradient[column] = slope.value;
			uneven ||= slope.uneven;
		}
		return { gradient, uneven };
	});
}

function slopeBetween(
	now: number,
	ahead: number | null,
	behind: number | null,
): { readonly value: number; readonly uneven: boolean } | null {
	const onwards = ahead === null ? null : (ahead - now) / STEP;
	const backwards = behind === null ? null : (now - behind) / STEP;
	if (onwards === null || backwards === null) {
		const value = onwards ?? backwards;
		return value === null ? null : { value, uneven: false };
	}
	if (leaps(onwards, backwards)) return { value: backwards, uneven: true };
	if (leaps(backwards, onwards)) return { value: onwards, uneven: true };
	if (Math.abs(onwards - backwards) <= UNEVEN) return { value: (onwards + backwards) / 2, uneven: false };
	return { value: Math.abs(onwards) > Math.abs(backwards) ? onwards : backwards, uneven: true };
}

const leaps = (slope: number, other: number): boolean =>
	Math.abs(slope) * STEP > LEAP && Math.abs(slope) > LEAP_TIMES * Math.abs(other);

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
