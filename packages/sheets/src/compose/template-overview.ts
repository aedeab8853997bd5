import { SIZES, textWidth } from "../lettering/measure.ts";
import { sampled } from "../paper/arcs.ts";
import type { Item } from "../paper/drawing.ts";
import type { Block } from "../paper/flow.ts";
import { path, rectangle, text } from "../paper/marks.ts";
import { at, type Box, boxAt } from "../paper/place.ts";
import type { Tile, Tiling } from "../paper/tiling.ts";
import { HEADING, headingItems } from "../paper/words.ts";
import { spaced, type TemplateDrawing } from "./template-drawing.ts";
import { clearest } from "./tile-joins.ts";

export interface Overview {
	readonly name: string;
	readonly tiling: Tiling;
	readonly drawing: TemplateDrawing;
	readonly called: (tile: Tile) => string;
}

/** No larger than this, mm, one alone taller, and no larger than this part of its true size: what is said under them stays on the same page. */
const TALLEST = 62;
const TALLEST_ALONE = 88;
const LARGEST = 0.16;
const APART = 8;

/** How the sheets of each template lie, side by side as far as there is room, each block a row of them. */
export function overviewBlocks(all: readonly Overview[]): Block[] {
	if (all.length === 0) return [];
	return [
		(width, room) => {
			const drawn: { readonly items: readonly Item[]; readonly height: number }[] = [];
			let used = HEADING;
			let taken = 0;
			while (taken < all.length) {
				const row = rowOf(all.slice(taken), width, all.length === 1 ? TALLEST_ALONE : TALLEST);
				if (used + row.height > room) break;
				drawn.push({ items: row.items(used), height: row.height });
				used += row.height + APART / 2;
				taken += row.count;
			}
			if (taken === 0) return null;
			const items = [...headingItems("How the sheets lie"), ...drawn.flatMap((row) => row.items)];
			const rest = overviewBlocks(all.slice(taken))[0] ?? null;
			return { height: used - APART / 2, items, rest };
		},
	];
}

function rowOf(all: readonly Overview[], width: number, tallest: number) {
	const chosen: { readonly overview: Overview; readonly left: number; readonly scale: number }[] = [];
	let left = 0;
	for (const overview of all) {
		const { wide, high } = sizeOf(overview);
		const scale = Math.min(LARGEST, tallest / high, width / wide);
		if (chosen.length > 0 && left + wide * scale > width) break;
		chosen.push({ overview, left, scale });
		left += Math.max(wide * scale, textWidth(overview.name, SIZES.usual, true)) + APART;
	}
	const height = Math.max(...chosen.map(({ overview, scale }) => sizeOf(overview).high * scale)) + SIZES.usual * 2.2;
	return {
		count: chosen.length,
		height,
		items: (top: number): Item[] =>
			chosen.flatMap(({ overview, left: from, scale }) => overviewItems(overview, from, top, scale)),
	};
}

const sizeOf = ({ tiling }: Overview) => ({
	wide: tiling.columns * tiling.pitch.across,
	high: tiling.rows * tiling.pitch.down,
});

function overviewItems({ name, tiling, drawing, called }: Overview, left: number, top: number, scale: number): Item[] {
	const below = top + SIZES.usual * 2;
	const put = (x: number, y: number) => at(left + (x - tiling.origin.x) * scale, below + (y - tiling.origin.y) * scale);
	const lines = drawing.items.flatMap((item): Item[] => {
		if (item.kind !== "path" || (item.layer !== "WALLS" && item.layer !== "TRACK") || item.stroke?.dash === "chain")
			return [];
		const vertices = item.vertices.map(({ at: p, bulge }) => ({ at: put(p.x, p.y), bulge }));
		return [path(item.layer, vertices, { stroke: { pen: item.layer === "WALLS" ? "wide" : "narrow" } })];
	});
	const busy = lines.flatMap((item) =>
		item.kind === "path" ? spaced(sampled(item.vertices, item.closed, 0.1), 0.8) : [],
	);
	const tiles = tiling.tiles.flatMap((tile): Item[] => {
		const box = tileBox(tile, tiling, put, scale);
		const height = Math.min(SIZES.title, (box.bottom - box.top) * 0.3, (box.right - box.left) * 0.3);
		const words = { height, bold: true, ink: "grey", layer: "PAPER" } as const;
		const corners = [box.bottom - 1.2, box.top + height + 1.2].flatMap((foot) => [
			text(at(box.left + 1.2, foot), called(tile), words),
			text(at(box.right - 1.2, foot), called(tile), { ...words, align: "right" }),
		]);
		const number = clearest(corners, busy);
		return [
			rectangle("PAPER", box, { stroke: { pen: "narrow", ink: "light" } }),
			...(number === undefined ? [] : [number]),
		];
	});
	return [text(at(left, top + SIZES.usual * 1.2), name, { height: SIZES.usual, bold: true }), ...tiles, ...lines];
}

function tileBox(
	tile: Tile,
	{ origin, pitch }: Tiling,
	put: (x: number, y: number) => { readonly x: number; readonly y: number },
	scale: number,
): Box {
	const corner = put(origin.x + tile.column * pitch.across, origin.y + tile.row * pitch.down);
	return boxAt(corner.x, corner.y, pitch.across * scale, pitch.down * scale);
}
