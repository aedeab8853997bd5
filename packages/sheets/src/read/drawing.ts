import { foundText, type Problem } from "@baywright/setout";
import type { Stroke } from "./stroke.ts";

/** What a drawing file holds that walls could be made of. */
export interface Drawing {
	readonly kind: "dxf" | "svg";
	/** What one unit of it is, as the file says; null where it does not. */
	readonly unit: FileUnit | null;
	/** By name, in the order in which they are first used. */
	readonly layers: readonly DrawingLayer[];
}

export interface FileUnit {
	/** mm. */
	readonly mm: number;
	/** Where the file says so: `$INSUNITS is 4 (millimetres)`. */
	readonly source: string;
}

export interface DrawingLayer {
	/** "" for what lies on none. */
	readonly name: string;
	readonly strokes: readonly Stroke[];
	readonly leftOut: readonly LeftOut[];
}

/** Things on a layer that no wall can be made of. */
export interface LeftOut {
	/** What and why: `a spline: allowed are straight lines and arcs of circles`. */
	readonly what: string;
	readonly count: number;
	/** Where the first of them stands in the file. */
	readonly place: string;
}

export type ReadDrawing =
	| { readonly ok: true; readonly drawing: Drawing }
	| { readonly ok: false; readonly problem: Problem };

export const unread = (path: string, found: string, allowed: string): ReadDrawing => ({
	ok: false,
	problem: { path, found, allowed },
});

/** The first letters of a text, to show what was found. */
export const beginning = (text: string): string => foundText(text.trim().slice(0, 60));

/** Gathers what lies on each layer. */
export class LayerSorter {
	readonly #layers = new Map<string, Gathered>();

	add(layer: string, stroke: Stroke): void {
		if (stroke.points.every(({ x, y, bulge }) => isFigure(x) && isFigure(y) && isFigure(bulge)))
			this.#at(layer).strokes.push(stroke);
		else
			this.leaveOut(
				layer,
				"a line with a figure that is no number, or one out of reach: allowed are numbers",
				stroke.place,
			);
	}

	leaveOut(layer: string, what: string, place: string): void {
		const { leftOut } = this.#at(layer);
		const known = leftOut.get(what);
		leftOut.set(what, known === undefined ? { what, place, count: 1 } : { ...known, count: known.count + 1 });
	}

	get layers(): DrawingLayer[] {
		return [...this.#layers].map(([name, { strokes, leftOut }]) => ({ name, strokes, leftOut: [...leftOut.values()] }));
	}

	#at(layer: string): Gathered {
		const known: Gathered = this.#layers.get(layer) ?? { strokes: [], leftOut: new Map() };
		this.#layers.set(layer, known);
		return known;
	}
}

/** Beyond this a figure loses the digits that a wall would need. */
const isFigure = (value: number): boolean => Math.abs(value) < 1e12;

interface Gathered {
	readonly strokes: Stroke[];
	readonly leftOut: Map<string, LeftOut>;
}
