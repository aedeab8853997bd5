import type { ScreenPoint } from "@baywright/editor";
import { formatLength } from "@baywright/setout";
import type { Box, Stroke } from "../canvas/labels/box.ts";
import { runFigure } from "../canvas/labels/figures.ts";
import type { RunLabel } from "../canvas/labels/label.ts";
import type { Wish } from "../canvas/labels/place.ts";
import { lineHeight } from "../canvas/text.ts";
import { type Held, isBox } from "./held.ts";
import type { Ladder } from "./ladder.ts";
import { type ElevationScene, onScreen, screenBox } from "./scene.ts";

/** px from the floor to the runs under it; the runs stay in sight where the floor does not. */
const RUNS_BELOW = 24;
const RUNS_EDGE = 22;

/** px of dimension line that must show on each side of its figure, and between the two. */
const LEAST_LINE = 8;
const GAP = 6;

/** px: a shorter stretch has no dimension. */
const SHORTEST = 10;

/** px down: the line of the runs. */
export function runsTop({ view, size }: Pick<ElevationScene, "view" | "size">): number {
	return Math.min(view.top + RUNS_BELOW, size.height - RUNS_EDGE);
}

/** A run under each wall, along its face where it is bowed. */
export function runWishes(scene: ElevationScene, ladder: Ladder): Wish<RunLabel>[] {
	const { unrolled, unit } = scene;
	const top = runsTop(scene);
	return unrolled.walls.flatMap(({ from, to, rise }, wall): Wish<RunLabel>[] => {
		const length = to - from;
		const figure =
			rise === 0
				? runFigure(scene, wall, length)
				: { text: formatLength(length, unit), face: "drawn" as const, taped: false };
		const texts = rise === 0 ? [figure.text] : [`${figure.text} along the bow`, figure.text];
		const line = { from: onScreen(scene, from, 0).left, to: onScreen(scene, to, 0).left, top };
		return [
			lineWish(scene, ladder, `run ${wall}`, 80 + Math.min(9, length / 1000), wall, line, texts, {
				face: figure.face,
				taped: figure.taped,
			}),
		];
	});
}

/** What is chosen on a wall, from the corner on either side, at the foot of the wall. */
export function chosenWishes(scene: ElevationScene, ladder: Ladder, chosen: Held | null): Wish<RunLabel>[] {
	if (!isBox(chosen)) return [];
	const box = chosen.kind === "opening" ? scene.openings[chosen.index] : scene.obstacles[chosen.index];
	const { wall } = (chosen.kind === "opening" ? scene.bay.openings : scene.bay.obstacles)[chosen.index] ?? { wall: 0 };
	const face = scene.unrolled.walls[wall];
	if (!box || !face) return [];
	const stretches = [
		[face.from, box.from],
		[box.from, box.to],
		[box.to, face.to],
	] as const;
	const bottom = screenBox(scene, box).bottom;
	return stretches.map(([from, to], i) => {
		const line = {
			from: onScreen(scene, from, 0).left,
			to: onScreen(scene, to, 0).left,
			top: Math.max(bottom + 14, scene.view.top - 14),
		};
		const text = formatLength(to - from, scene.unit);
		return lineWish(scene, ladder, `chosen ${i}`, 70, wall, line, [text], { face: "drawn", taped: false }, bottom);
	});
}

/** A level dimension whose figure stands in its gap: in the middle of what of it is in sight, or a little to one side; under a line too short for that. */
function lineWish(
	{ size, measure, view }: ElevationScene,
	ladder: Ladder,
	key: string,
	importance: number,
	wall: number,
	line: { readonly from: number; readonly to: number; readonly top: number },
	texts: readonly string[],
	look: Pick<RunLabel, "face" | "taped">,
	foot = view.top,
): Wish<RunLabel> {
	const from = Math.max(line.from, ladder.edge + 2);
	const to = Math.min(line.to, size.width - 4);
	return {
		key,
		importance,
		spot(choice) {
			const under = choice >= texts.length * SHIFTS.length;
			const text = under ? texts.at(-1) : texts[Math.floor(choice / SHIFTS.length)];
			if (text === undefined || choice > texts.length * SHIFTS.length) return null;
			const half = measure(text, look.face) / 2;
			const spare = (to - from) / 2 - half - GAP - LEAST_LINE;
			const middle = (from + to) / 2 + (under ? 0 : (SHIFTS[choice % SHIFTS.length] as number) * Math.max(0, spare));
			const stands = to - from >= SHORTEST && (under || spare >= 0);
			const box: Box = {
				left: stands ? middle : Number.NEGATIVE_INFINITY,
				top: under ? line.top + UNDER : line.top,
				halfWidth: half + 1,
				halfHeight: lineHeight(look.face) / 2 - 1,
				turn: 0,
			};
			const at = (left: number): ScreenPoint => ({ left, top: line.top });
			const ends = [...(line.from === from ? [from] : []), ...(line.to === to ? [to] : [])];
			const lines = under
				? [{ from: at(from), to: at(to) }]
				: [
						{ from: at(from), to: at(middle - half - GAP) },
						{ from: at(middle + half + GAP), to: at(to) },
					];
			const extensions = ends.map((left) => ({ from: { left, top: foot + 5 }, to: { left, top: line.top + 5 } }));
			return {
				kind: "run",
				wall,
				text,
				...look,
				box,
				strokes: lines.map((part): Stroke => ({ ...part, half: 1.5, leader: false })),
				lines,
				ticks: ends.map(at),
				extensions,
				along: { left: 1, top: 0 },
			};
		},
	};
}

/** px from a short line down to the middle of its figure. */
const UNDER = 13;

const SHIFTS = [0, -0.4, 0.4, -0.8, 0.8] as const;
