import type { Selection } from "../../desk/selection.ts";
import {
	BOW_HANDLE,
	type BowHandle,
	bowHandles,
	type CornerHandle,
	cornerHandles,
	WALL_HANDLE,
	type WallHandle,
	wallHandles,
} from "../handles.ts";
import type { Palette } from "../palette.ts";
import type { Painter, Scene } from "../scene.ts";
import { fontOf } from "../text.ts";
import type { Pen } from "./pen.ts";

/** px: below this radius a corner's handle has no room for its number. */
const NUMBERED = 9;

export type Handled = Scene & { readonly selection: Selection | null; readonly hover: Selection | null };

/** Handles: round at corners, with the corner's number; on walls a bar that moves them and an arch that bows them. */
export const paintHandles: Painter<Handled> = (pen, scene) => {
	const last = scene.corners.length - 1;
	for (const handle of wallHandles(scene))
		paintWallHandle(pen, handle, stateOf(scene, "wall", handle.wall), scene.palette);
	for (const handle of bowHandles(scene))
		paintBowHandle(pen, handle, stateOf(scene, "bow", handle.wall), scene.palette);
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
