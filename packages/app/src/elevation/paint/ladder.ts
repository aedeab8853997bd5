import { fontOf } from "../../canvas/text.ts";
import type { Ladder } from "../ladder.ts";
import { runsTop } from "../runs.ts";
import { type ElevationScene, onScreen, type Paint } from "../scene.ts";

/** px: half a slanted tick; a figure keeps off the line by so much. */
const TICK = 4.5;
const FIGURE_OFF = 22;
const NAME_GAP = 6;

export type Laddered = ElevationScene & { readonly ladder: Ladder };

/** Heights at the left, all read from the floor: a small circle at the floor, a tick at each height. Assumed ones are slanted and say so. */
export const paintLadder: Paint<Laddered> = (pen, scene) => {
	const { ladder, palette, size, heights, measure } = scene;
	const { spine } = ladder;
	pen.fillStyle = palette.sheet;
	pen.fillRect(0, 0, ladder.edge, size.height);

	const floor = onScreen(scene, 0, 0);
	const high = onScreen(scene, 0, Math.max(heights.ceiling.mm, ...ladder.rungs.map(({ level }) => level.mm))).top;
	pen.strokeStyle = palette.soft;
	pen.lineWidth = 1;
	pen.beginPath();
	pen.moveTo(spine, floor.top);
	pen.lineTo(spine, high);
	pen.stroke();

	for (const rung of ladder.rungs) {
		const { at, text, level, name, figure } = rung;
		const assumed = level.known === "assumed";
		pen.strokeStyle = palette.soft;
		pen.lineWidth = 0.75;
		pen.beginPath();
		if (floor.left - 6 > spine + 4) {
			pen.moveTo(spine, at);
			pen.lineTo(floor.left - 6, at);
		}
		pen.moveTo(spine - 3, at);
		pen.lineTo(spine - 9, at);
		pen.lineTo(spine - FIGURE_OFF + 5, text);
		pen.stroke();
		pen.beginPath();
		pen.lineWidth = 1.75;
		if (level.mm === 0) pen.arc(spine, at, 3, 0, 2 * Math.PI);
		else {
			pen.moveTo(spine - TICK, at + TICK);
			pen.lineTo(spine + TICK, at - TICK);
		}
		pen.stroke();

		pen.textAlign = "right";
		pen.textBaseline = "middle";
		const face = level.known === "given" ? "name" : "drawn";
		pen.font = fontOf(face);
		pen.fillStyle = level.known === "given" ? palette.ink : palette.soft;
		pen.fillText(figure, spine - FIGURE_OFF, text + 1);
		pen.font = fontOf("small");
		pen.fillStyle = name === "track" ? palette.track : palette.soft;
		pen.fillText(name, spine - FIGURE_OFF - measure(figure, assumed ? "drawn" : face) - NAME_GAP, text + 1);
	}
};

/** What is written under the floor keeps clear of what may be drawn there when the floor is out of sight. */
export const paintFoot: Paint = (pen, scene) => {
	const top = runsTop(scene) - 11;
	if (onScreen(scene, 0, 0).top <= top) return;
	pen.fillStyle = scene.palette.sheet;
	pen.fillRect(0, top, scene.size.width, scene.size.height - top);
};
