import { LEADING, SIZES, wrapped } from "../lettering/measure.ts";
import type { Item } from "./drawing.ts";
import type { Block, Laid } from "./flow.ts";
import { rectangle, text } from "./marks.ts";
import type { Ink } from "./pens.ts";
import { at, boxAt } from "./place.ts";

/** The heading of a block, mm from its top to where the block goes on. */
export const HEADING = SIZES.heading + 3.2;

export const headingItems = (words: string): Item[] => [
	text(at(0, SIZES.heading + 0.4), words, { height: SIZES.heading, bold: true }),
];

export interface WordsLook {
	readonly height?: number;
	readonly bold?: boolean;
	readonly ink?: Ink;
	/** Left out: none. */
	readonly heading?: string;
}

export interface Entry {
	readonly text: string;
	/** What stands before it: a box to tick, a dash, or nothing. */
	readonly sign: "tick" | "dash" | "none";
	/** Said before the text in bold. */
	readonly lead?: string;
	/** Smaller lines under it. */
	readonly under?: string;
}

/** A list, each entry whole. */
export function entries(list: readonly Entry[], look: WordsLook = {}): Block {
	const height = look.height ?? SIZES.usual;
	return (width, room) => {
		const items: Item[] = [];
		const before = look.heading === undefined ? 0 : HEADING;
		let used = before;
		for (const [i, entry] of list.entries()) {
			const laid = entryLaid(entry, width, height, look);
			if (used + laid.height > room) {
				if (i === 0) return null;
				const rest = list.slice(i);
				const heading = look.heading === undefined ? {} : { heading: continued(look.heading) };
				return finished(used, items, look, entries(rest, { ...look, ...heading }));
			}
			items.push(...laid.items(used));
			used += laid.height + (i === list.length - 1 ? 0 : height * 0.55);
		}
		return finished(used, items, look, null);
	};
}

export const continued = (heading: string): string =>
	heading.endsWith(", continued") ? heading : `${heading}, continued`;

const finished = (height: number, items: readonly Item[], { heading }: WordsLook, rest: Block | null): Laid => ({
	height,
	items: heading === undefined ? items : [...headingItems(heading), ...items],
	rest,
});

function entryLaid({ text: content, sign, lead, under }: Entry, width: number, height: number, look: WordsLook) {
	const indent = sign === "none" ? 0 : sign === "tick" ? height * 2.3 : height * 1.2;
	const leading = height * LEADING;
	const room = width - indent;
	const led = lead === undefined ? [] : wrapped(lead, room, height, true);
	const lines = wrapped(content, room, height, look.bold ?? false);
	const small = under === undefined ? [] : wrapped(under, room, SIZES.small);
	const ink = look.ink ?? "black";
	return {
		height: (led.length + lines.length) * leading + small.length * SIZES.small * LEADING,
		items: (top: number): Item[] => {
			const base = top + height * 1.2;
			const places = [
				...led.map((each) => [each, true] as const),
				...lines.map((each) => [each, look.bold ?? false] as const),
			];
			const end = top + places.length * leading;
			return [
				...(sign === "tick"
					? [
							rectangle("TEXT", boxAt(0.2, base - height * 1.12, height * 1.3, height * 1.3), {
								stroke: { pen: "medium" },
							}),
						]
					: []),
				...(sign === "dash" ? [text(at(0, base), "–", { height, ink })] : []),
				...places.map(([each, bold], i) => text(at(indent, base + i * leading), each, { height, bold, ink })),
				...small.map((each, i) =>
					text(at(indent, end + SIZES.small * (1.2 + i * LEADING)), each, { height: SIZES.small, ink: "grey" }),
				),
			];
		},
	};
}
