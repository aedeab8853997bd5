import type { Obstacle } from "@baywright/setout";
import { onBay } from "../edits/on-bay.ts";
import { addObstacle, type Stretch, USUAL_OBSTACLE } from "../edits/on-walls.ts";
import { spotOf, stretchSketch } from "./on-wall.ts";
import { type Answer, bayOf, NO_SKETCH, type Tool, type Touch, type World } from "./tool.ts";

export interface ObstacleState {
	readonly over: Touch | null;
	/** Pressed and being slid along the walls. */
	readonly sliding: boolean;
}

const IDLE: ObstacleState = { over: null, sliding: false };

/** Puts an obstacle of one kind where the wall is tapped, or where a drag along the walls ends. */
export function obstacleTool(kind: Obstacle["kind"]): Tool<ObstacleState> {
	const put = (world: World, touch: Touch | null): Answer<ObstacleState> => {
		const spot = touch === null ? null : spotOf(world, touch);
		if (spot === null) return { state: IDLE, say: "Draw a wall first: there is none to put this on." };
		const job = onBay(world.job, world.bay, (bay) => addObstacle(bay, kind, spot.wall, spot.at));
		return {
			state: IDLE,
			commit: { label: "put in an obstacle", job },
			select: { kind: "obstacle", index: bayOf(world).obstacles.length },
		};
	};
	return {
		start: IDLE,
		dragsAnywhere: true,
		on(state, event, world): Answer<ObstacleState> {
			switch (event.type) {
				case "hover":
					return { state: { ...state, over: event.touch } };
				case "tap":
					return put(world, event.touch);
				case "grab":
				case "drag":
					return { state: { over: event.touch, sliding: true } };
				case "drop":
					return state.sliding ? put(world, state.over) : { state, taken: false };
				case "cancel":
					return { state: IDLE, taken: state.sliding };
				default:
					return { state, taken: false };
			}
		},
		sketch({ over }, world) {
			const spot = over === null ? null : spotOf(world, over);
			if (spot === null) return null;
			const width = Math.min(USUAL_OBSTACLE[kind].width, spot.length);
			const from = Math.min(Math.max(spot.at - width / 2, 0), spot.length - width);
			const stretch: Stretch = { wall: spot.wall, from, to: from + width };
			const sketch = stretchSketch(spot.chain, stretch, spot.guides);
			return { ...NO_SKETCH, guides: sketch.guides, lines: sketch.lines, figures: sketch.figures };
		},
	};
}

/** What each kind of obstacle is called. */
export const KIND_NAMES: Readonly<Record<Obstacle["kind"], string>> = {
	switch: "switch",
	socket: "socket",
	radiator: "radiator",
	handle: "handle",
	pipe: "pipe",
	vent: "vent",
	sensor: "sensor",
	lintel: "lintel",
	"sealed-unit": "sealed unit",
	other: "other obstacle",
};
