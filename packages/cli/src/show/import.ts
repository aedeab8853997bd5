import { capital, formatAngle, formatLength } from "@baywright/setout";
import { chordOf, isTaken, layerWords, roomAngle, sagittaOf, type WallImport } from "@baywright/sheets/read";
import { plain } from "../text/plain.ts";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { count, section } from "./section.ts";

/** More chains than anyone looks through. */
const MOST_CHAINS = 12;

const MOST_LAYERS = 40;

/** What is taken from a drawing, for people; all lengths in mm. */
export function importText(walls: WallImport): string {
	const { chains, chain, unit, layer } = walls;
	const lines = [
		...wrap(`${capital(plain(layerWords(layer)))}. One unit of the drawing is ${mm(unit.mm)} mm: ${plain(unit.why)}.`),
		...section(`Chain ${chain + 1} of ${chains.length}`, wallTable(walls)),
		...(chains.length > 1 ? section("All chains on this layer", chainTable(walls)) : []),
		...(walls.layers.length > 1 ? section("Layers of the drawing", layerTable(walls)) : []),
		...(walls.notes.length > 0
			? section(
					"To know",
					walls.notes.flatMap((note) => wrap(plain(note), { indent: "  " })),
				)
			: []),
	];
	return `${lines.join("\n")}\n`;
}

function wallTable(walls: WallImport): string[] {
	const { shown, closed } = walls;
	const rows = shown.map((wall, i) => {
		const next = shown[i + 1] ?? (closed ? shown[0] : undefined);
		const run = chordOf(wall);
		const rise = sagittaOf(wall);
		return [
			String(i + 1),
			formatLength(run, "mm", { precision: 1 }),
			rise === 0 ? "" : formatLength(rise, "mm", { precision: 1 }),
			next === undefined ? "" : formatAngle(roomAngle(wall, next)),
			isTaken(walls, i) ? "" : "not taken",
		];
	});
	return table([words("wall"), figures("run"), figures("bow"), figures("room angle\nto the next"), words("")], rows);
}

function layerTable({ layers, layer }: WallImport): string[] {
	const rows = layers
		.slice(0, MOST_LAYERS)
		.map(({ name, lines }) => [
			plain(name === "" ? "no layer" : name),
			count(lines, "line"),
			name === layer ? "taken" : "",
		]);
	const more = layers.length - rows.length;
	return [...table([words("layer"), figures(""), words("")], rows), ...(more > 0 ? [`  and ${more} more`] : [])];
}

function chainTable({ chains }: WallImport): string[] {
	const rows = chains
		.slice(0, MOST_CHAINS)
		.map(({ walls, length, closed }, i) => [
			String(i + 1),
			count(walls.length, "wall"),
			formatLength(length, "mm", { precision: 1 }),
			closed ? "closed" : "",
		]);
	const more = chains.length - rows.length;
	return [
		...table([words("chain"), words(""), figures("length"), words("")], rows),
		...(more > 0 ? [`  and ${more} shorter ones`] : []),
	];
}

const mm = (value: number): string => String(Number(value.toPrecision(6)));
