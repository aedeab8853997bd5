import { type ScreenPoint, toScreen } from "@baywright/editor";
import type { Scene } from "../scene.ts";
import { lineHeight } from "../text.ts";
import { DRAWN_THICKNESS, type WallShape } from "../wall-shape.ts";
import type { Box, Stroke } from "./box.ts";
import { clipLine, type Line } from "./clip.ts";
import { runFigure } from "./figures.ts";
import type { RunLabel } from "./label.ts";
import { crosses, type Obstructions, obstructionsIn } from "./obstructions.ts";
import type { Wish } from "./place.ts";

/** px: from the wall's outer line to the first dimension line, and from one to the next. */
export const FIRST_LINE = 30;
const NEXT_LINE = 24;
const LINES = 3;

/** px: between a dimension's text and the ends of its line, between text and line where it stands beside it. */
const GAP = 7;
const BESIDE = 4;

/** px of dimension line that must show on each side of its text. */
const LEAST_LINE = 10;

/** px: walls shorter than this on screen have no dimension. */
const SHORTEST = 9;

/** px by which extension lines stay off the wall and run past the dimension line. */
const OFF_WALL = 6;
const PAST_LINE = 5;

/** px from the track into the room to a dimension line there. */
const IN_ROOM = 46;

/** px that a dimension line stays in from the edge of the drawing. */
const EDGE = 8;

/** Where along the line the text may stand, as shares of what can be seen of it from its middle. */
const SHIFTS = [0, -0.22, 0.22] as const;

/** Wants a dimension outside each wall. */
export function runWishes(scene: Scene): Wish<RunLabel>[] {
	const obstructions = obstructionsIn(scene);
	return scene.walls.flatMap((shape) => {
		const wish = shape === null ? null : runWish(scene, shape, obstructions);
		return wish === null ? [] : [wish];
	});
}

/** `obstructions` is null where no wall stands in the way of any dimension: all walls turn the same way. */
function runWish(scene: Scene, shape: WallShape, obstructions: Obstructions | null): Wish<RunLabel> | null {
	const { view, measure } = scene;
	const left = shape.face[0] as WallShape["face"][number];
	const right = shape.face[shape.face.length - 1] as WallShape["face"][number];
	const run = Math.hypot(right.x - left.x, right.y - left.y);
	if (run * view.scale < SHORTEST) return null;

	const figure = runFigure(scene, shape.wall, run);
	const halfText = measure(figure.text, figure.face) / 2 + 1;
	const halfHeight = lineHeight(figure.face) / 2 - 1;
	const from = toScreen(view, left);
	const to = toScreen(view, right);
	const frame = frameOf(from, to);
	const bulge = Math.max(0, shape.arc?.rise ?? 0);
	const wallOut = (DRAWN_THICKNESS + bulge) * view.scale;

	const at = (out: number): Line => ({ from: offset(from, frame, out), to: offset(to, frame, out) });
	const intoRoom = Math.max(0, -(shape.arc?.rise ?? 0));
	const inRoom = -(intoRoom + (scene.plan.projections[shape.wall] ?? 0)) * view.scale - IN_ROOM;

	// Asked for once for each distance, however many ways there are to put the text.
	const meetsWall = once((line: Line, extensions: readonly Line[], out: number) => {
		if (obstructions === null) return false;
		return [line, ...(out > 0 ? extensions : [])].some((it) => crosses(it, obstructions.walls));
	});
	const meetsTrack = once((line: Line) => obstructions !== null && crosses(line, obstructions.track));

	function label(out: number, { share, inline, overTrack, overMarks }: Way): RunLabel | null {
		const line = at(out);
		const extensions = [from, to].map((end) => ({
			from: offset(end, frame, out > 0 ? wallOut + OFF_WALL : -OFF_WALL),
			to: offset(end, frame, out + Math.sign(out) * PAST_LINE),
		}));
		if (meetsWall(out, line, extensions, out) || (!overTrack && meetsTrack(out, line))) return null;
		const seen = clipLine(line, scene.size, EDGE);
		if (seen === null) return null;
		const length = Math.hypot(seen.to.left - seen.from.left, seen.to.top - seen.from.top);
		if (inline && length < 2 * (halfText + GAP + LEAST_LINE)) return null;
		const shift = share * (length - 2 * (halfText + GAP + LEAST_LINE));
		const beside = inline ? 0 : halfHeight + BESIDE;
		const middle = offset(
			{
				left: (seen.from.left + seen.to.left) / 2 + frame.along.left * shift,
				top: (seen.from.top + seen.to.top) / 2 + frame.along.top * shift,
			},
			frame,
			beside,
		);
		const box: Box = { ...middle, halfWidth: halfText, halfHeight, turn: readable(frame) };
		const offCorners = extensions.map((it) => offCorner(it, frame));
		const lines = inline ? gapped(seen, middle, frame.along, halfText + GAP) : [seen];
		return {
			kind: "run",
			wall: shape.wall,
			text: figure.text,
			face: figure.face,
			taped: figure.taped,
			box,
			strokes: (overMarks ? lines : [...lines, ...offCorners]).map(thin),
			under: overMarks ? offCorners.map(thin) : [],
			lines,
			ticks: [...(seen.from === line.from ? [seen.from] : []), ...(seen.to === line.to ? [seen.to] : [])],
			extensions,
			along: frame.along,
		};
	}

	return {
		key: `run ${shape.wall}`,
		importance: 60 + (figure.taped ? 10 : 0) + Math.min(9, (run * view.scale) / 100),
		spot(choice) {
			const way = WAYS[choice];
			if (way === undefined) return null;
			if (way.inRoom && obstructions === null) return OFF_SCREEN;
			const out = way.inRoom ? inRoom - way.row * NEXT_LINE : wallOut + FIRST_LINE + way.row * NEXT_LINE;
			return label(out, way) ?? OFF_SCREEN;
		},
	};
}

