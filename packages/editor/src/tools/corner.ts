import { pointOffFace } from "@baywright/geometry";
import { faceLength, facesOf, nearestOnWalls } from "../edits/faces.ts";
import { insertCorner } from "../edits/insert-corner.ts";
import { onBay } from "../edits/on-bay.ts";
import { cornerGrip } from "../grips/corner.ts";
import type { Held } from "../grips/grip.ts";
import { guidesAt } from "../grips/stretch.ts";
import { snapAlong, stopsOn } from "../snap/along.ts";
import type { Locus } from "../snap/locus.ts";
import { type Answer, bayOf, NO_SKETCH, type Tool, type Touch, type World } from "./tool.ts";

export type CornerState =
	| { readonly is: "idle"; readonly over: Touch | null }
	| { readonly is: "pulling"; readonly held: Held; readonly guides: readonly Locus[] };

/** Puts a corner into the wall that is tapped; or pulls one out of it, if it is dragged. */
export const cornerTool: Tool<CornerState> = {
	start: { is: "idle", over: null },
	dragsAnywhere: true,
	on(state, event, world): Answer<CornerState> {
		if (state.is === "pulling") {
			switch (event.type) {
				case "drag": {
					const moved = cornerGrip.move(state.held, event.touch.at, event.touch.reach);
					return { state: { ...state, guides: moved.guides }, preview: moved.job };
				}
				case "drop":
					return { state: { is: "idle", over: null }, commit: { label: "put in a corner" } };
				case "cancel":
					return { state: { is: "idle", over: null }, rollBack: true, select: null };
				default:
					return { state, taken: false };
			}
		}
		switch (event.type) {
			case "hover":
				return { state: { is: "idle", over: event.touch } };
			case "tap": {
				const put = putIn(world, event.touch);
				if (put === null) return { state, say: NO_ROOM };
				return {
					// The wall that was pointed at is two now.
					state: { is: "idle", over: null },
					commit: { label: "put in a corner", job: put.job },
					select: { kind: "corner", index: put.corner },
				};
			}
			case "grab": {
				const put = putIn(world, event.touch);
				if (put === null) return { state, say: NO_ROOM };
				const target = { kind: "corner", index: put.corner } as const;
				const held: Held = { target, job: put.job, bay: world.bay, plan: world.plan, from: event.touch.at };
				return { state: { is: "pulling", held, guides: [] }, preview: put.job, select: target };
			}
			default:
				return { state, taken: false };
		}
	},
	sketch(state, world) {
		if (state.is === "pulling") return { ...NO_SKETCH, guides: state.guides };
		const spot = state.over === null ? null : spotOn(world, state.over);
		return spot === null ? null : { ...NO_SKETCH, guides: spot.guides, points: [spot.point] };
	},
};

const NO_ROOM = "Tap or pull a wall, away from its corners: a new corner comes there.";

function putIn(world: World, touch: Touch) {
	const spot = spotOn(world, touch);
	if (spot === null) return null;
	const job = onBay(world.job, world.bay, (bay) => insertCorner(bay, spot.wall, spot.at));
	return job === world.job ? null : { job, corner: spot.wall + 1 };
}

/** Times the reach of things within which a wall is meant. */
const FAR = 4;

/** mm within which a wall is meant where nothing is to draw. */
const NEAR = 60;

function spotOn(world: World, { at, target, reach }: Touch) {
	const bay = bayOf(world);
	const chain = facesOf(bay);
	const near = chain && nearestOnWalls(chain, at);
	if (!chain || !near) return null;
	const meant = target?.kind === "wall" || target?.kind === "bow" || target?.kind === "opening";
	if (!meant && Math.abs(near.off) > Math.max(FAR * reach, NEAR)) return null;
	const drawn = snapAlong([near.at], stopsOn(bay, near.wall, faceLength(chain, near.wall)).slice(2), reach);
	const place = near.at + drawn.by;
	return {
		wall: near.wall,
		at: place,
		point: pointOffFace(chain, near.wall, place, 0),
		guides: guidesAt(chain, near.wall, drawn),
	};
}
