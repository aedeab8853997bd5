import { SIZES } from "../lettering/measure.ts";
import { boxOf } from "../paper/bounds.ts";
import type { Mark, TextItem } from "../paper/drawing.ts";
import { circle, line, text } from "../paper/marks.ts";
import { at, grown, type PaperPoint } from "../paper/place.ts";
import { ownPart, type Tile, type Tiling, tileAt } from "../paper/tiling.ts";

/** A sheet among the others of its tiling. */
export interface Joined {
	readonly tiling: Tiling;
	readonly tile: Tile;
	/** What a sheet is called by its tile. */
	readonly called: (tile: Tile) => string;
}

/** Half an arm of the cross by which sheets are laid over one another, mm. */
const ARM = 4;

/**
 * Along each side that another sheet goes on from: where the two meet, crosses to lay over one another, and which sheet it is, said where it
 * covers least of what is drawn (`busy`, places on the paper).
 */
export function joinItems(
	{ tiling, tile, called }: Joined,
	put: (p: PaperPoint) => PaperPoint,
	busy: readonly PaperPoint[],
): Mark[] {
	const own = ownPart(tiling, tile);
	const { left, top, right, bottom } = { ...own };
	const sides = [
		{
			beside: tileAt(tiling, tile.column - 1, tile.row),
			a: at(left, top),
			b: at(left, bottom),
			turn: Math.PI / 2,
			dx: -1.4,
			dy: 0,
		},
		{
			beside: tileAt(tiling, tile.column + 1, tile.row),
			a: at(right, top),
			b: at(right, bottom),
			turn: Math.PI / 2,
			dx: 3.2,
			dy: 0,
		},
		{
			beside: tileAt(tiling, tile.column, tile.row - 1),
			a: at(left, top),
			b: at(right, top),
			turn: 0,
			dx: 0,
			dy: -1.4,
		},
		{
			beside: tileAt(tiling, tile.column, tile.row + 1),
			a: at(left, bottom),
			b: at(right, bottom),
			turn: 0,
			dx: 0,
			dy: 3.2,
		},
	];
	const lines = sides.flatMap(({ beside, a, b, turn, dx, dy }) => {
		if (beside === undefined) return [];
		const [from, to] = [put(a), put(b)];
		const said = ALONG.map((part) =>
			text(
				at(from.x + (to.x - from.x) * part + dx, from.y + (to.y - from.y) * part + dy),
				`meets sheet ${called(beside)}`,
				{ height: SIZES.small, align: "centre", turn, ink: "grey", layer: "PAPER" },
			),
		);
		return [
			line("PAPER", from, to, { pen: "narrow", dash: "dashed", ink: "light" }),
			...said.filter((each) => each === clearest(said, busy)),
		];
	});
	const crosses = [0, 1].flatMap((right) =>
		[0, 1].flatMap((down) => {
			const node = { column: tile.column + right, row: tile.row + down };
			const sharers = [-1, 0].flatMap((c) =>
				[-1, 0].flatMap((r) => tileAt(tiling, node.column + c, node.row + r) ?? []),
			);
			if (sharers.length < 2) return [];
			const place = put(
				at(tiling.origin.x + node.column * tiling.pitch.across, tiling.origin.y + node.row * tiling.pitch.down),
			);
			return crossItems(place, nodeName(node), right === 0, down === 0);
		}),
	);
	return [...lines, ...crosses];
}

/** Places along a side at which its words may stand, the middle liked best. */
const ALONG = [0.5, 0.35, 0.65, 0.22, 0.78];

/** The first of those that cover the fewest places. */
export function clearest(said: readonly TextItem[], busy: readonly PaperPoint[]): TextItem | undefined {
	const covered = said.map((each) => {
		const { left, top, right, bottom } = grown(boxOf(each), 1);
		return busy.filter(({ x, y }) => x > left && x < right && y > top && y < bottom).length;
	});
	return said[covered.indexOf(Math.min(...covered))];
}

/** A, B, C … across and 1, 2, 3 … down: the same cross has the same name on every sheet. */
const nodeName = ({ column, row }: { readonly column: number; readonly row: number }): string =>
	`${columnLetters(column)}${row + 1}`;

const columnLetters = (column: number): string =>
	(column < 26 ? "" : columnLetters(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));

function crossItems(p: PaperPoint, name: string, isLeft: boolean, isTop: boolean): Mark[] {
	const pen = { pen: "narrow" } as const;
	return [
		line("PAPER", at(p.x - ARM, p.y), at(p.x + ARM, p.y), pen),
		line("PAPER", at(p.x, p.y - ARM), at(p.x, p.y + ARM), pen),
		circle("PAPER", p, 2, { stroke: pen }),
		text(at(p.x + (isLeft ? 3 : -3), p.y + (isTop ? 5 : -3)), name, {
			height: SIZES.small,
			bold: true,
			align: isLeft ? "left" : "right",
			layer: "PAPER",
		}),
	];
}
