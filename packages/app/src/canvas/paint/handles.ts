import type { Selection } from "@baywright/editor";
import {
	BOW_HANDLE,
	type BowHandle,
	bowHandles,
	type CornerHandle,
	cornerHandles,
	NUMBERED,
	WALL_HANDLE,
	type WallHandle,
	wallHandles,
} from "../handles.ts";
import type { Palette } from "../palette.ts";
import type { Painter, Scene } from "../scene.ts";
import { bendHandles, type SmallHandle, stretchHandles, trackEndHandles } from "../small-handles.ts";
import { fontOf } from "../text.ts";
import type { Pen } from "./pen.ts";

export type Handled = Scene & { readonly selection: Selection | null; readonly hover: Selection | null };

/** Handles: round at corners, with the corner's number; on walls a bar that moves them and an arch that bows them; on the track a bar at its ends, a knob on its bends. */
export const paintHandles: Painter<Handled> = (pen, scene) => {
	const last = scene.corners.length - 1;
	for (const handle of wallHandles(scene))
		paintWallHandle(pen, handle, stateOf(scene, "wall", handle.wall), scene.palette);
	for (const handle of bowHandles(scene))
		paintBowHandle(pen, handle, stateOf(scene, "bow", handle.wall), scene.palette);
	for (const handle of trackEndHandles(scene)) paintEndHandle(pen, handle, stateOfTarget(scene, handle), scene.palette);
	for (const handle of bendHandles(scene)) paintBendHandle(pen, handle, stateOfTarget(scene, handle), scene.palette);
	for (const handle of stretchHandles(scene, scene.selection)) paintStretchHandle(pen, handle, scene.palette);
	for (const handle of cornerHandles(scene)) {
		const number = handle.corner === 0 || handle.corner === last ? "" : String(handle.corner);
		paintCornerHandle(pen, handle, number, stateOf(scene, "corner", handle.corner), scene.palette);
	}
};

type State = "quiet" | "hovered" | "chosen";

function stateOf({ selection, hover }: Handled, kind: Selection["kind"], index: number): State {
	const is = (it: Selection | null) => it !== null && it.kind === kind && it.index === index;
	return is(selection) ? "chosen" : is(hover) ? "hovered" : "quiet";
}

const stateOfTarget = (scene: Handled, { target }: SmallHandle): State => stateOf(scene, target.kind, target.index);

/** A bar across the end of the track, waisted so that it is not taken for a bracket. */
function paintEndHandle(pen: Pen, { at, turn, half }: SmallHandle, state: State, palette: Palette): void {
	const more = state === "quiet" ? 0 : 1.5;
	pen.save();
	pen.translate(at.left, at.top);
	pen.rotate(turn);
	pen.beginPath();
	pen.roundRect(-2.5 - more, -half - more, 5 + 2 * more, 2 * (half + more), 2.5 + more);
	pen.fillStyle = state === "chosen" ? palette.track : palette.sheet;
	pen.fill();
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.5;
	pen.stroke();
	pen.restore();
}

/** A knob on the middle of a bend. */
function paintBendHandle(pen: Pen, { at, half }: SmallHandle, state: State, palette: Palette): void {
	pen.beginPath();
	pen.arc(at.left, at.top, state === "quiet" ? half - 1 : half + 1.5, 0, 2 * Math.PI);
	pen.fillStyle = state === "chosen" ? palette.bend : palette.sheet;
	pen.fill();
	pen.strokeStyle = palette.bend;
	pen.lineWidth = state === "quiet" ? 1.5 : 2;
	pen.stroke();
}

/** A square at either end of what is chosen on a wall. */
function paintStretchHandle(pen: Pen, { at, turn, half }: SmallHandle, palette: Palette): void {
	pen.save();
	pen.translate(at.left, at.top);
	pen.rotate(turn);
	pen.beginPath();
	pen.rect(-half + 1, -half + 1, 2 * half - 2, 2 * half - 2);
	pen.fillStyle = palette.sheet;
	pen.fill();
	pen.strokeStyle = palette.track;
	pen.lineWidth = 2;
	pen.stroke();
	pen.restore();
}

function paintCornerHandle(
	pen: Pen,
	{ at, radius }: CornerHandle,
	number: string,
	state: State,
	palette: Palette,
): void {
	const grown = state === "quiet" ? radius : radius + 2;
	pen.beginPath();
	pen.arc(at.left, at.top, grown, 0, 2 * Math.PI);
	pen.fillStyle = state === "chosen" ? palette.track : palette.sheet;
	pen.fill();
	pen.strokeStyle = state === "quiet" ? palette.ink : palette.track;
	pen.lineWidth = radius < NUMBERED ? 1.25 : 2;
	pen.stroke();
	if (radius < NUMBERED || number === "") return;
	pen.font = fontOf("handle");
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	pen.fillStyle = state === "chosen" ? palette.sheet : state === "hovered" ? palette.track : palette.ink;
	pen.fillText(number, at.left, at.top + 0.5);
}

function paintWallHandle(pen: Pen, { at, turn }: WallHandle, state: State, palette: Palette): void {
	const { halfLength, halfBreadth } = WALL_HANDLE;
	const more = state === "quiet" ? 0 : 1;
	pen.save();
	pen.translate(at.left, at.top);
	pen.rotate(turn);
	pen.beginPath();
	pen.roundRect(
		-halfLength - more,
		-halfBreadth - more,
		2 * (halfLength + more),
		2 * (halfBreadth + more),
		halfBreadth + more,
	);
	pen.fillStyle = state === "chosen" ? palette.track : palette.sheet;
	pen.fill();
	pen.strokeStyle = state === "quiet" ? palette.soft : palette.track;
	pen.lineWidth = 1.5;
	pen.stroke();
	pen.restore();
}

/** px: the arch's breadth, and that of its edge. */
const ARCH = 7;
const ARCH_EDGE = 1.5;

function paintBowHandle(pen: Pen, { at, turn, side }: BowHandle, state: State, palette: Palette): void {
	const { halfWidth, drop } = BOW_HANDLE;
	const more = state === "quiet" ? 0 : 2;
	const radius = (halfWidth ** 2 + drop ** 2) / (2 * drop);
	const half = Math.asin(halfWidth / radius);
	pen.save();
	pen.translate(at.left, at.top);
	pen.rotate(turn);
	pen.beginPath();
	// The crown of the arch stands a little beyond the outer line, its feet a little within.
	const crown = -side * (drop / 2);
	const up = (-side * Math.PI) / 2;
	pen.arc(0, crown + side * radius, radius, up - half, up + half);
	pen.lineCap = "round";
	pen.strokeStyle = state === "quiet" ? palette.soft : palette.track;
	pen.lineWidth = ARCH + more + 2 * ARCH_EDGE;
	pen.stroke();
	pen.strokeStyle = state === "chosen" ? palette.track : palette.sheet;
	pen.lineWidth = ARCH + more;
	pen.stroke();
	pen.restore();
}
