import { type Block, whole } from "./flow.ts";
import { shifted } from "./shifted.ts";
import { type TableData, table } from "./table.ts";
import { HEADING } from "./words.ts";

/** Between two columns of one table, mm. */
const BETWEEN = 9;

/** A long table of few columns, its rows in as many columns side by side as have room at least `least` mm wide; whole on one page. */
export function tableSideBySide(data: TableData, least: number, most = 4): Block {
	return (width, room) => {
		const count = Math.max(1, Math.min(most, Math.floor((width + BETWEEN) / (least + BETWEEN))));
		const rows = Math.ceil(data.rows.length / count);
		const wide = (width - (count - 1) * BETWEEN) / count;
		const parts = Array.from({ length: count }, (_, i) => data.rows.slice(i * rows, (i + 1) * rows))
			.filter((part) => part.length > 0)
			// Only the first has the heading: the others keep its room.
			.map((part) => table({ ...data, title: "", rows: part })(wide, Infinity));
		const title = table({ ...data, rows: [] })(wide, Infinity)?.items.slice(0, data.title === "" ? 0 : 1) ?? [];
		const height = Math.max(HEADING, ...parts.map((part) => part?.height ?? 0));
		const items = parts.flatMap((part, i) =>
			(part?.items ?? [])
				.filter((item) => item.kind !== "text" || item.text !== "")
				.map((item) => shifted(item, i * (wide + BETWEEN), 0)),
		);
		return whole(height, () => [...title, ...items])(width, room);
	};
}