interface Way {
	readonly row: number;
	readonly share: number;
	/** In the gap of its line, or beside it. */
	readonly inline: boolean;
	readonly inRoom: boolean;
	readonly overTrack: boolean;
	/** Its extension lines may pass under the marks of findings and whatever else stands at its corners. */
	readonly overMarks: boolean;
}

const thin = (line: Line): Stroke => ({ ...line, half: 1.5, leader: false });

/** In the line outside the wall; where a wall stands in the way in the room, off the track if that can be; then past the marks at its corners, then beside the line. */
const WAYS: readonly Way[] = [
	...inLine({ inRoom: false, overTrack: false }),
	...inLine({ inRoom: true, overTrack: false }),
	...inLine({ inRoom: true, overTrack: true }),
	...inLine({ inRoom: false, overTrack: true }),
	...outside({ inline: true, overMarks: true }),
	...outside({ inline: false, overMarks: false }),
	...outside({ inline: false, overMarks: true }),
];

function outside(how: Pick<Way, "inline" | "overMarks">): Way[] {
	return Array.from({ length: LINES }, (_, row) => ({ row, share: 0, inRoom: false, overTrack: true, ...how }));
}

function inLine(where: Pick<Way, "inRoom" | "overTrack">): Way[] {
	return Array.from({ length: LINES }, (_, row) =>
		SHIFTS.map((share) => ({ row, share, inline: true, overMarks: false, ...where })),
	).flat();
}

/** A choice that never fits: the next is asked for. */
const OFF_SCREEN: RunLabel = {
	kind: "run",
	wall: -1,
	text: "",
	face: "drawn",
	taped: false,
	box: { left: Number.NEGATIVE_INFINITY, top: 0, halfWidth: 0, halfHeight: 0, turn: 0 },
	strokes: [],
	lines: [],
	ticks: [],
	extensions: [],
	along: { left: 1, top: 0 },
};

interface Frame {
	/** Unit direction from the wall's left to its right corner, and away from the room, on screen. */
	readonly along: ScreenPoint;
	readonly out: ScreenPoint;
}

function frameOf(from: ScreenPoint, to: ScreenPoint): Frame {
	const length = Math.hypot(to.left - from.left, to.top - from.top);
	const along = { left: (to.left - from.left) / length, top: (to.top - from.top) / length };
	return { along, out: { left: along.top, top: -along.left } };
}

const offset = (at: ScreenPoint, { out }: Frame, by: number): ScreenPoint => ({
	left: at.left + out.left * by,
	top: at.top + out.top * by,
});

/** Text reads from below or from the right (ISO 128): never upside down. */
function readable({ along }: Frame): number {
	const turn = Math.atan2(along.top, along.left);
	if (turn >= Math.PI / 2 - 1e-9) return turn - Math.PI;
	return turn < -Math.PI / 2 - 1e-9 ? turn + Math.PI : turn;
}

function once<Given extends readonly unknown[]>(ask: (...given: Given) => boolean) {
	const known = new Map<number, boolean>();
	return (key: number, ...given: Given): boolean => {
		const before = known.get(key);
		if (before !== undefined) return before;
		const answer = ask(...given);
		known.set(key, answer);
		return answer;
	};
}

/** px of an extension line beside the handle of its corner, which no label covers anyway. */
const BY_CORNER = 8;

function offCorner({ from, to }: Line, frame: Frame): Line {
	const out = (to.left - from.left) * frame.out.left + (to.top - from.top) * frame.out.top;
	const start = Math.sign(out) * Math.min(BY_CORNER, Math.abs(out));
	return { from: offset(from, frame, start), to };
}

function gapped(line: Line, middle: ScreenPoint, along: ScreenPoint, half: number): Line[] {
	const before = { left: middle.left - along.left * half, top: middle.top - along.top * half };
	const after = { left: middle.left + along.left * half, top: middle.top + along.top * half };
	return [
		{ from: line.from, to: before },
		{ from: after, to: line.to },
	];
}
