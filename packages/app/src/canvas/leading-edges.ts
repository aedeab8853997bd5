import { type ScreenPoint, toPlan, toScreen } from "@baywright/editor";
import { nearestStation, pointAt, step } from "@baywright/geometry";
import { hangingNow, type Opened } from "../desk/opened.ts";
import type { EdgeHandle } from "./edge-hand.ts";
import type { Scene } from "./scene.ts";

/** px that a handle stands off the track into the room, and back from its edge over its own curtain: a pair's do not lie on one another. */
const OFF_TRACK = 17;
const BACK = 9;

/** The handles of the curtains' leading edges on the plan, one for each that can be drawn. */
export function leadingEdges({ plan, view }: Pick<Scene, "plan" | "view">, now: Opened): EdgeHandle[] {
	const { path, curtains } = plan;
	if (path === null) return [];
	return hangingNow(plan, now).flatMap((hanging, curtain) => {
		const place = pointAt(path, hanging.leading);
		const side = curtains[curtain]?.side;
		if (place === null || side === undefined) return [];
		const ux = Math.cos(place.heading);
		const uy = Math.sin(place.heading);
		const back = ((side === "left" ? -1 : 1) * BACK) / view.scale;
		const at = step(place.at, ux, uy, back, OFF_TRACK / view.scale);
		return [{ curtain, edge: toScreen(view, place.at), at: toScreen(view, at), turn: Math.atan2(-uy, ux) }];
	});
}

/** The station of the track that lies nearest to a place on screen. */
export function stationUnder({ plan, view }: Pick<Scene, "plan" | "view">, at: ScreenPoint): number | null {
	return plan.path === null ? null : (nearestStation(plan.path, toPlan(view, at))?.station ?? null);
}
