import type { Align, CircleItem, Layer, PathItem, PathVertex, Stroke, TextItem } from "./drawing.ts";
import type { Ink } from "./pens.ts";
import { at, type Box, type PaperPoint } from "./place.ts";

export const line = (layer: Layer, from: PaperPoint, to: PaperPoint, stroke: Stroke): PathItem => ({
	kind: "path",
	layer,
	vertices: [vertex(from), vertex(to)],
	closed: false,
	stroke,
});

export const vertex = (place: PaperPoint, bulge = 0): PathVertex => ({ at: place, bulge });

export interface Look {
	readonly stroke?: Stroke;
	readonly fill?: Ink;
}

export const path = (layer: Layer, vertices: readonly PathVertex[], look: Look): PathItem => ({
	kind: "path",
	layer,
	vertices,
	closed: false,
	...look,
});

export const area = (layer: Layer, vertices: readonly PathVertex[], look: Look): PathItem => ({
	...path(layer, vertices, look),
	closed: true,
});

export const polygon = (layer: Layer, points: readonly PaperPoint[], look: Look): PathItem =>
	area(
		layer,
		points.map((each) => vertex(each)),
		look,
	);

export const rectangle = (layer: Layer, { left, top, right, bottom }: Box, look: Look): PathItem =>
	polygon(layer, [at(left, top), at(right, top), at(right, bottom), at(left, bottom)], look);

export const circle = (layer: Layer, centre: PaperPoint, radius: number, look: Look): CircleItem => ({
	kind: "circle",
	layer,
	centre,
	radius,
	...look,
});

export interface TextStyle {
	readonly height: number;
	readonly bold?: boolean;
	readonly align?: Align;
	readonly turn?: number;
	readonly ink?: Ink;
	readonly layer?: Layer;
}

export const text = (place: PaperPoint, words: string, style: TextStyle): TextItem => ({
	kind: "text",
	layer: style.layer ?? "TEXT",
	at: place,
	text: words,
	height: style.height,
	bold: style.bold ?? false,
	align: style.align ?? "left",
	turn: style.turn ?? 0,
	ink: style.ink ?? "black",
});
