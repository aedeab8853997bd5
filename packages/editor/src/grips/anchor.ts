import { type Point, pointAt, pointOffFace } from "@baywright/geometry";
import type { Bay, BayPlan } from "@baywright/setout";
import { facesOf } from "../edits/faces.ts";
import { jointPlaces } from "../edits/on-track.ts";
import type { Target } from "../selection.ts";

/** The place of a thing that goes where it is moved, mm in the plan; null for what is not there. */
export function anchorOf({ kind, index, wall = 0, part }: Target, bay: Bay, plan: BayPlan): Point | null {
	const chain = plan.chain ?? facesOf(bay);
	const onFace = (on: number, at: number) => (chain?.walls[on] ? pointOffFace(chain, on, at, 0) : null);
	const inStretch = (on: number, from: number, to: number) =>
		onFace(on, part === "left" ? from : part === "right" ? to : (from + to) / 2);
	switch (kind) {
		case "corner": {
			const at = bay.corners[index];
			return at === undefined ? null : { x: at[0], y: at[1] };
		}
		case "wall":
		case "bow":
			return onFace(index, (chain?.walls[index]?.faceLength ?? 0) / 2);
		case "opening":
		case "obstacle": {
			const it = kind === "opening" ? bay.openings[index] : bay.obstacles[index];
			return it === undefined ? null : inStretch(it.wall, it.from, it.to);
		}
		case "no-drill": {
			const [from, to] = bay.walls[wall]?.noDrill[index] ?? [];
			return from === undefined || to === undefined ? null : inStretch(wall, from, to);
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
