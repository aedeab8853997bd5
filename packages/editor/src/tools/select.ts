import { footOnFace } from "@baywright/geometry";
import { facesOf } from "../edits/faces.ts";
import { insertCorner } from "../edits/insert-corner.ts";
import { onBay } from "../edits/on-bay.ts";
import type { Held } from "../grips/grip.ts";
import { gripOf, isGrip } from "../grips/grips.ts";
import type { Selection, Target } from "../selection.ts";
import type { Locus } from "../snap/locus.ts";
import { type Answer, bayOf, NO_SKETCH, type Tool } from "./tool.ts";

export type SelectState =
	| { readonly is: "idle" }
	| { readonly is: "dragging"; readonly held: Held; readonly guides: readonly Locus[] };

const IDLE: SelectState = { is: "idle" };

/** Chooses what is tapped, and moves what is dragged. */
export const selectTool: Tool<SelectState> = {
	start: IDLE,
	dragsAnywhere: false,
	on(state, event, world): Answer<SelectState> {
		if (state.is === "dragging") {
			switch (event.type) {
				case "drag": {
					const { target } = state.held;
					if (!isGrip(target)) return { state };
					const moved = gripOf(target.kind).move(state.held, event.touch.at, event.touch.reach);
					return { state: { ...state, guides: moved.guides }, preview: moved.job };
				}
				case "drop": {
					const { target } = state.held;
					return isGrip(target)
						? { state: IDLE, commit: { label: gripOf(target.kind).label(state.held) } }
						: { state: IDLE, rollBack: true };
				}
				case "cancel":
					return { state: IDLE, rollBack: true };
				default:
					return { state, taken: false };
			}
		}
		switch (event.type) {
			case "tap":
				return { state, select: event.touch.target === null ? null : thing(event.touch.target) };
			case "double-tap": {
				const { target, at } = event.touch;
				if (target?.kind !== "wall") return { state, taken: false };
				const chain = facesOf(bayOf(world));
				if (!chain?.walls[target.index]) return { state, taken: false };
				const place = Math.round(footOnFace(chain, target.index, at).at);
				const job = onBay(world.job, world.bay, (bay) => insertCorner(bay, target.index, place));
				if (job === world.job) return { state, say: "No room for another corner there." };
				return {
					state,
					commit: { label: "put in a corner", job },
					select: { kind: "corner", index: target.index + 1 },
				};
			}
			case "grab": {
				const { target, at } = event.touch;
				if (target === null || !isGrip(target)) return { state, taken: false };
				const { job, bay, plan } = world;
				return {
					state: { is: "dragging", held: { target, job, bay, plan, from: at }, guides: [] },
					select: thing(target),
				};
			}
			default:
				return { state, taken: false };
		}
	},
	sketch: (state) =>
		state.is === "dragging" && state.guides.length > 0 ? { ...NO_SKETCH, guides: state.guides } : null,
};

/** Without the part that was taken hold of. */
const thing = ({ kind, index, wall }: Target): Selection =>
	wall === undefined ? { kind, index } : { kind, index, wall };
