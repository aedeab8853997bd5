import type { Bay } from "@baywright/setout";
import { onBay } from "../edits/on-bay.ts";
import { addNoDrill, addOpening, type Stretch, tidy } from "../edits/on-walls.ts";
import type { Selection } from "../selection.ts";
import { between, type Spot, spotOf, stretchSketch } from "./on-wall.ts";
import { type Answer, bayOf, NO_SKETCH, type Tool, type Touch, type World } from "./tool.ts";

export type StretchState =
	| { readonly is: "idle"; readonly over: Touch | null }
	| { readonly is: "drawing"; readonly from: Spot; readonly to: Spot };

/** Draws an opening along the wall from where the drag starts to where it ends; a tap puts one of usual width. */
export const openingTool = stretchTool({
	label: "put in an opening",
	// A window of the usual width, or what a narrow wall leaves with a hand's breadth on either side.
	usual: (length) => Math.min(1200, Math.max(length - 300, length / 2)),
	add: addOpening,
	select: ({ openings }) => ({ kind: "opening", index: openings.length }),
});

/** Marks a stretch of wall that takes no hole. */
export const noDrillTool = stretchTool({
	label: "mark a stretch without holes",
	usual: (length) => Math.min(200, length / 2),
	add: addNoDrill,
	// Stretches that meet become one: the one that was drawn is where its middle lies.
	select: (_, after, { wall, from, to }) => {
		const middle = (from + to) / 2;
		const index = after.walls[wall]?.noDrill.findIndex(([start, end]) => start <= middle && middle <= end) ?? -1;
		return index < 0 ? null : { kind: "no-drill", index, wall };
	},
});

interface StretchKind {
	readonly label: string;
	/** Width (mm) of what a tap puts on a wall of `length` mm. */
	usual(length: number): number;
	add(bay: Bay, stretch: Stretch): Bay;
	/** What is chosen afterwards, from the bay as it was before and as it is then. */
	select(before: Bay, after: Bay, drawn: Stretch): Selection | null;
}

function stretchTool({ label, usual, add, select }: StretchKind): Tool<StretchState> {
	const idle: StretchState = { is: "idle", over: null };
	const put = (world: World, stretch: Stretch, length: number): Answer<StretchState> => {
		const drawn = tidy(stretch, length);
		const before = bayOf(world);
		const after = add(before, drawn);
		return {
			state: idle,
			commit: { label, job: onBay(world.job, world.bay, () => after) },
			select: select(before, after, drawn),
		};
	};
	return {
		start: idle,
		dragsAnywhere: true,
		on(state, event, world): Answer<StretchState> {
			if (state.is === "drawing") {
				if (event.type === "drag")
					return { state: { ...state, to: spotOf(world, event.touch, state.from.wall) ?? state.to } };
				if (event.type === "drop") return put(world, drawnIn(state), state.from.length);
				return event.type === "cancel" ? { state: idle } : { state, taken: false };
			}
			if (event.type === "hover") return { state: { is: "idle", over: event.touch } };
			if (event.type === "tap") {
				const spot = spotOf(world, event.touch);
				return spot === null ? { state, say: NO_WALL } : put(world, aboutSpot(spot, usual), spot.length);
			}
			if (event.type === "grab") {
				const spot = spotOf(world, event.touch);
				return spot === null ? { state, say: NO_WALL } : { state: { is: "drawing", from: spot, to: spot } };
			}
			return { state, taken: false };
		},
		sketch(state, world) {
			if (state.is === "drawing") {
				return stretchSketch(state.from.chain, drawnIn(state), state.to.guides);
			}
			const spot = state.over === null ? null : spotOf(world, state.over);
			if (spot === null) return null;
			return { ...stretchSketch(spot.chain, aboutSpot(spot, usual), spot.guides), figures: NO_SKETCH.figures };
		},
	};
}

const NO_WALL = "Draw a wall first: there is none to put this on.";

const drawnIn = ({ from, to }: StretchState & { readonly is: "drawing" }): Stretch =>
	between(from.wall, from.length, from.at, to.at);

function aboutSpot({ wall, length, at }: Spot, usual: (length: number) => number): Stretch {
	const width = usual(length);
	const start = Math.min(Math.max(at - width / 2, 0), length - width);
	return between(wall, length, start, start + width);
}
