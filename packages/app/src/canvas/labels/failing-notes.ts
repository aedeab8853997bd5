import { type ScreenPoint, toScreen } from "@baywright/editor";
import { formatLength } from "@baywright/setout";
import { type Failing, failings } from "../failing.ts";
import type { Scene } from "../scene.ts";
import type { Anchor, Note } from "./notes.ts";

/** px from the place to the figure: past the arrows. */
const OFF = 22;

/** By how much each clearance fails. */
export function failingNotes(scene: Scene): Note[] {
	const { unit, view } = scene;
	return failings(scene).flatMap((failing): Note[] => {
		const { distance, clearance, finding } = failing;
		if (distance === null) return [];
		const clear =
			distance > 0
				? `${formatLength(distance, unit)} clear`
				: distance < 0
					? `${formatLength(-distance, unit)} into the wall`
					: "runs into it";
		return [
			{
				key: `failing ${finding}`,
				importance: 95,
				lines: [
					{ text: clear, face: "name", colour: "cut" },
					{ text: `keeps ${formatLength(clearance, unit)}`, face: "small", colour: "cut" },
				],
				anchors: sides(failing, view),
				colour: "cut",
			},
		];
	});
}

/** Beside the line between the two points, either way, then beyond its ends. */
function sides({ track, thing }: Failing, view: Scene["view"]): Anchor[] {
	const [from, to] = [toScreen(view, thing), toScreen(view, track)];
	const length = Math.hypot(to.left - from.left, to.top - from.top);
	const along: ScreenPoint =
		length < 0.01 ? { left: 0, top: 1 } : { left: (to.left - from.left) / length, top: (to.top - from.top) / length };
	const at = { left: (from.left + to.left) / 2, top: (from.top + to.top) / 2 };
	return [
		{ at, away: { left: -along.top, top: along.left }, clear: OFF },
		{ at, away: { left: along.top, top: -along.left }, clear: OFF },
		{ at, away: along, clear: OFF + length / 2 },
	];
}
