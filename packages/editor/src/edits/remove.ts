import { type Bay, type BayPlan, cornerName } from "@baywright/setout";
import type { Selection } from "../selection.ts";
import { pinOf, releasePin, removeJoint, setEnd, setRadius } from "./on-track.ts";
import { removeNoDrill, removeObstacle, removeOpening } from "./on-walls.ts";
import { canRemoveCorner, removeCorner } from "./remove-corner.ts";
import { straightened } from "./rise.ts";

/** What taking away a thing comes to: the bay without it and what a history calls that, or why it cannot go. */
export type Removal =
	| { readonly ok: true; readonly bay: Bay; readonly label: string }
	| { readonly ok: false; readonly why: string };

/** Takes away what is chosen; of what the rule puts there (a radius, a bracket, a track end) what the user has set about it. */
export function removeThing(bay: Bay, plan: BayPlan, { kind, index, wall = 0 }: Selection): Removal {
	const done = (label: string, after: Bay): Removal => ({ ok: true, bay: after, label });
	const not = (why: string): Removal => ({ ok: false, why });
	switch (kind) {
		case "corner":
			if (!canRemoveCorner(bay, index)) return not("A bay keeps at least one wall.");
			return done(`remove ${cornerName(index, bay.corners.length - 1)}`, removeCorner(bay, index));
		case "bow": {
			if ((bay.walls[index]?.rise ?? 0) === 0) return not("This wall is straight already.");
			return done("straighten a wall", straightened(bay, index));
		}
		case "opening":
			return done("remove the opening", removeOpening(bay, index));
		case "obstacle":
			return done("remove the obstacle", removeObstacle(bay, index));
		case "no-drill":
			return done("remove the stretch without holes", removeNoDrill(bay, wall, index));
		case "joint":
			return done("remove the joint", removeJoint(bay, plan, index));
		case "bracket": {
			const pin = pinOf(bay, plan, index);
			if (pin === null)
				return not("The rule puts this bracket here: pin it elsewhere, or mark a stretch without holes.");
			return done("release the pin", releasePin(bay, pin));
		}
		case "bend":
			if (!bay.track.bends.some(({ corner }) => corner === index)) return not("This radius is chosen for you already.");
			return done(`radius of corner ${index} left to choose`, setRadius(bay, index, null));
		case "track-end": {
			const end = index === 0 ? "start" : "end";
			if (bay.track[end] === null) return not("The track runs to the end of the bay here.");
			return done("track to the end of the bay", setEnd(bay, end, null));
		}
		case "wall":
			return not("A wall goes with its corners: choose a corner to remove it.");
		case "piece":
		case "reading":
		case "finding":
			return not("This is worked out: it changes with the bay.");
	}
}
