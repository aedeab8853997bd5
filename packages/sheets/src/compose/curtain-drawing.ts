import type { CurtainSetOut } from "@baywright/setout";
import { SIZES, textWidth } from "../lettering/measure.ts";
import { dimension } from "../paper/dimension.ts";
import type { Mark } from "../paper/drawing.ts";
import { line, rectangle, text } from "../paper/marks.ts";
import { at, boxAt, type PaperPoint } from "../paper/place.ts";
import { widthParts } from "./curtain-figures.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Room for a curtain itself, and round it for its dimensions and what its edges are, mm of the paper. */
const ROOM = { width: 40, height: 56 };
const LEFT = 17;
const RIGHT = 12;
const ABOVE = 8;
export const DRAWING_WIDTH = LEFT + ROOM.width + RIGHT;

/** How high one is drawn whose drop is not given, in times its width. */
const UNKNOWN_DROP = 1.4;

/** A curtain made up, seen from the room: how wide, how long, its hooks and what each edge is. */
export function curtainDrawing(
	of: SheetOf,
	curtain: CurtainSetOut,
): { readonly items: readonly Mark[]; readonly height: number } {
	const { about } = of;
	const { finishedWidth, drop, gliders, side } = curtain;
	const { overlap, turnsBack, returns } = widthParts(of, curtain);
	const tall = drop ?? finishedWidth * UNKNOWN_DROP;
	const perMm = Math.min(ROOM.width / finishedWidth, ROOM.height / tall);
	const [wide, high] = [finishedWidth * perMm, tall * perMm];
	const left = LEFT + (ROOM.width - wide) / 2;
	const box = boxAt(left, ABOVE, wide, high);
	const area = boxAt(-20, -20, DRAWING_WIDTH + 40, high + 60);
	const width = dimension(
		{
			from: at(box.left, box.top),
			to: at(box.right, box.top),
			side: "left",
			text: about(finishedWidth),
			offsets: [4.5],
		},
		[],
		area,
	);
	const down =
		drop === null
			? null
			: dimension(
					{
						from: at(box.left, box.bottom),
						to: at(box.left, box.top),
						side: "left",
						text: about(drop),
						offsets: [10.5],
					},
					[],
					area,
				);
	const leading = side === "left" ? "right" : "left";
	const each = returns / Math.max(1, turnsBack.filter((turns) => turns).length);
	const edgeWords = (edge: "left" | "right", turns: boolean): string[] => [
		...(edge === leading ? ["leading edge"] : []),
		...(edge === leading && overlap > 0.05 ? [`overlap ${about(overlap)}`] : []),
		...(turns ? [`return ${about(each)}`] : []),
	];
	const middle = (box.top + box.bottom) / 2;
	return {
		items: [
			rectangle("STACK", box, { stroke: { pen: "wide" } }),
			...hooks(gliders, box.left, box.right, box.top),
			...(drop === null ? [note(at((box.left + box.right) / 2, middle), "drop not given", high)] : []),
			...(width?.items ?? [note(at(left + wide / 2, box.top - 3), about(finishedWidth), Infinity)]),
			...(down?.items ?? []),
			...edge(box.left - 2.2, -EDGE_ROW, middle, edgeWords("left", turnsBack[0]), high),
			...edge(box.right + 4, EDGE_ROW, middle, edgeWords("right", turnsBack[1]), high),
		],
		height: box.bottom + 1,
	};
}

const note = (place: PaperPoint, words: string, room: number): Mark =>
	text(place, words, {
		height: SIZES.small,
		align: "centre",
		ink: "grey",
		turn: textWidth(words, SIZES.small) > room ? Math.PI / 2 : 0,
	});

/** Between two rows of words along an edge, mm. */
const EDGE_ROW = 3.3;

/** What an edge is, along it: in as few rows beside one another as it is long enough for. */
function edge(x: number, step: number, middle: number, words: readonly string[], high: number): Mark[] {
	const rows: string[] = [];
	for (const each of words) {
		const last = rows.at(-1);
		const longer = last === undefined ? each : `${last}, ${each}`;
		if (last !== undefined && textWidth(longer, SIZES.small) <= high) rows[rows.length - 1] = longer;
		else rows.push(each);
	}
	return rows.map((row, i) =>
		text(at(x + i * step, middle), row, { height: SIZES.small, align: "centre", turn: Math.PI / 2 }),
	);
}

/** Nearer than this (mm of the paper) hooks are not drawn one by one. */
const NEAREST_HOOKS = 0.9;

function hooks(count: number, left: number, right: number, top: number): Mark[] {
	if (count < 2 || (right - left) / (count - 1) < NEAREST_HOOKS) return [];
	return Array.from({ length: count }, (_, i) => {
		const x = left + ((right - left) * i) / (count - 1);
		return line("STACK", at(x, top), at(x, top + 2.4), { pen: "narrow", ink: "grey" });
	});
}
