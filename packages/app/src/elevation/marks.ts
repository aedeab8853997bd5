import { type Elevation, type ElevationScene, halfTrackHeight, onScreen } from "./scene.ts";
import { alongOf } from "./unrolled.ts";

/** Something on the track, by its index in the plan; mm along the unrolled faces. */
export interface TrackMark {
	readonly index: number;
	readonly along: number;
}

export const bracketPlaces = ({ plan, unrolled }: Elevation): TrackMark[] =>
	plan.brackets.map(({ wall, fromLeftCorner }, index) => ({ index, along: alongOf(unrolled, wall, fromLeftCorner) }));

export const jointPlaces = ({ plan, unrolled }: Elevation): TrackMark[] =>
	plan.joints.map(({ wall, at }, index) => ({ index, along: alongOf(unrolled, wall, at) }));

/** px from the track down to the row of crosses of a stretch without holes. */
const UNDER_TRACK = 11;

/** Stretches without holes as rows under the track, px; by their wall and their place in its list. */
export function noDrillRows(scene: ElevationScene) {
	const { bay, unrolled, heights } = scene;
	const { top } = onScreen(scene, 0, heights.track.mm);
	return bay.walls.flatMap(({ noDrill }, wall) =>
		noDrill.map(([a, b], index) => ({
			wall,
			index,
			left: onScreen(scene, alongOf(unrolled, wall, Math.min(a, b)), 0).left,
			right: onScreen(scene, alongOf(unrolled, wall, Math.max(a, b)), 0).left,
			top: top + halfTrackHeight(scene) + UNDER_TRACK,
		})),
	);
}
