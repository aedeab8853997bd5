import type { Block } from "./flow.ts";
import type { SheetLayout } from "./frame.ts";
import { heightOf } from "./place.ts";

/** A block that is only parted where it is longer than a column. */
export function kept(block: Block, { columns }: Pick<SheetLayout, "columns">): Block {
	const shortest = Math.min(...columns.map(heightOf));
	return (width, room) => {
		const all = block(width, Infinity);
		return all !== null && all.height > room && all.height <= shortest ? null : block(width, room);
	};
}
