import type { Bay } from "@baywright/setout";
import { typedWall } from "../edits/append-wall.ts";
import { addCorner, type ChainEnd, pivotOf } from "../edits/chain.ts";
import { levelWall } from "../edits/level.ts";
import { onBay } from "../edits/on-bay.ts";
import { middleWall } from "../edits/runs.ts";
import { isInsideOut, otherSide } from "../edits/turn-over.ts";
import { nextWall, troubleIn } from "./next-wall.ts";
import { type Answer, bayOf, type Sketch, type Tool, type Touch, type World } from "./tool.ts";
import { endOf, hasTyped, type WallsState } from "./walls-state.ts";

const START: WallsState = {
	end: null,
	over: null,
	heading: null,
	field: "run",
	run: "",
	angle: "",
	pressed: null,
	steps: [],
	sideIsOpen: false,
	typed: true,
};

/**
 * Draws walls as a bay is taped: point and tap, or point and type a run; Enter places it, Tab goes to the angle and back.
 * On an empty sheet the first tap is the first corner; otherwise drawing goes on from the nearer end of the bay.
 */
export const wallsTool: Tool<WallsState> = {
	start: START,
	dragsAnywhere: true,
	on(state, event, world): Answer<WallsState> {
		switch (event.type) {
			case "hover":
				return { state: event.touch === null ? { ...state, over: null } : pointed(state, event.touch, world) };
			case "grab":
				return { state: { ...pointed(state, event.touch, world), pressed: event.touch } };
			case "drag":
				return { state: pointed(state, event.touch, world) };
			case "drop": {
				const placed = place(state, world);
				return { ...placed, state: { ...placed.state, pressed: null } };
			}
			case "tap": {
				const now = pointed(state, event.touch, world);
				return now.steps.length > 0 && isOnPivot(now, world) ? finish(now, world) : place(now, world);
			}
			case "double-tap":
				return finish(state, world);
			case "point":
				return { state: { ...state, heading: event.heading, end: state.end ?? "right" } };
			case "type":
				return { state: { ...state, [state.field]: state[state.field] + event.text, end: endOf(state, world) } };
			case "entry":
				return { state: { ...state, field: event.field, [event.field]: event.text, end: endOf(state, world) } };
			case "next-field": {
				const field = state.field === "run" && hasAngle(state, world) ? "angle" : "run";
				return { state: { ...state, field } };
			}
			case "enter":
				return hasTyped(state) || state.heading !== null ? place(state, world) : finish(state, world);
			case "erase":
				return erase(state);
			case "cancel":
				if (state.pressed !== null) return { state: { ...state, pressed: null, over: null } };
				return hasTyped(state) ? { state: { ...state, run: "", angle: "", field: "run" } } : finish(state, world);
		}
	},
	sketch(state, world): Sketch | null {
		const next = nextWall(state, world);
		if (next === null) return null;
		const from = next.from ?? pivotOf(bayOf(world), endOf(state, world))?.at;
		if (from === undefined) return { guides: [], lines: [], points: [next.at], figures: [] };
		return {
			guides: next.guides,
			lines: [{ from, to: next.at, kind: "wall", length: next.run }],
			points: [next.at],
			figures: [
				{ name: "run", kind: "length", mm: next.run },
				...(next.angle === null ? [] : [{ name: "angle", kind: "angle", degrees: next.angle } as const]),
			],
		};
	},
	entry: (state, world) => ({
		field: state.field,
		run: state.run,
		angle: state.angle,
		trouble: nextWall(state, world)?.trouble ?? troubleIn(state, world),
		hasAngle: hasAngle(state, world),
	}),
};

const pointed = (state: WallsState, over: Touch, world: World): WallsState => ({
	...state,
	over,
	heading: null,
	end: state.steps.length > 0 || hasTyped(state) ? endOf(state, world) : null,
});

/** The first wall makes no angle with anything. */
const hasAngle = (state: WallsState, world: World): boolean =>
	pivotOf(bayOf(world), endOf(state, world))?.beyond != null;

function isOnPivot(state: WallsState, world: World): boolean {
	const pivot = pivotOf(bayOf(world), endOf(state, world));
	const at = state.over?.at;
	if (pivot === null || at === undefined) return false;
	return Math.hypot(at.x - pivot.at.x, at.y - pivot.at.y) < Math.max(state.over?.reach ?? 0, SLIP);
}

/** mm: two taps as near as this are on the same corner. */
const SLIP = 5;

function place(state: WallsState, world: World): Answer<WallsState> {
	const bay = bayOf(world);
	const next = nextWall(state, world);
	const trouble = next?.trouble ?? troubleIn(state, world);
	if (trouble !== "") return { state, say: trouble };
	if (next === null) return { state, say: "Point where the wall goes, or use an arrow key, then type its run." };
	const end = endOf(state, world);
	// Typed without a first corner: the bay starts where the sheet does.
	const started = next.from === null ? bay : addCorner(bay, end, [next.from.x, next.from.y]);
	const grown = typedWall(addCorner(started, end, [next.at.x, next.at.y]), end, next.typedRun, next.typedAngle);
	// A typed angle is a room angle: it tells the side.
	const sideIsOpen = (state.sideIsOpen || bay.corners.length < 2) && state.angle === "";
	const turned = sideIsOpen ? roomInside(grown, end) : { bay: grown, end };
	const isFirst = grown.corners.length === 1;
	const typed = state.typed && state.run !== "" && (bay.corners.length < 2 || state.angle !== "");
	return {
		state: { ...START, end: turned.end, over: state.over, steps: [...state.steps, end], sideIsOpen, typed },
		commit: { label: isFirst ? "start a bay" : "draw a wall", job: onBay(world.job, world.bay, () => turned.bay) },
		select: null,
		...(isFirst ? { say: "Point where the first wall goes, and tap or type its run." } : {}),
	};
}

/** A bay drawn from right to left round its room is turned round, so that the room stays on its inside. */
function roomInside(bay: Bay, end: ChainEnd): { readonly bay: Bay; readonly end: ChainEnd } {
	const [first, last] = [bay.corners[0], bay.corners.at(-1)];
	if (!first || !last || last[0] >= first[0] || !isInsideOut(bay.corners)) return { bay, end };
	return { bay: otherSide(bay, null), end: end === "right" ? "left" : "right" };
}

function erase(state: WallsState): Answer<WallsState> {
	const typed = state[state.field];
	if (typed !== "") return { state: { ...state, [state.field]: typed.slice(0, -1) } };
	if (state.field === "angle") return { state: { ...state, field: "run" } };
	const end = state.steps.at(-1);
	if (end === undefined) return { state, taken: false };
	return { state: { ...state, end, steps: state.steps.slice(0, -1) }, undo: true };
}

/** A bay that was typed from its first wall to its last is turned so that its front lies level. */
function finish({ typed, steps }: WallsState, world: World): Answer<WallsState> {
	const bay = bayOf(world);
	const whole = typed && bay.walls.length > 1 && steps.length === bay.walls.length;
	const level = whole ? onBay(world.job, world.bay, (it) => levelWall(it, middleWall(it.corners))) : world.job;
	const ended = { state: START, tool: "select" } as const;
	return level === world.job ? ended : { ...ended, commit: { label: "turn the front level", job: level } };
}
