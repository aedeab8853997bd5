import { LEADING, SIZES, textWidth, wrapped } from "../lettering/measure.ts";
import type { Item } from "./drawing.ts";
import type { Block } from "./flow.ts";
import { line, rectangle, text } from "./marks.ts";
import { at, boxAt } from "./place.ts";
import { continued, HEADING, headingItems } from "./words.ts";

export interface Column {
	readonly heading: string;
	/** Figures stand right, under one another, and are never broken; words stand left and run over lines; a tick is a box to tick, on paper only. */
	readonly of: "figures" | "words" | "tick";
	/** The figure that the row is there for. */
	readonly bold?: boolean;
}

/** A table as data: on paper, and as CSV. */
export interface TableData {
	/** For a file's name: `brackets`. */
	readonly name: string;
	readonly title: string;
	readonly columns: readonly Column[];
	readonly rows: readonly (readonly string[])[];
	/** Under the table, small. */
	readonly note?: string;
}

const HEIGHT = SIZES.usual;
const HEAD = SIZES.small;
/** Between two columns, and over and under the letters of a row, mm. */
const BETWEEN = 4;
const PAD = 1.25;
/** Tables of no more rows than this are not parted. */
const KEPT_WHOLE = 4;
/** A box to tick, in heights of the letters beside it. */
const TICK = 1.3;

/** A table that goes on in the next column with its headings again. */
export function table(data: TableData): Block {
	return (width, room) => {
		const spans = columnSpans(data, width);
		const head = headRows(data, spans);
		const headEnd = HEADING + head.lines * HEAD * LEADING + PAD;
		const items: Item[] = [...headingItems(data.title), ...head.items];
		items.push(line("TEXT", at(0, headEnd), at(width, headEnd), { pen: "wide" }));
		let used = headEnd;
		const rowOf = (cells: readonly string[]) =>
			cells.map((cell, i) => {
				const { of, bold = false } = data.columns[i] as Column;
				return of !== "words" ? [cell] : wrapped(cell, (spans[i] as Span).width, HEIGHT, bold);
			});
		for (const [index, cells] of data.rows.entries()) {
			const row = rowOf(cells);
			const height =
				Math.max(...row.map(({ length }) => length), 1) * HEIGHT * LEADING + 2 * PAD - HEIGHT * (LEADING - 1.45);
			if (used + height > room) {
				if (index === 0 || data.rows.length <= KEPT_WHOLE) return null;
				const rest = { ...data, title: continued(data.title), rows: data.rows.slice(index) };
				return { height: used, items, rest: table(rest) };
			}
			row.forEach((lines, i) => {
				const { of, bold = false } = data.columns[i] as Column;
				const { left, width: wide } = spans[i] as Span;
				if (of === "tick") {
					const side = HEIGHT * TICK;
					items.push(
						rectangle("TEXT", boxAt(left, used + PAD + HEIGHT * 0.7 - side / 2, side, side), {
							stroke: { pen: "medium" },
						}),
					);
				}
				lines.forEach((words, k) => {
					const base = used + PAD + HEIGHT * (1.2 + k * LEADING);
					const align = of === "figures" ? "right" : "left";
					if (words !== "")
						items.push(text(at(of === "figures" ? left + wide : left, base), words, { height: HEIGHT, bold, align }));
				});
			});
			used += height;
			const last = index === data.rows.length - 1;
			items.push(
				line("TEXT", at(0, used), at(width, used), last ? { pen: "medium" } : { pen: "narrow", ink: "light" }),
			);
		}
		const notes = data.note === undefined ? [] : wrapped(data.note, width, SIZES.small);
		const noted = used + (notes.length === 0 ? 0 : 1 + notes.length * SIZES.small * LEADING);
		if (noted > room) {
			// The last row goes on with the note, so that neither stands alone.
			if (data.rows.length <= KEPT_WHOLE) return null;
			const first = table({ name: data.name, title: data.title, columns: data.columns, rows: data.rows.slice(0, -1) })(
				width,
				room,
			);
			if (first === null || first.rest !== null) return null;
			return { ...first, rest: table({ ...data, title: continued(data.title), rows: data.rows.slice(-1) }) };
		}
		notes.forEach((words, i) => {
			items.push(
				text(at(0, used + 1 + SIZES.small * (1.2 + i * LEADING)), words, { height: SIZES.small, ink: "grey" }),
			);
		});
		return { height: noted, items, rest: null };
	};
}

interface Span {
	readonly left: number;
	readonly width: number;
}

function headRows({ columns }: TableData, spans: readonly Span[]): { readonly items: Item[]; readonly lines: number } {
	const heads = columns.map(({ heading }, i) => brokenHead(heading, (spans[i] as Span).width));
	const lines = Math.max(...heads.map(({ length }) => length), 1);
	const items = heads.flatMap((rows, i) => {
		const { left, width } = spans[i] as Span;
		const { of } = columns[i] as Column;
		return rows.map((words, k) =>
			text(
				at(of === "figures" ? left + width : left, HEADING + HEAD * (1.1 + (lines - rows.length + k) * LEADING)),
				words,
				{
					height: HEAD,
					align: of === "figures" ? "right" : "left",
					ink: "grey",
				},
			),
		);
	});
	return { items, lines };
}

const brokenHead = (heading: string, width: number): string[] =>
	heading.split("\n").flatMap((each) => wrapped(each, width + 0.01, HEAD));

/** Columns of figures and ticks are as wide as they must be. Columns of words share what is left: fairly, and none has more than it needs while another lacks. */
function columnSpans({ columns, rows }: TableData, width: number): Span[] {
	const wishes = columns.map(({ heading, bold = false, of }, i) => {
		if (of === "tick") return HEIGHT * TICK;
		const heads = heading.split("\n").flatMap((each) => (of === "words" ? each.split(" ") : [each]));
		const head = Math.max(...heads.map((each) => textWidth(each, HEAD)));
		const cells = rows.map((cells) => textWidth(cells[i] ?? "", HEIGHT, bold));
		return Math.max(head, ...cells, HEIGHT);
	});
	const isWords = (i: number) => columns[i]?.of === "words";
	const fixed = sum(wishes.filter((_, i) => !isWords(i)));
	const free = width - BETWEEN * (columns.length - 1) - fixed;
	const words = wishes.filter((_, i) => isWords(i));
	const most = fairShare(words, free);
	const spare = Math.max(0, free - sum(words)) / Math.max(1, sum(words));
	// Without any words the figures stand over the whole width.
	const stretch = words.length > 0 ? 1 : (fixed + free) / fixed;
	let left = 0;
	return wishes.map((wish, i) => {
		const own = isWords(i) ? Math.min(wish, most) * (1 + spare) : wish * (columns[i]?.of === "tick" ? 1 : stretch);
		const span = { left, width: own };
		left += own + BETWEEN;
		return span;
	});
}

/** What each of some wishes may have at most so that together they keep within `free`. */
function fairShare(wishes: readonly number[], free: number): number {
	let room = free;
	const rising = wishes.toSorted((a, b) => a - b);
	for (const [i, wish] of rising.entries()) {
		const share = room / (rising.length - i);
		if (wish > share) return share;
		room -= wish;
	}
	return Infinity;
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);
