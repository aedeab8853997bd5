import { footOnFace, type Point, pointAt, pointOffFace } from "@baywright/geometry";
import { facesOf, nearestOnWalls } from "../edits/faces.ts";
import { type Answer, bayOf, type Sketch, type SketchLine, type Tool, type Touch, type World } from "./tool.ts";

/** A length taped on the plan: shown, never stored. */
export interface Tape {
	readonly from: Point;
	readonly to: Point;
}

export interface TapeState {
	readonly tapes: readonly Tape[];
	readonly from: Point | null;
	readonly over: Point | null;
}

const START: TapeState = { tapes: [], from: null, over: null };

/** Measures between anything and anything: tap twice, or drag from one to the other. Escape takes the tapes away. */
export const tapeTool: Tool<TapeState> = {
	start: START,
	dragsAnywhere: true,
	on(state, event, world): Answer<TapeState> {
		switch (event.type) {
			case "hover":
				return { state: { ...state, over: event.touch === null ? null : spotFor(world, event.touch) } };
			case "tap":
			case "double-tap": {
				const at = spotFor(world, event.touch);
				return { state: state.from === null ? { ...state, from: at, over: at } : laid(state, at) };
			}
			case "grab": {
				const at = spotFor(world, event.touch);
				return { state: { ...state, from: state.from ?? at, over: at } };
			}
			case "drag":
				return { state: { ...state, over: spotFor(world, event.touch) } };
			case "drop":
				return { state: state.over === null ? state : laid(state, state.over) };
			case "erase":
				return {
					state: state.from === null ? { ...state, tapes: state.tapes.slice(0, -1) } : { ...state, from: null },
				};
			case "cancel":
				if (state.from !== null) return { state: { ...state, from: null } };
				return { state: START, taken: state.tapes.length > 0 };
			default:
				return { state, taken: false };
		}
	},
	sketch({ tapes, from, over }): Sketch | null {
		const open = from !== null && over !== null ? [{ from, to: over }] : [];
		const lines = [...tapes, ...open].map(
			(tape): SketchLine => ({
				...tape,
				kind: "tape",
				length: Math.hypot(tape.to.x - tape.from.x, tape.to.y - tape.from.y),
			}),
		);
		const points = over === null ? [] : [over];
		return lines.length + points.length === 0 ? null : { guides: [], lines, points, figures: [] };
	},
};

/** mm: a tape no longer than this is a slip of the hand. */
const SLIP = 1;

function laid({ tapes, from, over }: TapeState, to: Point): TapeState {
	if (from === null || Math.hypot(to.x - from.x, to.y - from.y) < SLIP) return { tapes, from: null, over };
	return { tapes: [...tapes, { from, to }], from: null, over: to };
}

/** The thing in reach that one would put a tape to: corners, edges, brackets, joints and ends first, then faces and track, then the bare sheet. */
function spotFor(world: World, { at, reach }: Touch): Point {
	let best: Point | null = null;
	let least = reach;
	for (const it of marks(world)) {
		const away = Math.hypot(it.x - at.x, it.y - at.y);
		if (away <= least) {
			best = it;
			least = away;
		}
	}
	return best ?? onFace(world, at, reach) ?? at;
}

function marks(world: World): Point[] {
	const bay = bayOf(world);
	const { plan } = world;
	const chain = plan.chain ?? facesOf(bay);
	const corners = bay.corners.map(([x, y]) => ({ x, y }));
	if (chain === null) return corners;
	const edges = [...bay.openings, ...bay.obstacles].flatMap(({ wall, from, to }) =>
		[from, to, (from + to) / 2].map((it) => pointOffFace(chain, wall, it, 0)),
	);
	const { path } = plan;
	if (path === null) return [...corners, ...edges];
	const stations = [
		0,
		path.length,
		...plan.joints.map(({ station }) => station),
		...path.segments.flatMap((it) =>
			it.kind === "straight" ? [] : [it.start, it.start + it.length / 2, it.start + it.length],
		),
	];
	const onTrack = stations.flatMap((station) => pointAt(path, station)?.at ?? []);
	return [...corners, ...edges, ...plan.brackets.map(({ at }) => at), ...onTrack];
}

function onFace(world: World, at: Point, reach: number): Point | null {
	const chain = facesOf(bayOf(world));
	const near = chain && nearestOnWalls(chain, at);
	if (!chain || !near) return null;
	const foot = pointOffFace(chain, near.wall, footOnFace(chain, near.wall, at).at, 0);
	return Math.hypot(foot.x - at.x, foot.y - at.y) <= reach ? foot : null;
}
