import { type ScreenPoint, toPlan } from "@baywright/editor";
import type { EdgeHandle } from "../canvas/edge-hand.ts";
import { type ElevationScene, onScreen } from "./scene.ts";
import { stationAt } from "./track-run.ts";

/** How far down its curtain a handle stands, and px back over it: a pair's do not lie on one another. */
const DOWN = 0.62;
const BACK = 10;

/** The handles of the curtains' leading edges on the elevation. */
export function edgesOf(scene: ElevationScene | null): EdgeHandle[] {
	if (scene === null) return [];
	const { hanging, heights, plan } = scene;
	const height = heights.track.mm + (heights.hem.mm - heights.track.mm) * DOWN;
	return hanging.flatMap(({ leading }, curtain) => {
		const side = plan.curtains[curtain]?.side;
		if (side === undefined) return [];
		const edge = onScreen(scene, leading, height);
		return [{ curtain, edge, at: { left: edge.left + (side === "left" ? -BACK : BACK), top: edge.top }, turn: 0 }];
	});
}

/** The station of the track that is seen above or below a place on screen. */
export function stationSeen(scene: ElevationScene | null, at: ScreenPoint): number | null {
	if (scene === null || scene.run === null) return null;
	return stationAt(scene.run, toPlan(scene.view, at).x);
}
