import { at, type Box, boxRound, heightOf, type PaperPoint, widthOf } from "./place.ts";

/** How a drawing larger than the paper is shared out. Lengths mm of the drawing. */
export interface Tiling {
	/** The drawing is turned by this before it is shared out, radians, counter-clockwise. */
	readonly turn: number;
	readonly columns: number;
	readonly rows: number;
	/** From one tile to the next. */
	readonly pitch: { readonly across: number; readonly down: number };
	/** Shared by neighbours. */
	readonly overlap: number;
	/** Upper left corner of the first tile's own part: what no other tile has is pitch wide and high. */
	readonly origin: PaperPoint;
	/** The tiles that something lies on, row by row. */
	readonly tiles: readonly Tile[];
}

export interface Tile {
	/** From 1, in the order of printing. */
	readonly number: number;
	readonly column: number;
	readonly row: number;
}

export interface TilingWish {
	/** Places along all that must be on the paper, near enough to one another that nothing lies between. */
	readonly points: readonly PaperPoint[];
	/** What one sheet of paper shows, mm of the drawing. */
	readonly window: { readonly width: number; readonly height: number };
	readonly overlap: number;
	/** Turns to choose from, the best liked first. */
	readonly turns: readonly number[];
}

/** The tiling with the fewest sheets; of equals the one whose turn is liked best, in the middle of its sheets. */
export function tiled(wish: TilingWish): Tiling {
	let best: Tiling | null = null;
	for (const turn of wish.turns) {
		for (const tiling of tilingsAt(wish, turn))
			if (best === null || tiling.tiles.length < best.tiles.length) best = tiling;
	}
	if (best === null) throw new Error("Broken invariant: a drawing is tiled at one turn at least.");
	return best;
}

/** Where the drawing may lie within its sheets, as parts of what they have to spare: in the middle, or at either side. */
const PLACES = [0.5, 0, 1];

function tilingsAt({ points, window, overlap }: TilingWish, turn: number): Tiling[] {
	const turned = points.map((p) => turnedBy(p, turn));
	const box = boxRound(turned) as Box;
	const pitch = { across: window.width - overlap, down: window.height - overlap };
	const columns = Math.max(1, Math.ceil(widthOf(box) / pitch.across));
	const rows = Math.max(1, Math.ceil(heightOf(box) / pitch.down));
	return PLACES.flatMap((across) =>
		PLACES.map((down) => {
			const left = box.left - (columns * pitch.across - widthOf(box)) * across;
			const top = box.top - (rows * pitch.down - heightOf(box)) * down;
			const tiles = tilesUnder(turned, at(left, top), pitch, columns, rows);
			return { turn, columns, rows, pitch, overlap, origin: at(left, top), tiles };
		}),
	);
}

function tilesUnder(
	points: readonly PaperPoint[],
	origin: PaperPoint,
	pitch: Tiling["pitch"],
	columns: number,
	rows: number,
): Tile[] {
	const used = new Set<number>();
	for (const { x, y } of points) {
		const column = Math.min(Math.max(Math.floor((x - origin.x) / pitch.across), 0), columns - 1);
		const row = Math.min(Math.max(Math.floor((y - origin.y) / pitch.down), 0), rows - 1);
		used.add(row * columns + column);
	}
	return [...used]
		.sort((a, b) => a - b)
		.map((index, i) => ({ number: i + 1, column: index % columns, row: Math.floor(index / columns) }));
}

/** About the corner of the paper, counter-clockwise as seen. */
const turnedBy = ({ x, y }: PaperPoint, turn: number): PaperPoint => {
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	return at(x * cos + y * sin, -x * sin + y * cos);
};

/** What a tile alone has. */
export const ownPart = ({ origin, pitch }: Tiling, { column, row }: Tile): Box => ({
	left: origin.x + column * pitch.across,
	top: origin.y + row * pitch.down,
	right: origin.x + (column + 1) * pitch.across,
	bottom: origin.y + (row + 1) * pitch.down,
});

export const tileAt = ({ tiles }: Tiling, column: number, row: number): Tile | undefined =>
	tiles.find((tile) => tile.column === column && tile.row === row);
