import type { Remedy } from "../finding/finding.ts";
import type { WallPlace } from "../job/track-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** The changes that remedies make, each as one edit or a few. Lengths whole mm unless they are the user's own. */

const replace = (path: string, value: unknown) => ({ op: "replace", path, value }) as const;

export const setProjection = (projection: number): Remedy => ({
	action: "set-projection",
	figures: { projection },
	change: [replace("/track/projection", projection)],
});

export const drawAsPair: Remedy = {
	action: "draw-as-pair",
	figures: {},
	change: [replace("/track/draw", "pair")],
};

export const setWallProjection = (wall: number, projection: number): Remedy => ({
	action: "set-wall-projection",
	figures: { wall, projection },
	change: [replace(`/walls/${wall}/projection`, projection)],
});

/** On both walls of a corner at once. */
export const setProjectionEitherSide = (corner: number, projection: number): Remedy => ({
	action: "set-projection-either-side",
	figures: { corner, projection },
	change: [corner - 1, corner].map((wall) => replace(`/walls/${wall}/projection`, projection)),
});

/** Gives up every projection that walls have of their own. */
export const sameProjection = (walls: readonly { readonly projection: number | null }[]): Remedy => ({
	action: "same-projection",
	figures: {},
	change: walls.flatMap(({ projection }, wall) =>
		projection === null ? [] : [replace(`/walls/${wall}/projection`, null)],
	),
});

export const setRise = (wall: number, rise: number): Remedy => ({
	action: "set-rise",
	figures: { wall, rise },
	change: [replace(`/walls/${wall}/rise`, rise)],
});

export type TrackEnd = "left" | "right";

const endPath = (end: TrackEnd) => (end === "left" ? "/track/start" : "/track/end");

export const moveEnd = (end: TrackEnd, wall: number, at: number): Remedy => ({
	action: "move-end",
	figures: { end, wall, at },
	change: [replace(endPath(end), { wall, at })],
});

export const endAtCorner = (end: TrackEnd, corner: number, wall: number, at: number): Remedy => ({
	action: "end-at-corner",
	figures: { corner, end },
	change: [replace(endPath(end), { wall, at })],
});

/** One end run to the end of the bay, or both. */
export const toEndOfBay = (...ends: readonly TrackEnd[]): Remedy => ({
	action: "track-to-end-of-bay",
	figures: ends.length === 1 ? { end: ends[0] as TrackEnd } : {},
	change: ends.map((end) => replace(endPath(end), null)),
});

export const swapEnds = ({ start, end }: { readonly start: unknown; readonly end: unknown }): Remedy => ({
	action: "swap-ends",
	figures: {},
	change: [replace("/track/start", end), replace("/track/end", start)],
});

export const follow = (line: "walls" | "smoothest"): Remedy => ({
	action: line === "walls" ? "follow-walls" : "follow-smoothest",
	figures: {},
	change: [replace("/track/follow", line)],
});

/** `index` is the place of the corner's radius in the track's list. */
export const setRadius = (index: number, corner: number, radius: number): Remedy => ({
	action: "set-radius",
	figures: { corner, radius },
	change: [replace(`/track/bends/${index}/radius`, radius)],
});

export const releaseRadius = (index: number, corner: number): Remedy => ({
	action: "release-radius",
	figures: { corner },
	change: [{ op: "remove", path: `/track/bends/${index}` }],
});

/** Two radii at once; their places in the track's list and their corners. */
export const releaseTwoRadii = (indexes: readonly [number, number], corner: number, other: number): Remedy => ({
	action: "release-two-radii",
	figures: { corner, other },
	// The later one first, so that the earlier keeps its place.
	change: indexes.toSorted((a, b) => b - a).map((index) => ({ op: "remove", path: `/track/bends/${index}` })),
});

export const releaseAllRadii: Remedy = {
	action: "release-all-radii",
	figures: {},
	change: [replace("/track/bends", [])],
};

/** The track on another system, with the radii that this one prefers. */
export const onSystem = ({ id, name }: TrackSystem, projection: number | null): Remedy => ({
	action: "use-system",
	figures: { system: name },
	change: [replace("/track/system", id), replace("/track/projection", projection), replace("/track/radius", null)],
});

/** The same at a projection that is neither the present one nor the system's usual one, and so is told. */
export const onSystemAt = (system: TrackSystem, projection: number): Remedy => ({
	...onSystem(system, projection),
	figures: { system: system.name, projection },
});

/** Brackets pinned left to right, and those beside them that are to stay where they are. */
export const pinBrackets = (places: readonly WallPlace[], kept: readonly WallPlace[]): Remedy => {
	const first = places[0] as WallPlace;
	const last = places.at(-1) as WallPlace;
	const several = places.length > 1 ? { last: last.at, lastWall: last.wall } : {};
	return {
		action: "pin-brackets",
		figures: { count: places.length, wall: first.wall, at: first.at, ...several },
		change: [...places, ...kept].map((value) => ({ op: "add", path: "/track/brackets/-", value })),
	};
};

/** One reading left out, or two; spans between brackets are counted on after the bay's readings. Names as in sentences. */
export const leaveOutReadings = (
	bay: { readonly readings: readonly unknown[] },
	indexes: readonly number[],
	[name, other]: readonly string[],
): Remedy => ({
	action: "leave-out-reading",
	figures: { name: name as string, ...(other === undefined ? {} : { other }) },
	change: indexes
		// The later one first, so that the earlier keeps its place.
		.toSorted((a, b) => b - a)
		.map((index) => {
			const span = index - bay.readings.length;
			return { op: "remove", path: span < 0 ? `/readings/${index}` : `/fitted/spans/${span}` } as const;
		}),
});
