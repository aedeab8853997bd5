import { LEADING, SIZES, textWidth, wrapped } from "../lettering/measure.ts";
import type { Item } from "./drawing.ts";
import type { Block } from "./flow.ts";
import { rectangle, text } from "./marks.ts";
import { at, boxAt } from "./place.ts";
import type { TableData } from "./table.ts";
import { continued, HEADING, headingItems } from "./words.ts";

export interface WriteInColumn {
	readonly heading: string;
	/** Words that stand there; a box to write in, what is known already in it; or a small box to tick. */
	readonly of: "words" | "box" | "tick";
}

/** A form: lines with boxes to be written in by hand. */
export interface WriteIn {
	/** For a file's name. */
	readonly name: string;
	readonly title: string;
	/** How it is done, under the title. */
	readonly how: string;
	readonly columns: readonly WriteInColumn[];
	readonly rows: readonly (readonly string[])[];
}

/** A line is as high as handwriting needs, mm. */
const ROW = 8.4;
const BOX = 7;
const BETWEEN = 3;
const TICK = 3.4;
const HEIGHT = SIZES.usual;

/** A form that goes on in the next column with its headings again; a line stays whole. */
export function writeIn(form: WriteIn): Block {
	return (width, room) => {
		const spans = spansOf(form, width);
		const told = form.how === "" ? [] : wrapped(form.how, width, SIZES.usual);
		const heads = form.columns.map(({ heading }, i) => wrapped(heading, (spans[i] as Span).width + 0.01, SIZES.small));
		const lines = Math.max(...heads.map(({ length }) => length), 0);
		const headTop = HEADING + told.length * HEIGHT * LEADING + (told.length > 0 ? 1.2 : 0);
		const start = headTop + lines * SIZES.small * LEADING + 0.8;
		const count = linesIn(form.rows.length, Math.floor((room - start) / ROW));
		if (count < 1) return null;
		const items: Item[] = [
			...headingItems(form.title),
			...told.map((each, i) => text(at(0, HEADING + HEIGHT * (1.1 + i * LEADING)), each, { height: HEIGHT })),
			...heads.flatMap((rows, i) => {
				const { left, width: wide } = spans[i] as Span;
				const isTick = form.columns[i]?.of === "tick";
				return rows.map((words, k) =>
					text(
						at(isTick ? left + wide / 2 : left, headTop + SIZES.small * (1.1 + (lines - rows.length + k) * LEADING)),
						words,
						{ height: SIZES.small, ink: "grey", align: isTick ? "centre" : "left" },
					),
				);
			}),
			...form.rows
				.slice(0, count)
				.flatMap((cells, row) =>
					cells.flatMap((cell, i) =>
						cellItems(form.columns[i] as WriteInColumn, cell, spans[i] as Span, start + row * ROW),
					),
				),
		];
		const rest = form.rows.slice(count);
		return {
			height: start + count * ROW - (ROW - BOX),
			items,
			rest: rest.length === 0 ? null : writeIn({ ...form, title: continued(form.title), how: "", rows: rest }),
		};
	};
}

/** A short form is not parted, and no line stands alone on either side of a parting. */
const SHORT = 4;

function linesIn(lines: number, room: number): number {
	if (lines <= room) return lines;
	if (lines <= SHORT || room < 2) return 0;
	return lines - room === 1 && room > 2 ? room - 1 : room;
}

/** The same as a table of data: what is still to be written is empty. */
export const formTable = ({ name, title, columns, rows }: WriteIn): TableData => ({
	name,
	title,
	columns: columns.map(({ heading }) => ({ heading, of: "words" })),
	rows,
});

interface Span {
	readonly left: number;
	readonly width: number;
}

function cellItems({ of }: WriteInColumn, cell: string, { left, width }: Span, top: number): Item[] {
	const narrow = { pen: "narrow" } as const;
	const base = top + (BOX + HEIGHT) / 2;
	if (of === "tick")
		return [
			rectangle("TEXT", boxAt(left + width / 2 - TICK / 2, top + (BOX - TICK) / 2, TICK, TICK), { stroke: narrow }),
		];
	const box = of === "box" ? [rectangle("TEXT", boxAt(left, top, width, BOX), { stroke: narrow })] : [];
	if (cell === "") return box;
	return [
		...box,
		text(at(of === "box" ? left + 1.6 : left, base), cell, { height: HEIGHT, ink: of === "box" ? "grey" : "black" }),
	];
}

/** Words are as wide as they must be, ticks as their headings; boxes share the rest, none narrower than what stands in it. */
function spansOf({ columns, rows }: WriteIn, width: number): Span[] {
	const wishes = columns.map(({ heading, of }, i) => {
		const word = Math.max(0, ...heading.split(" ").map((each) => textWidth(each, SIZES.small)));
		const cell = Math.max(0, ...rows.map((cells) => textWidth(cells[i] ?? "", HEIGHT)));
		return of === "words" ? Math.max(word, cell) : of === "tick" ? Math.max(word, TICK) : Math.max(word, cell + 3.2);
	});
	const free = width - BETWEEN * (columns.length - 1);
	const isBox = (i: number) => columns[i]?.of === "box";
	const boxes = wishes.filter((_, i) => isBox(i));
	const others = wishes.filter((_, i) => !isBox(i));
	const total = (widths: readonly number[]) => widths.reduce((sum, each) => sum + each, 0);
	const share = shareOf(boxes, free - total(others));
	const more = boxes.length > 0 ? 0 : Math.max(0, free - total(others)) / Math.max(1, others.length);
	let left = 0;
	return wishes.map((wish, i) => {
		const span = { left, width: isBox(i) ? Math.max(wish, share) : wish + more };
		left += span.width + BETWEEN;
		return span;
	});
}

/** One width for all boxes but those that must be wider. */
function shareOf(least: readonly number[], room: number): number {
	const rising = least.toSorted((a, b) => b - a);
	let [left, count] = [room, rising.length];
	for (const wide of rising) {
		if (wide <= left / count) break;
		left -= wide;
		count--;
	}
	return count === 0 ? 0 : left / count;
}
