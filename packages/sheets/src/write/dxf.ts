import {
	DxfWriter,
	LWPolylineFlags,
	point2d,
	point3d,
	TextHorizontalAlignment,
	TextVerticalAlignment,
	Units,
} from "@tarikjabiri/dxf";
import {
	type Align,
	type CircleItem,
	type Figure,
	LAYERS,
	type Layer,
	type Mark,
	type PathItem,
	type TextItem,
} from "../paper/drawing.ts";
import { hatchLines } from "../paper/hatching.ts";
import type { PaperPoint } from "../paper/place.ts";

/** A colour for each layer, by its number in DXF: told apart on a dark screen and a light one. */
const COLOURS: Readonly<Record<Layer, number>> = {
	WALLS: 7,
	OPENINGS: 4,
	STACK: 6,
	BRACKETS: 30,
	TRACK: 5,
	CUTS: 1,
	DIMENSIONS: 8,
	TEXT: 7,
	PAPER: 9,
};

/**
 * A figure in mm of the room, y up, each layer by its name. Arcs are bulges of LWPOLYLINE, whole circles CIRCLE; tones are left out; dimensions are
 * lines and text, because readers drop DIMENSION entities that come without a block.
 */
export function writeDxf({ scale, items }: Figure): string {
	const dxf = new DxfWriter();
	dxf.setUnits(Units.Millimeters);
	dxf.setVariable("$LASTSAVEDBY", { 1: "Baywright" });
	dxf.setVariable("$MEASUREMENT", { 70: 1 });
	const used = LAYERS.filter((layer) => items.some((item) => item.layer === layer));
	for (const layer of used) dxf.addLayer(layer, COLOURS[layer], "CONTINUOUS");
	for (const layer of new Set(items.flatMap((item) => (item.kind === "hatch" ? [item.layer] : []))))
		dxf.addLayer(hatchLayer(layer), COLOURS[layer], "CONTINUOUS");
	for (const item of items) addMark(dxf, item, scale);
	return `${dxf.stringify()}\n`;
}

function addMark(dxf: DxfWriter, item: Mark, scale: number): void {
	const put = (p: PaperPoint) => ({ x: p.x * scale, y: -p.y * scale });
	const layerName = item.layer;
	switch (item.kind) {
		case "text":
			addText(dxf, item, scale);
			return;
		case "circle":
			if (isDrawn(item)) dxf.addCircle(flat(put(item.centre)), item.radius * scale, { layerName });
			return;
		case "hatch":
			for (const [a, b] of hatchLines(item))
				dxf.addLine(flat(put(a)), flat(put(b)), { layerName: hatchLayer(item.layer) });
			return;
		case "path": {
			if (!isDrawn(item)) return;
			const { vertices, closed } = item;
			const [first, second] = vertices;
			if (vertices.length === 2 && first?.bulge === 0 && second !== undefined && !closed) {
				dxf.addLine(flat(put(first.at)), flat(put(second.at)), { layerName });
				return;
			}
			dxf.addLWPolyline(
				vertices.map(({ at, bulge }, i) => {
					const { x, y } = put(at);
					const leads = closed || i < vertices.length - 1;
					return leads && bulge !== 0 ? { point: point2d(x, y), bulge } : { point: point2d(x, y) };
				}),
				{ layerName, flags: closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
			);
		}
	}
}

/** Hatching is many short lines: on a layer of its own it stands in nobody's way who takes the walls from the drawing. */
const hatchLayer = (layer: Layer): string => `${layer}-HATCH`;

/** What is filled black, as brackets and arrowheads are, has its outline; a tone alone is no drawing. */
const isDrawn = ({ stroke, fill }: PathItem | CircleItem): boolean => stroke !== undefined || fill === "black";

const flat = ({ x, y }: { readonly x: number; readonly y: number }) => point3d(x, y, 0);

const ALIGNMENTS: Readonly<Record<Align, TextHorizontalAlignment>> = {
	left: TextHorizontalAlignment.Left,
	centre: TextHorizontalAlignment.Center,
	right: TextHorizontalAlignment.Right,
};

function addText(dxf: DxfWriter, { layer, at: place, text, height, align, turn }: TextItem, scale: number): void {
	const at = point3d(place.x * scale, -place.y * scale, 0);
	const horizontalAlignment = ALIGNMENTS[align];
	// An alignment of its own is only read together with a second point.
	const aligned =
		align === "left"
			? {}
			: { horizontalAlignment, verticalAlignment: TextVerticalAlignment.BaseLine, secondAlignmentPoint: at };
	dxf.addText(at, height * scale, oneLine(text), { layerName: layer, rotation: (turn * 180) / Math.PI, ...aligned });
}

/** A value of DXF ends with its line; `%%` and `^` begin codes of their own. */
const oneLine = (text: string): string =>
	text
		.replace(/\p{Cc}+/gu, " ")
		.replaceAll("%%", "% %")
		.replaceAll("^", "^ ");
