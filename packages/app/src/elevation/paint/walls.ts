import { hatchLines } from "../../canvas/hatch.ts";
import { traceQuads } from "../../canvas/paint/pen.ts";
import { fontOf } from "../../canvas/text.ts";
import { CORNER, cornerPlace, cornerRadius } from "../reach.ts";
import { onScreen, type Paint } from "../scene.ts";

/** px of hatch under the floor and over the ceiling: what is cut through. */
export const CUT_THROUGH = 9;
const HATCH = 8;

/** px: the strokes that shade an internal corner on both sides, and the two lines of an external one. */
const SHADE = 9;
const SHADE_PITCH = 15;
const ARRIS = 2.5;

/** px between the upright lines that tell a bowed wall. */
const BOW_PITCH = 26;

const NOT_GIVEN = [7, 5];

/** The faces from floor to ceiling; a bowed one ruled upright. */
export const paintFaces: Paint = (pen, scene) => {
	const { unrolled, heights, palette, view } = scene;
	const low = onScreen(scene, 0, 0);
	const high = onScreen(scene, unrolled.length, heights.ceiling.mm);
	pen.fillStyle = palette.paper;
	pen.fillRect(low.left, high.top, high.left - low.left, low.top - high.top);
	pen.strokeStyle = palette.line;
	pen.lineWidth = 1;
	pen.beginPath();
	for (const { from, to, rise } of unrolled.walls) {
		if (rise === 0) continue;
		const count = Math.max(2, Math.floor(((to - from) * view.scale) / BOW_PITCH));
		for (let i = 1; i < count; i++) {
			const { left } = onScreen(scene, from + ((to - from) * i) / count, 0);
			pen.moveTo(left, high.top);
			pen.lineTo(left, low.top);
		}
	}
	pen.stroke();
};

/** Floor and ceiling: heavy lines with hatch beyond; a ceiling that nobody has given is dashed and bare. */
export const paintFloorAndCeiling: Paint = (pen, scene) => {
	const { unrolled, heights, palette, size } = scene;
	const { left, top: floor } = onScreen(scene, 0, 0);
	const { left: right, top: ceiling } = onScreen(scene, unrolled.length, heights.ceiling.mm);
	const band = (top: number, bottom: number) => [
		{ left, top },
		{ left: right, top },
		{ left: right, top: bottom },
		{ left, top: bottom },
	];
	const given = heights.ceiling.known === "given";
	pen.strokeStyle = palette.hatch;
	pen.lineWidth = 1;
	pen.beginPath();
	const style = { spacing: HATCH, angle: -Math.PI / 4, anchor: { left, top: floor } };
	traceQuads(pen, hatchLines(band(floor, floor + CUT_THROUGH), style, size));
	if (given) traceQuads(pen, hatchLines(band(ceiling - CUT_THROUGH, ceiling), style, size));
	pen.stroke();
	pen.strokeStyle = palette.wall;
	pen.lineWidth = 3;
	pen.lineCap = "butt";
	pen.beginPath();
	pen.moveTo(left, floor);
	pen.lineTo(right, floor);
	pen.stroke();
	pen.lineWidth = given ? 3 : 1.5;
	pen.setLineDash(given ? [] : NOT_GIVEN);
	pen.beginPath();
	pen.moveTo(left, ceiling);
	pen.lineTo(right, ceiling);
	pen.stroke();
	pen.setLineDash([]);
};

/** The strokes that shade an internal corner on both sides; what stands beside it is painted over them. */
export const paintCornerShade: Paint = (pen, scene) => {
	const { unrolled, heights, palette } = scene;
	const floor = onScreen(scene, 0, 0).top;
	const ceiling = onScreen(scene, 0, heights.ceiling.mm).top;
	pen.strokeStyle = palette.hatch;
	pen.lineWidth = 1;
	pen.beginPath();
	for (const corner of unrolled.corners) {
		if (corner.kind !== "internal") continue;
		const { left } = onScreen(scene, corner.at, 0);
		for (let top = ceiling + SHADE_PITCH; top < floor; top += SHADE_PITCH) {
			pen.moveTo(left - SHADE, top - SHADE);
			pen.lineTo(left, top);
			pen.lineTo(left + SHADE, top - SHADE);
		}
	}
	pen.stroke();
};

/** Where faces meet: one line at an internal corner, a double one at an external. */
export const paintCornerLines: Paint = (pen, scene) => {
	const { unrolled, heights, palette } = scene;
	const floor = onScreen(scene, 0, 0).top;
	const ceiling = onScreen(scene, 0, heights.ceiling.mm).top;
	pen.strokeStyle = palette.wall;
	pen.lineWidth = 1.75;
	pen.beginPath();
	for (const corner of unrolled.corners) {
		const { left } = onScreen(scene, corner.at, 0);
		for (const off of corner.kind === "external" ? [-ARRIS, ARRIS] : [0]) {
			pen.moveTo(left + off, ceiling);
			pen.lineTo(left + off, floor);
		}
	}
	pen.stroke();
};

/** Numbers over the corners; the ends have none, as on the plan. */
export const paintCornerNumbers: Paint = (pen, scene) => {
	const { unrolled, palette } = scene;
	pen.font = fontOf("handle");
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	unrolled.corners.forEach((corner, index) => {
		const { left, top } = cornerPlace(scene, corner.at);
		const radius = cornerRadius(scene, index);
		pen.beginPath();
		pen.arc(left, top, radius, 0, 2 * Math.PI);
		pen.fillStyle = palette.sheet;
		pen.fill();
		pen.strokeStyle = palette.ink;
		pen.lineWidth = radius < CORNER.numbered ? 1.25 : 2;
		pen.stroke();
		pen.fillStyle = palette.ink;
		if (corner.kind !== "end" && radius >= CORNER.numbered) pen.fillText(String(index), left, top + 0.5);
	});
};
