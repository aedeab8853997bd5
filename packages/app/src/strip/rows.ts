import { spreadRow, type Wanted } from "./spread.ts";

/** A label that belongs to a mark. */
export interface RowItem extends Wanted {
	/** The least important are left out first where not all fit. */
	readonly importance: number;
}

/** Where a label came to stand, and the way its leader takes from the mark through the rows before it. */
export interface Placed<Item extends RowItem> {
	readonly item: Item;
	readonly row: number;
	/** px: the leader's place at the mark, then in each row up to the label's own, where it is the label's middle. */
	readonly leader: readonly number[];
}

export interface Rows<Item extends RowItem> {
	readonly placed: readonly Placed<Item>[];
	readonly rows: number;
	/** How many labels were left out. */
	readonly left: number;
}

/** px between labels in a row, and that a leader takes where it passes between them. */
const GAP = 7;
const PASSAGE = 4;

/**
 * Stands labels in as few rows as they need, at most `most`, between `low` and `high` px. Neighbours take rows in turn; the
 * leader of a label further off passes between those nearer, so that nothing touches and no two leaders cross.
 */
export function standInRows<Item extends RowItem>(
	items: readonly Item[],
	low: number,
	high: number,
	most: number,
): Rows<Item> {
	let kept = items.map((_, i) => i);
	for (;;) {
		for (let rows = 1; rows <= most; rows++) {
			const leaders = tryRows(
				kept.map((i) => items[i] as Item),
				low,
				high,
				rows,
			);
			if (leaders === null) continue;
			return {
				placed: leaders.map((leader, k) => ({
					item: items[kept[k] as number] as Item,
					row: leader.length - 2,
					leader,
				})),
				rows,
				left: items.length - kept.length,
			};
		}
		kept = thinned(items, kept);
	}
}

/** Each label's leader, or null where they do not fit in so many rows. */
function tryRows(items: readonly Wanted[], low: number, high: number, rows: number): number[][] | null {
	const leaders = items.map(({ want }) => [want]);
	for (let row = 0; row < rows; row++) {
		const here = items.flatMap((item, i) =>
			i % rows < row
				? []
				: [{ i, half: i % rows === row ? item.half : PASSAGE / 2, want: last(leaders[i] as number[]) }],
		);
		const middles = spreadRow(here, low, high, GAP);
		if (middles === null) return null;
		here.forEach(({ i }, k) => {
			(leaders[i] as number[]).push(middles[k] as number);
		});
	}
	return leaders;
}

/** Without every second of the least important: what is left is spread as evenly as before. */
function thinned(items: readonly RowItem[], kept: readonly number[]): number[] {
	const least = Math.min(...kept.map((i) => (items[i] as RowItem).importance));
	let nth = 0;
	return kept.filter((i) => (items[i] as RowItem).importance > least || nth++ % 2 === 1);
}

const last = (values: readonly number[]): number => values[values.length - 1] as number;
