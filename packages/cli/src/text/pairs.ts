import { columnsOf, PAGE, wrap } from "./wrap.ts";

const INDENT = "  ";

/** Widest left side (columns) that the right side still stands beside; after a wider one it goes below. */
const BESIDE = 38;

/** A name and its meaning on each line, the meanings under each other. */
export function pairs(entries: readonly (readonly [name: string, meaning: string])[]): string[] {
	const left = Math.max(...entries.map(([name]) => columnsOf(name)).filter((width) => width <= BESIDE), 0) + 3;
	const hang = " ".repeat(INDENT.length + left);
	return entries.flatMap(([name, meaning]) => {
		const lines = wrap(meaning, { width: PAGE, indent: hang });
		if (columnsOf(name) > BESIDE) return [...wrap(name, { indent: INDENT }), ...lines];
		const [first = "", ...rest] = lines;
		return [INDENT + name + " ".repeat(left - columnsOf(name)) + first.trimStart(), ...rest];
	});
}
