import { columnsOf, PAGE, wrap } from "./wrap.ts";

export interface Column {
	/** Several lines with `\n`. */
	readonly head: string;
	/** Figures stand to the right, words to the left; only words are wrapped. */
	readonly align: "left" | "right";
}

export const words = (head: string): Column => ({ head, align: "left" });
export const figures = (head: string): Column => ({ head, align: "right" });

const INDENT = 2;
const GAP = 2;

/** Least width of a column of words, in columns, however little room there is. */
const LEAST = 6;

/** Aligned lines within the page, heads on top; a cell with too little room goes on below. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
	const heads = columns.map(({ head }) => head.split("\n"));
	const natural = columns.map((_, i) =>
		Math.max(...[...(heads[i] ?? []), ...rows.map((row) => row[i] ?? "")].map(columnsOf)),
	);
	const widths = narrowed(columns, natural);
	const deepest = Math.max(...heads.map((lines) => lines.length));
	const raised = heads.map((lines) => [...Array<string>(deepest - lines.length).fill(""), ...lines]);
	const body = rows.map((row) =>
		columns.map((_, i) => {
			const width = widths[i] ?? 0;
			const cell = row[i] ?? "";
			return columnsOf(cell) <= width ? [cell] : wrap(cell, { width });
		}),
	);
	return [raised, ...body].flatMap((cells) => linesOf(columns, widths, cells));
}

/** The widest column of words gives way first, a column at a time, so that equally wide ones stay alike. */
function narrowed(columns: readonly Column[], natural: readonly number[]): number[] {
	const widths = natural.map((width) => Math.min(width, PAGE));
	let over = INDENT + widths.reduce((sum, width) => sum + width + GAP, -GAP) - PAGE;
	for (; over > 0; over--) {
		const wordy = widths.map((width, i) => (columns[i]?.align === "left" ? width : 0));
		const widest = Math.max(...wordy);
		if (widest <= LEAST) break;
		widths[wordy.indexOf(widest)] = widest - 1;
	}
	return widths;
}

function linesOf(
	columns: readonly Column[],
	widths: readonly number[],
	cells: readonly (readonly string[])[],
): string[] {
	const deepest = Math.max(...cells.map((lines) => lines.length));
	return Array.from({ length: deepest }, (_, line) => {
		const parts = columns.map(({ align }, i) => {
			const text = cells[i]?.[line] ?? "";
			const space = " ".repeat(Math.max(0, (widths[i] ?? 0) - columnsOf(text)));
			return align === "right" ? space + text : text + space;
		});
		return (" ".repeat(INDENT) + parts.join(" ".repeat(GAP))).trimEnd();
	});
}
