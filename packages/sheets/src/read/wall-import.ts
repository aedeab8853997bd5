import type { Point } from "@baywright/geometry";
import type { Problem } from "@baywright/setout";
import { type Chain, chainsOn, type LayerChains } from "./chains.ts";
import type { Drawing, DrawingLayer } from "./drawing.ts";
import { notesOn } from "./notes.ts";
import { laid, oriented } from "./orient.ts";
import { type Piece, sagittaOf } from "./stroke.ts";
import { type ChosenUnit, type UnitName, unitFor } from "./unit.ts";
import { stretchProblems } from "./wall-problems.ts";

/** What is to be taken from a drawing; what is left out is chosen by what is likeliest. */
export interface ImportWish {
	readonly layer?: string | undefined;
	readonly unit?: UnitName | undefined;
	/** The drawing is 1 : scale. */
	readonly scale?: number | undefined;
	/** Ends up to so many mm apart are joined. */
	readonly reach?: number | undefined;
	/** Counted from 0, the likeliest first. */
	readonly chain?: number | undefined;
	/** First and last wall, counted from 0 along the chain as shown; round a closed outline the last may come before the first. */
	readonly walls?: readonly [first: number, last: number] | undefined;
	/** The room lies on the other side than the one thought of. */
	readonly otherSide?: boolean | undefined;
}

/** What a wish comes to: all that a preview shows, and the walls where nothing stands in the way. */
export interface WallImport {
	/** Every layer of the drawing, and how many lines of it walls could be made of. */
	readonly layers: readonly { readonly name: string; readonly lines: number }[];
	readonly layer: string;
	readonly unit: ChosenUnit;
	readonly reach: number;
	readonly chains: readonly Chain[];
	readonly chain: number;
	/** Every wall of the chain in order, mm, laid as the bay will lie: the room at the bottom, the first wall taken from the origin. */
	readonly shown: readonly Piece[];
	/** The other lines of the layer, laid alike. */
	readonly others: readonly Piece[];
	readonly closed: boolean;
	readonly first: number;
	readonly last: number;
	/** As in a job file, mm. */
	readonly corners: readonly (readonly [x: number, y: number])[];
	/** One a wall, mm, + away from the room. */
	readonly rises: readonly number[];
	/** Why it cannot be taken as it is; none where it can. */
	readonly problems: readonly Problem[];
	/** What was left out, guessed or mended. */
	readonly notes: readonly string[];
}

export type Imported =
	| { readonly ok: true; readonly walls: WallImport }
	| { readonly ok: false; readonly problem: Problem };

/** Ends this near are joined unless another distance is chosen, mm: what hand drawing leaves open without anybody seeing it. */
export const USUAL_REACH = 1;
/** Ends this far apart at most may be joined, mm: more would be a wall. */
export const GREATEST_REACH = 100;
export const LEAST_REACH = 0.001;
/** Other lines shown beside a chain. */
const MOST_OTHERS = 2000;

/** Finds the wall chain wished for. Refuses only what leaves nothing to show. */
export function importWalls(drawing: Drawing, wish: ImportWish = {}): Imported {
	const layer =
		wish.layer === undefined ? likeliestLayer(drawing) : drawing.layers.find(({ name }) => name === wish.layer);
	if (layer === undefined)
		return refused("layer", wish.layer === undefined ? "no layer" : quoted(wish.layer), layersWithLines(drawing));
	if (layer.strokes.length === 0) return refused(layerWords(layer.name), nothingOn(layer), layersWithLines(drawing));
	const unit = unitFor(drawing, layer, wish);
	const reach = wish.reach ?? USUAL_REACH;
	const found = chainsOn(layer, unit.mm, reach);
	const { chains } = found;
	const at = wish.chain ?? 0;
	const chain = chains[at];
	if (chain === undefined) {
		if (chains.length > 0) return refused("chain", String(at + 1), chains.length === 1 ? "1" : `1 to ${chains.length}`);
		return refused(
			"unit",
			`lines up to ${longestText(layer, unit)} on ${layerWords(layer.name)}`,
			"walls of 10 mm and more: choose another unit or scale",
		);
	}
	return { ok: true, walls: taken(drawing, layer, unit, reach, found, at, chain, wish) };
}

