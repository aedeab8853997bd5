import { SIZES } from "../lettering/measure.ts";
import { boxOf } from "../paper/bounds.ts";
import { checkBarItems } from "../paper/check-bar.ts";
import type { Item, Mark } from "../paper/drawing.ts";
import type { SheetLayout } from "../paper/frame.ts";
import { type LabelWish, placeLabels } from "../paper/labels.ts";
import { rectangle, text } from "../paper/marks.ts";
import { at, type Box, boxAt, grown, heightOf, overlap, type PaperPoint, widthOf } from "../paper/place.ts";
import { ownPart, type Tile, type Tiling } from "../paper/tiling.ts";
import { entries } from "../paper/words.ts";
import { CHECK_BAR } from "./sheet-of.ts";
import { BUSY_SPACING, spaced, type TemplateDrawing } from "./template-drawing.ts";
import { type Joined, joinItems } from "./tile-joins.ts";

/** Under and beside the hole that the drawing is seen through: room for the check bars, the map and how to print. mm. */
const FOOT = 25;
const SIDE = 11;

/** What neighbouring sheets share, mm of the drawing. */
export const OVERLAP = 12;

/** How much larger than life the drawing is put on the paper, for a printer that makes it smaller. */
export interface Correction {
	readonly across: number;
	readonly down: number;
}

/** Where the drawing is seen on the paper. */
export const holeOn = ({ above }: SheetLayout): Box => ({
	left: above.left + SIDE,
	top: above.top,
	right: above.right,
	bottom: above.bottom - FOOT,
});

export interface TilePage extends Joined {
	readonly layout: SheetLayout;
	readonly drawing: TemplateDrawing;
	readonly correction: Correction;
	/** What the template is called. */
	readonly name: string;
}

export function tilePageItems(page: TilePage): Item[] {
	const { layout, drawing, tiling, tile, correction } = page;
	const hole = holeOn(layout);
	const own = ownPart(tiling, tile);
	const from = at(own.left - tiling.overlap / 2, own.top - tiling.overlap / 2);
	const put = (p: PaperPoint) =>
		at(hole.left + (p.x - from.x) * correction.across, hole.top + (p.y - from.y) * correction.down);
	const shown: Box = {
		left: own.left - tiling.overlap / 2,
		top: own.top - tiling.overlap / 2,
		right: own.right + tiling.overlap / 2,
		bottom: own.bottom + tiling.overlap / 2,
	};
	const busy = drawing.busy.filter((p) => isOn(p, shown)).map(put);
	const joins = joinItems(page, put, busy);
	const marks = joins.filter(({ kind }) => kind !== "path").map(boxOf);
	const wishes = drawing.labels
		.filter(({ anchor }) => isOn(anchor, own))
		.map((wish): LabelWish => ({ ...wish, anchor: put(wish.anchor) }));
	const edges = joins.flatMap((item) =>
		item.kind === "path"
			? spaced(
					item.vertices.map((each) => each.at),
					BUSY_SPACING,
				)
			: [],
	);
	const labels = placeLabels(wishes, { area: grown(hole, -1), taken: marks, lines: [...busy, ...edges] });
	return [
		{ kind: "window", hole, from, ...correction, items: drawing.items.filter((item) => overlap(boxOf(item), shown)) },
		rectangle("PAPER", hole, { stroke: { pen: "narrow", ink: "light" } }),
		...joins,
		...labels.items,
		...footItems(page, hole),
	];
}

const isOn = ({ x, y }: PaperPoint, { left, top, right, bottom }: Box): boolean =>
	x >= left && x <= right && y >= top && y <= bottom;

/** Check bars both ways, how to print, and which part of the whole this sheet is. */
function footItems(page: TilePage, hole: Box): Item[] {
	const { layout, tiling, tile, correction, name, called } = page;
	const foot = boxAt(layout.above.left, hole.bottom, widthOf(layout.above), FOOT);
	const down = Math.min(CHECK_BAR * correction.down, heightOf(hole));
	const map = boxAt(foot.right - 58, foot.top + 2, 56, FOOT - 4);
	const corrected = correction.across !== 1 || correction.down !== 1;
	const told = entries(
		[
			{
				sign: "none",
				text: corrected
					? `Drawn for a printer that makes ${bar(correction.across)} mm across and ${bar(correction.down)} mm down of 100 mm. Print at 100 %: both bars must now measure 100 mm. If not, do not bend to this paper.`
					: "Print at 100 % (actual size), never fitted to the page. Both bars must measure 100 mm: if not, do not bend to this paper; enter what they measure and print again.",
			},
		],
		{ height: SIZES.small },
	)(102, FOOT - 9);
	return [
		...checkBarItems({
			from: at(foot.left + SIDE + 1, foot.top + 7),
			way: "across",
			length: CHECK_BAR,
			by: correction.across,
		}),
		...checkBarItems({
			from: at(foot.left + 7, hole.bottom - down - 2),
			way: "down",
			length: CHECK_BAR,
			by: correction.down,
		}),
		...(told?.items ?? []).map((item) => ({
			...item,
			...("at" in item ? { at: at(item.at.x + foot.left + SIDE + 1, item.at.y + foot.top + 11.5) } : {}),
		})),
		text(at(map.left - 3, foot.bottom - 3), name, {
			height: SIZES.heading,
			bold: true,
			align: "right",
			layer: "PAPER",
		}),
		...mapItems(tiling, tile, called, map),
	];
}

/** What a bar of 100 mm comes out as where that much is corrected, mm. */
const bar = (by: number): string => String(Math.round((10 * CHECK_BAR) / by) / 10);

/** All sheets as they lie, this one dark. */
function mapItems(tiling: Tiling, here: Tile | null, called: (tile: Tile) => string, room: Box): Mark[] {
	const scale = Math.min(
		widthOf(room) / (tiling.columns * tiling.pitch.across),
		heightOf(room) / (tiling.rows * tiling.pitch.down),
		0.05,
	);
	const [wide, high] = [tiling.pitch.across * scale, tiling.pitch.down * scale];
	const left = room.right - tiling.columns * wide;
	const top = (room.top + room.bottom - tiling.rows * high) / 2;
	return tiling.tiles.flatMap((tile) => {
		const box = boxAt(left + tile.column * wide, top + tile.row * high, wide, high);
		const isHere = tile.number === here?.number;
		const height = Math.min(SIZES.usual, high * 0.5, wide * 0.4);
		return [
			rectangle("PAPER", box, { stroke: { pen: "narrow" }, fill: isHere ? "black" : "white" }),
			text(at((box.left + box.right) / 2, (box.top + box.bottom) / 2 + height / 2), called(tile), {
				height,
				bold: isHere,
				align: "centre",
				ink: isHere ? "white" : "black",
				layer: "PAPER",
			}),
		];
	});
}
