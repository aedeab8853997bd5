import type { Bay, Reading, WallPlace } from "@baywright/setout";
import { kept } from "./on-bay.ts";

/** Where a stretch of wall face has gone: `null` where it is no more. Places in mm along the face from the left corner. */
export interface CarryOver {
	/** A place on a wall, after the change. */
	place(wall: number, at: number): WallPlace | null;
	/** A corner's number after the change; null where it is gone. */
	corner(corner: number): number | null;
	/** A reading after the change; null where it says nothing about the bay any more. */
	reading(reading: Reading): Reading | null;
}

/**
 * Carries everything that stands on walls and corners over a change of the corners: openings, obstacles, stretches without
 * holes, track ends, radii, joints, pins, readings, and what has been fitted. An opening or a stretch
 * without holes that lay across a new corner is on both walls; an obstacle stays on the wall that has most of it. `bay` has the corners and walls of after the change, `before`
 * the ones it is carried from.
 */
export function carryOver(bay: Bay, before: Bay, to: CarryOver): Bay {
	const { track, fitted } = before;
	const walls = bay.walls.map((wall) => ({ ...wall, noDrill: [] as [number, number][] }));
	before.walls.forEach(({ noDrill }, wall) => {
		for (const [from, end] of noDrill) {
			for (const stretch of carryAll(to, { wall, from, to: end }))
				walls[stretch.wall]?.noDrill.push([stretch.from, stretch.to]);
		}
	});
	const placed = <Item extends WallPlace>(items: readonly Item[]): Item[] =>
		items.flatMap((item) => {
			const place = to.place(item.wall, item.at);
			return place === null ? [] : [{ ...item, ...place }];
		});
	const stretched = <Item extends Stretch>(items: readonly Item[], shortestRest: number): Item[] =>
		items.flatMap((item) => {
			const [most, rest] = carryAll(to, item);
			const kept = [most, rest && rest.to - rest.from >= shortestRest ? rest : undefined];
			return kept
				.filter((part) => part !== undefined)
				.sort((a, b) => a.wall - b.wall)
				.map((part) => ({ ...item, ...part }));
		});
	const end = (place: WallPlace | null) => (place === null ? null : to.place(place.wall, place.at));
	const joints = typeof track.joints === "string" ? track.joints : placed(track.joints);
	const gone = track.joints.length > 0 && joints.length === 0;
	return {
		...bay,
		walls,
		readings: before.readings.flatMap((reading) => to.reading(reading) ?? []),
		openings: stretched(before.openings, NARROWEST_GLASS),
		obstacles: stretched(before.obstacles, Number.POSITIVE_INFINITY),
		track: {
			...track,
			start: end(track.start),
			end: end(track.end),
			bends: track.bends.flatMap((bend) => {
				const corner = to.corner(bend.corner);
				const between = corner !== null && corner > 0 && corner < bay.corners.length - 1;
				return between ? [{ ...bend, corner }] : [];
			}),
			joints: gone ? "auto" : joints,
			brackets: placed(track.brackets),
		},
		fitted: {
			...fitted,
			brackets: fitted.brackets.flatMap((bracket) => {
				const place = to.place(bracket.wall, bracket.at);
				if (place === null) return [];
				const planned = bracket.planned === null ? null : to.place(bracket.wall, bracket.planned);
				return [{ ...bracket, ...place, planned: planned?.wall === place.wall ? planned.at : null }];
			}),
			spans: fitted.spans.flatMap((span) => {
				const from = end(span.from);
				const till = end(span.to);
				return from === null || till === null ? [] : [{ ...span, from, to: till }];
			}),
		},
	};
}

interface Stretch {
	readonly wall: number;
	readonly from: number;
	readonly to: number;
}

/** mm: what is left of an opening beyond a corner is one of its own from here on. */
const NARROWEST_GLASS = 100;

/** mm: no shorter part is left over when a stretch is cut at a corner. */
const SHORTEST = 1;

/** The stretch on every wall that it now lies on, the one with most of it first. */
function carryAll(to: CarryOver, { wall, from, to: end }: Stretch): readonly Stretch[] {
	const left = to.place(wall, from);
	const right = to.place(wall, end);
	if (left !== null && left.wall === right?.wall) return inOrder(left.wall, left.at, right.at, 0);
	// The rest went to another wall or nowhere: the cut is found by walking towards it.
	const parts = [
		...(left === null ? [] : inOrder(left.wall, left.at, lastOn(to, wall, left.wall, from, end), SHORTEST)),
		...(right === null ? [] : inOrder(right.wall, right.at, lastOn(to, wall, right.wall, end, from), SHORTEST)),
	];
	return parts.sort((a, b) => b.to - b.from - (a.to - a.from));
}

function inOrder(wall: number, a: number, b: number, shortest: number): readonly Stretch[] {
	const [from, to] = a < b ? [a, b] : [b, a];
	return from < to && to - from >= shortest ? [{ wall, from, to }] : [];
}

const HALVINGS = 60;

/** The place on wall `on` furthest from `inside` towards `outside`, of which the first goes there and the second does not. */
function lastOn(to: CarryOver, wall: number, on: number, inside: number, outside: number): number {
	let [good, bad] = [inside, outside];
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (good + bad) / 2;
		if (to.place(wall, middle)?.wall === on) good = middle;
		else bad = middle;
	}
	return kept((to.place(wall, good) as WallPlace).at);
}