function taken(
	{ layers }: Drawing,
	layer: DrawingLayer,
	unit: ChosenUnit,
	reach: number,
	found: LayerChains,
	at: number,
	chain: Chain,
	wish: ImportWish,
): WallImport {
	const { walls, sideGuessed, outline } = oriented(chain, wish.otherSide ?? false);
	const most = chain.closed && walls.length > 1 ? walls.length - 1 : walls.length;
	const usual: readonly [number, number] = [0, (outline?.face ?? most) - 1];
	const [first, last] = wish.walls ?? usual;
	const stretch = stretchOf(walls, chain.closed, first, last);
	const to = laid(stretch ?? walls);
	const lay = (piece: Piece): Piece => ({ ...piece, from: to(piece.from), to: to(piece.to) });
	const taking = (stretch ?? []).map(lay);
	const others = found.chains.filter((other) => other !== chain).flatMap((other) => other.walls);
	return {
		layers: layers.map(({ name, strokes }) => ({ name, lines: strokes.length })),
		layer: layer.name,
		unit,
		reach,
		chains: found.chains,
		chain: at,
		shown: walls.map(lay),
		others: others.slice(0, MOST_OTHERS).map(lay),
		closed: chain.closed,
		first,
		last,
		corners: cornersOf(taking),
		rises: taking.map(riseOf),
		problems: stretchProblems({ walls, closed: chain.closed, first, last, taking, unit }),
		notes: notesOn({ layer, unit, found, chain, reach, walls, sideGuessed, thick: outline?.thick ?? null }),
	};
}

/** Whether a wall of the chain shown is one of those taken. */
export const isTaken = ({ first, last }: Pick<WallImport, "first" | "last">, wall: number): boolean =>
	first <= last ? wall >= first && wall <= last : wall >= first || wall <= last;

/** The walls from one to another; null where there is no such stretch. */
function stretchOf(walls: readonly Piece[], closed: boolean, first: number, last: number): Piece[] | null {
	if (walls[first] === undefined || walls[last] === undefined) return null;
	if (first <= last) return walls.slice(first, last + 1);
	return closed ? [...walls.slice(first), ...walls.slice(0, last + 1)] : null;
}

/** To the thousandth of a mm, as job files are kept. */
const kept = (mm: number): number => Math.round(mm * 1000) / 1000 + 0;

function cornersOf(walls: readonly Piece[]): (readonly [number, number])[] {
	const points: Point[] = [...walls.slice(0, 1).map(({ from }) => from), ...walls.map(({ to }) => to)];
	return points.map(({ x, y }) => [kept(x), kept(y)] as const);
}

/** What bows to the left bows away from the room. */
const riseOf = (wall: Piece): number => kept(sagittaOf(wall));

/** A layer that is called after walls, else the one with the most lines. */
function likeliestLayer({ layers }: Drawing): DrawingLayer | undefined {
	const drawn = layers.filter(({ strokes }) => strokes.length > 0);
	const named = (test: (name: string) => boolean) => drawn.find(({ name }) => test(name.toLowerCase()));
	return (
		named((name) => name === "walls" || name === "wall") ??
		named((name) => name.includes("wall")) ??
		drawn.toSorted((a, b) => b.strokes.length - a.strokes.length)[0] ??
		layers[0]
	);
}

function layersWithLines({ layers }: Drawing): string {
	const names = layers.filter(({ strokes }) => strokes.length > 0).map(({ name }) => layerWords(name));
	if (names.length === 0) return "a drawing with straight lines or arcs of circles on one of its layers";
	return `one that has lines: ${names.slice(0, MOST_NAMED).join(", ")}${names.length > MOST_NAMED ? ` and ${names.length - MOST_NAMED} more` : ""}`;
}

const MOST_NAMED = 8;

function nothingOn({ leftOut }: DrawingLayer): string {
	const what = leftOut.map(
		({ what: words, count, place }) => `${count === 1 ? "" : `${count} times `}${words} (${place})`,
	);
	return what.length === 0 ? "nothing" : `no line to use, only ${what.slice(0, 3).join("; ")}`;
}

/** What a layer is called, for people. */
export const layerWords = (name: string): string => (name === "" ? "no layer" : `layer ${quoted(name)}`);

const quoted = (name: string): string => (name.length > 40 ? `"${name.slice(0, 39)}…"` : `"${name}"`);

function longestText({ strokes }: DrawingLayer, { mm }: ChosenUnit): string {
	const size = Math.max(
		...strokes.map(({ points }) => {
			const [a, b] = [points[0] as Point, points.at(-1) as Point];
			return Math.hypot(b.x - a.x, b.y - a.y) * mm;
		}),
	);
	return `${Number(size.toPrecision(2))} mm long`;
}

const refused = (path: string, found: string, allowed: string): Imported => ({
	ok: false,
	problem: { path, found, allowed },
});
