import type { Item } from "./drawing.ts";
import { type Box, heightOf, widthOf } from "./place.ts";
import { shifted } from "./shifted.ts";

/** What a block gives of itself for a room. */
export interface Laid {
	/** mm used. */
	readonly height: number;
	/** With the room's upper left corner at 0, 0. */
	readonly items: readonly Item[];
	/** What did not fit; null where all did. */
	readonly rest: Block | null;
}

/**
 * A part of a sheet that runs down a column and may go on in the next. Gives as much of itself as fits into `room` mm of height at this
 * width; null where nothing does. Offered the whole of an empty column it always gives something.
 */
export type Block = (width: number, room: number) => Laid | null;

/** Between two blocks, mm. */
const APART = 6;

/** Lays blocks down the columns, page after page; each page's items by themselves. The first page's columns may be other ones. */
export function flow(blocks: readonly Block[], columns: readonly Box[], firstColumns = columns): Item[][] {
	const pages: Item[][] = [[]];
	let column = 0;
	let used = 0;
	const here = (): Box => {
		const own = pages.length === 1 ? firstColumns : columns;
		return own[column] as Box;
	};
	const next = () => {
		used = 0;
		column++;
		if (column < (pages.length === 1 ? firstColumns : columns).length) return;
		column = 0;
		pages.push([]);
	};
	for (const block of blocks) {
		let left: Block | null = block;
		for (let empty = 0; left !== null; ) {
			const box = here();
			const gap: number = used === 0 ? 0 : APART;
			const laid: Laid | null = left(widthOf(box), heightOf(box) - used - gap);
			if (laid === null) {
				// Nothing fits into two fresh columns one after the other: it never will.
				if (used === 0 && ++empty > columns.length + firstColumns.length)
					throw new Error("Broken invariant: a block gave nothing for a whole column.");
				next();
				continue;
			}
			(pages.at(-1) as Item[]).push(...laid.items.map((item) => shifted(item, box.left, box.top + used + gap)));
			used += gap + laid.height;
			left = laid.rest;
			if (left !== null) next();
		}
	}
	return pages;
}

/** A block that stays whole. */
export const whole =
	(height: number, draw: (width: number) => readonly Item[]): Block =>
	(width, room) =>
		room < height ? null : { height, items: draw(width), rest: null };
