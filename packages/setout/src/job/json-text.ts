/** Greatest width of a line, in columns, with a tab as two. */
const WIDTH = 120;
const TAB = 2;

/** JSON with tabs, where whatever fits on a line stands on one: a list of corners reads as a list of corners. */
export const jsonText = (value: unknown): string => `${write(JSON.parse(JSON.stringify(value)), 0, 0, true)}\n`;

/** `used`: columns already taken on the line, and by the comma after it. */
const write = (value: unknown, depth: number, used: number, broken = false): string => {
	if (typeof value !== "object" || value === null) return JSON.stringify(value);
	const whole = broken ? undefined : onOneLine(value);
	if (whole !== undefined && used + whole.length <= WIDTH) return whole;
	const inner = "\t".repeat(depth + 1);
	const lines = Array.isArray(value)
		? value.map((item) => write(item, depth + 1, TAB * (depth + 1) + 1))
		: Object.entries(value).map(([key, item]) => {
				const name = `${JSON.stringify(key)}: `;
				return name + write(item, depth + 1, TAB * (depth + 1) + name.length + 1);
			});
	const [open, close] = Array.isArray(value) ? "[]" : "{}";
	return lines.length === 0
		? `${open}${close}`
		: `${open}\n${lines.map((line) => inner + line).join(",\n")}\n${"\t".repeat(depth)}${close}`;
};

const onOneLine = (value: unknown): string => {
	if (typeof value !== "object" || value === null) return JSON.stringify(value);
	if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
	const entries = Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${onOneLine(item)}`);
	return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
};
