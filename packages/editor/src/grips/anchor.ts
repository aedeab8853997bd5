import { type Point, pointAt, pointOffFace } from "@baywright/geometry";
import type { Bay, BayPlan } from "@baywright/setout";
import { facesOf } from "../edits/faces.ts";
import { jointPlaces } from "../edits/on-track.ts";
import { stretchOf } from "../edits/on-walls.ts";
import type { Target } from "../selection.ts";

/** The place of a thing that goes where it is moved, mm in the plan; null for what is not there. */
export function anchorOf(target: Target, bay: Bay, plan: BayPlan): Point | null {
	const { kind, index, part } = target;
	const chain = plan.chain ?? facesOf(bay);
	const onFace = (on: number, at: number) => (chain?.walls[on] ? pointOffFace(chain, on, at, 0) : null);
	switch (kind) {
		case "corner": {
			const at = bay.corners[index];
			return at === undefined ? null : { x: at[0], y: at[1] };
		}
		case "wall":
		case "bow":
			return onFace(index, (chain?.walls[index]?.faceLength ?? 0) / 2);
		case "opening":
		case "obstacle":
		case "no-drill": {
			const it = stretchOf(bay, target);
			return it && onFace(it.wall, part === "left" ? it.from : part === "right" ? it.to : (it.from + it.to) / 2);
		}
		case "track-end": {
			const { start, end } = bay.track;
			const last = bay.corners.length - 2;
			if (index === 0) return onFace(start?.wall ?? 0, start?.at ?? 0);
			return onFace(end?.wall ?? last, end?.at ?? chain?.walls[last]?.faceLength ?? 0);
		}
		case "bracket": {
			const it = plan.brackets[index];
			return it === undefined ? null : onFace(it.wall, it.fromLeftCorner);
		}
		case "joint": {
			const it = plan.joints[index] ?? jointPlaces(bay, plan)[index];
			return it === undefined ? null : onFace(it.wall, it.at);
		}
		case "bend": {
			const bend = plan.path?.segments.find((it) => it.kind === "bend" && it.corners[0] === index);
			return plan.path && bend ? (pointAt(plan.path, bend.start + bend.length / 2)?.at ?? null) : null;
		}
		default:
			return null;
	}
}
