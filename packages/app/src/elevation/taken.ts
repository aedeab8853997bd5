import type { ScreenPoint } from "@baywright/editor";
import type { Box, Stroke } from "../canvas/labels/box.ts";
import type { Taken } from "../canvas/labels/place.ts";
import type { Ladder } from "./ladder.ts";
import { bracketPlaces, jointPlaces } from "./marks.ts";
import { CUT_THROUGH } from "./paint/walls.ts";
import { cornerPlace, cornerRadius } from "./reach.ts";
import { type ElevationScene, halfTrackHeight, onScreen, screenBox } from "./scene.ts";

/** What no figure may cover: the ladder, corner lines and numbers, the track, edges of things. */
export function takenBy(scene: ElevationScene, ladder: Ladder): Taken {
	const { unrolled, heights, run, size } = scene;
	const strokes: Stroke[] = [];
	const add = (from: ScreenPoint, to: ScreenPoint, half = 2) => {
		strokes.push({ from, to, half, leader: false });
	};
	for (const { at } of unrolled.corners) add(onScreen(scene, at, 0), onScreen(scene, at, heights.ceiling.mm), 3);
	const floor = onScreen(scene, 0, 0).top + CUT_THROUGH / 2;
	const right = onScreen(scene, unrolled.length, 0).left;
	add({ left: scene.view.left, top: floor }, { left: right, top: floor }, CUT_THROUGH / 2 + 1);
	const over = heights.ceiling.known === "given" ? CUT_THROUGH / 2 : 0;
	const ceiling = onScreen(scene, 0, heights.ceiling.mm).top - over;
	add({ left: scene.view.left, top: ceiling }, { left: right, top: ceiling }, over + 2);
	if (run !== null) {
		const reach = halfTrackHeight(scene) + (run.bends.length > 0 ? 8 : 3);
		add(onScreen(scene, run.from, heights.track.mm), onScreen(scene, run.to, heights.track.mm), reach);
		for (const { along } of [...bracketPlaces(scene), ...jointPlaces(scene)]) {
			const { left, top } = onScreen(scene, along, heights.track.mm);
			add({ left, top: top - reach - 4 }, { left, top: top + reach + 4 });
		}
	}
	for (const box of [...scene.openings, ...scene.obstacles]) {
		if (box === null) continue;
		const { left, right, top, bottom } = screenBox(scene, box);
		add({ left, top }, { left: right, top });
		add({ left, top: bottom }, { left: right, top: bottom });
		add({ left, top }, { left, top: bottom });
		add({ left: right, top }, { left: right, top: bottom });
	}
	for (const { from, to, opened } of scene.hanging) {
		if (opened === 1) {
			const middle = (from + to) / 2;
			const half = ((to - from) / 2) * scene.view.scale + 2;
			add(onScreen(scene, middle, heights.track.mm), onScreen(scene, middle, heights.hem.mm), half);
		} else
			for (const along of [from, to])
				add(onScreen(scene, along, heights.track.mm), onScreen(scene, along, heights.hem.mm));
	}
	const numbers = unrolled.corners.map(({ at }, index): Box => {
		const radius = cornerRadius(scene, index) + 1;
		return { ...cornerPlace(scene, at), halfWidth: radius, halfHeight: radius, turn: 0 };
	});
	const column: Box = {
		left: ladder.edge / 2,
		top: size.height / 2,
		halfWidth: ladder.edge / 2,
		halfHeight: size.height,
		turn: 0,
	};
	return { boxes: [column, ...numbers], strokes };
}
