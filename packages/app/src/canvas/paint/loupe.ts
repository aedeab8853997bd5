import type { ScreenPoint } from "@baywright/editor";
import type { Painter, Scene } from "../scene.ts";

/** What a finger hides, to be shown beside it. */
export interface Loupe {
	/** Where the finger is, px. */
	readonly at: ScreenPoint;
	readonly canvas: HTMLCanvasElement;
	/** Pixels of the canvas to a CSS px. */
	readonly ratio: number;
}

/** px, and how much larger things are in it. */
const RADIUS = 46;
const LARGER = 1.6;

/** px from the finger to the middle of the loupe. */
const AWAY = 98;

interface Live {
	readonly loupe: Loupe | null;
	/** px from the top that other things stand over. */
	readonly head: number;
}

/** What is under a finger, in a round window above it; beside it where there is no room above. */
export const paintLoupe: Painter<Scene & Live> = (pen, { loupe, palette, size, head }) => {
	if (loupe === null) return;
	const { at, canvas, ratio } = loupe;
	const { left, top } = placeOf(at, size, head);
	const half = RADIUS / LARGER;
	pen.save();
	pen.beginPath();
	pen.arc(left, top, RADIUS, 0, 2 * Math.PI);
	pen.fillStyle = palette.sheet;
	pen.fill();
	pen.save();
	pen.clip();
	pen.drawImage(
		canvas,
		(at.left - half) * ratio,
		(at.top - half) * ratio,
		2 * half * ratio,
		2 * half * ratio,
		left - RADIUS,
		top - RADIUS,
		2 * RADIUS,
		2 * RADIUS,
	);
	pen.restore();
	pen.strokeStyle = palette.track;
	pen.lineWidth = 2;
	pen.stroke();
	pen.lineWidth = 1;
	pen.beginPath();
	for (const [dx, dy] of [
		[1, 0],
		[0, 1],
	] as const) {
		pen.moveTo(left - dx * 12, top - dy * 12);
		pen.lineTo(left + dx * 12, top + dy * 12);
	}
	pen.stroke();
	pen.restore();
};

function placeOf(at: ScreenPoint, size: Scene["size"], head: number): ScreenPoint {
	if (at.top - AWAY - RADIUS > head) {
		return { left: Math.min(Math.max(at.left, RADIUS), size.width - RADIUS), top: at.top - AWAY };
	}
	const side = at.left > size.width / 2 ? -1 : 1;
	return { left: at.left + side * AWAY, top: Math.max(head + RADIUS, at.top) };
}
