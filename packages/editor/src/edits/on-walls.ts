import type { Bay, Obstacle, Opening } from "@baywright/setout";
import type { Selection } from "../selection.ts";
import { faceLength, facesOf } from "./faces.ts";
import { changeAt, kept, withoutAt } from "./on-bay.ts";

/** mm: nothing on a wall is drawn or dragged narrower. */
export const NARROWEST = 10;

/** A stretch along a wall's face, mm from its left corner. */
export interface Stretch {
	readonly wall: number;
	readonly from: number;
	readonly to: number;
}

/** Where a chosen opening, obstacle or stretch without holes lies; null for anything else and for what is not there. */
export function stretchOf(bay: Bay, { kind, index, wall = 0 }: Selection): Stretch | null {
	if (kind === "opening") return bay.openings[index] ?? null;
	if (kind === "obstacle") return bay.obstacles[index] ?? null;
	const noDrill = kind === "no-drill" ? bay.walls[wall]?.noDrill[index] : undefined;
	return noDrill === undefined ? null : { wall, from: noDrill[0], to: noDrill[1] };
}

/** Which part of a stretch is moved: all of it, or one of its ends. */
export type Part = "whole" | "left" | "right";

/** The stretch with a part moved by `by` mm along its wall, of `length` mm: held on the wall and, unless it is so already, no narrower than `NARROWEST`. */
export function slide({ wall, from, to }: Stretch, part: Part, by: number, length: number): Stretch {
	const width = to - from;
	const least = Math.min(NARROWEST, width);
	if (part === "left") return { wall, from: Math.min(Math.max(from + by, 0), to - least), to };
	if (part === "right") return { wall, from, to: Math.max(Math.min(to + by, length), from + least) };
	const start = Math.min(Math.max(from + by, 0), Math.max(0, length - width));
	return { wall, from: start, to: start + width };
}

/** The stretch in tenths of a mm, as near as a tape is read, and no further than its wall of `length` mm goes. */
export function tidy({ wall, from, to }: Stretch, length: number): Stretch {
	const reachesCorner = tenth(to) > length && kept(to) <= kept(length);
	return { wall, from: tenth(from), to: reachesCorner ? kept(length) : tenth(to) };
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0;

/** The stretch on another wall, about the same place of it as far as it has room there; null where it has none. */
export function onto(bay: Bay, { from, to }: Stretch, wall: number, middle: number): Stretch | null {
	const chain = facesOf(bay);
	if (chain === null) return null;
	const length = faceLength(chain, wall);
	const width = to - from;
	if (width > length) return null;
	const start = Math.min(Math.max(middle - width / 2, 0), length - width);
	return { wall, from: start, to: start + width };
}

/** What a window measures above the floor where nobody has said, mm. */
export const USUAL_WINDOW = { sill: 600, head: 2050, sillDepth: 0 } as const;

/** Adds an opening; its heights are those of the opening beside it, or the usual ones. */
export function addOpening(bay: Bay, { wall, from, to }: Stretch): Bay {
	const like = bay.openings.find((it) => it.wall === wall) ?? bay.openings.at(-1);
	const { sill, head, sillDepth } = like ?? USUAL_WINDOW;
	return { ...bay, openings: [...bay.openings, { wall, from, to, sill, head, sillDepth }] };
}

export const removeOpening = (bay: Bay, index: number): Bay => ({ ...bay, openings: withoutAt(bay.openings, index) });

export const setOpening = (bay: Bay, index: number, part: Partial<Opening>): Bay => ({
	...bay,
	openings: changeAt(bay.openings, index, (it) => ({ ...it, ...part })),
});

/** What is usual for each kind of obstacle, mm: width, heights above the floor, depth off the wall. To start from; a tape decides. */
export const USUAL_OBSTACLE: Readonly<
	Record<Obstacle["kind"], Omit<Obstacle, "kind" | "wall" | "from" | "to"> & { readonly width: number }>
> = {
	switch: { width: 86, bottom: 1157, top: 1243, depth: 10 },
	socket: { width: 146, bottom: 450, top: 536, depth: 10 },
	radiator: { width: 1000, bottom: 150, top: 600, depth: 110 },
	handle: { width: 30, bottom: 1000, top: 1120, depth: 50 },
	pipe: { width: 22, bottom: null, top: null, depth: 45 },
	vent: { width: 230, bottom: 2100, top: 2250, depth: 15 },
	sensor: { width: 60, bottom: 2200, top: 2300, depth: 45 },
	lintel: { width: 1500, bottom: 2050, top: 2200, depth: 0 },
	"sealed-unit": { width: 1200, bottom: 600, top: 2050, depth: 0 },
	other: { width: 200, bottom: 1000, top: 1200, depth: 50 },
};

/** Adds an obstacle of the usual size with its middle `middle` mm along a wall; the bay as it was where the wall has no room for it. */
export function addObstacle(bay: Bay, kind: Obstacle["kind"], wall: number, middle: number): Bay {
	const { width, ...rest } = USUAL_OBSTACLE[kind];
	const chain = facesOf(bay);
	if (chain === null) return bay;
	const room = faceLength(chain, wall);
	const stretch = onto(bay, { wall, from: 0, to: Math.min(width, room) }, wall, middle);
	return stretch === null ? bay : { ...bay, obstacles: [...bay.obstacles, { kind, ...rest, ...tidy(stretch, room) }] };
}

export const removeObstacle = (bay: Bay, index: number): Bay => ({
	...bay,
	obstacles: withoutAt(bay.obstacles, index),
});

export const setObstacle = (bay: Bay, index: number, part: Partial<Obstacle>): Bay => ({
	...bay,
	obstacles: changeAt(bay.obstacles, index, (it) => ({ ...it, ...part })),
});

/** Adds a stretch that takes no hole; those that it meets become one with it. */
export function addNoDrill(bay: Bay, { wall, from, to }: Stretch): Bay {
	return onWall(bay, wall, (stretches) => {
		const met = stretches.filter(([a, b]) => a <= to && b >= from);
		const apart = stretches.filter((it) => !met.includes(it));
		const one: readonly [number, number] = [
			Math.min(from, ...met.map(([a]) => a)),
			Math.max(to, ...met.map(([, b]) => b)),
		];
		return [...apart, one].sort((a, b) => a[0] - b[0]);
	});
}

export const removeNoDrill = (bay: Bay, wall: number, index: number): Bay =>
	onWall(bay, wall, (stretches) => withoutAt(stretches, index));

export const setNoDrill = (bay: Bay, wall: number, index: number, from: number, to: number): Bay =>
	onWall(bay, wall, (stretches) => changeAt(stretches, index, () => [from, to] as const));

type Stretches = Bay["walls"][number]["noDrill"];

const onWall = (
	bay: Bay,
	wall: number,
	change: (stretches: Stretches) => readonly (readonly [number, number])[],
): Bay => ({
	...bay,
	walls: changeAt(bay.walls, wall, (it) => ({ ...it, noDrill: change(it.noDrill) as Stretches })),
});
