import { wallName } from "../finding/names.ts";
import { foundText } from "../job/problem.ts";

/** What a name stands for, or `found …, allowed …`. */
export type Named<Value> =
	| { readonly ok: true; readonly value: Value }
	| { readonly ok: false; readonly message: string };

/** A corner as people type it: left end, 1, 2, …, right end. */
export const typedCorner = (corner: number, walls: number): string =>
	corner === 0 ? "left end" : corner === walls ? "right end" : String(corner);

/** The corner that was typed; `between` two walls only, or any. */
export function namedCorner(text: string, walls: number, which: "between" | "any"): Named<number> {
	const name = plainName(text).replace(/^corner /, "");
	const corners = Array.from({ length: walls + 1 }, (_, corner) => corner).filter(
		(corner) => which === "any" || (corner > 0 && corner < walls),
	);
	const value = corners.find((corner) => name === typedCorner(corner, walls) || name === shortEnd(corner, walls));
	if (value !== undefined) return { ok: true, value };
	const names = corners.map((corner) => typedCorner(corner, walls));
	return refused(text, names.length === 0 ? "none: the bay has no corner between walls" : names.join(", "));
}

const shortEnd = (corner: number, walls: number): string | null =>
	corner === 0 ? "left" : corner === walls ? "right" : null;

/** The wall that was typed: by its number from the left, or by its name. */
export function namedWall(text: string, walls: number): Named<number> {
	const name = plainName(text);
	const indexes = Array.from({ length: walls }, (_, wall) => wall);
	const value = indexes.find((wall) => {
		const full = plainName(wallName(wall, walls));
		return [String(wall + 1), full, full.replace(/^wall /, "").replace(/ wall$/, "")].includes(name);
	});
	if (value !== undefined) return { ok: true, value };
	const named = walls > 1 && walls <= 3 ? `, or ${indexes.map((wall) => wallName(wall, walls)).join(", ")}` : "";
	return refused(text, walls === 1 ? "1" : `1 to ${walls} from the left${named}`);
}

const refused = (text: string, allowed: string): Named<never> => ({
	ok: false,
	message: `found ${text === "" ? "nothing" : foundText(text)}, allowed ${allowed}`,
});

/** Small letters, single spaces, one kind of dash, no article. */
const plainName = (text: string): string =>
	text
		.trim()
		.toLowerCase()
		.replace(/\s+/g, " ")
		.replace(/[–—−‐‑]/g, "-")
		.replace(/^the /, "");
