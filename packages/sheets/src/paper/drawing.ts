import type { Dash, Ink, Pen } from "./pens.ts";
import type { Box, PaperPoint } from "./place.ts";
import type { TableData } from "./table.ts";

/** What a part of a drawing shows: the groups of an SVG, drawn in this order, and the layers of a DXF. */
export const LAYERS = [
	"WALLS",
	"OPENINGS",
	"STACK",
	"BRACKETS",
	"TRACK",
	"CUTS",
	"DIMENSIONS",
	"TEXT",
	"PAPER",
] as const;
export type Layer = (typeof LAYERS)[number];

/** How a line is drawn. Left out: continuous, black. */
export interface Stroke {
	readonly pen: Pen;
	readonly dash?: Dash;
	readonly ink?: Ink;
}

/** A place on a path, and how the path goes on from it. */
export interface PathVertex {
	readonly at: PaperPoint;
	/** tan(angle / 4) of the arc to the next vertex, + counter-clockwise as seen on the paper; 0 = straight. Source: DXF, LWPOLYLINE group 42. */
	readonly bulge: number;
}

export interface PathItem {
	readonly kind: "path";
	readonly layer: Layer;
	readonly vertices: readonly PathVertex[];
	readonly closed: boolean;
	/** mm of the room for each mm of the paper, where a line stands for the room itself. */
	readonly scale?: number;
	/** Left out: no line. */
	readonly stroke?: Stroke;
	/** Left out: not filled. */
	readonly fill?: Ink;
}

export interface CircleItem {
	readonly kind: "circle";
	readonly layer: Layer;
	readonly centre: PaperPoint;
	/** mm. */
	readonly radius: number;
	readonly stroke?: Stroke;
	readonly fill?: Ink;
}

export type Align = "left" | "centre" | "right";

/** One line of lettering. */
export interface TextItem {
	readonly kind: "text";
	readonly layer: Layer;
	/** On the baseline, at the end or the middle that `align` says. */
	readonly at: PaperPoint;
	readonly text: string;
	/** Of capitals, mm. */
	readonly height: number;
	readonly bold: boolean;
	readonly align: Align;
	/** Direction of the baseline, radians, counter-clockwise as seen on the paper. */
	readonly turn: number;
	readonly ink: Ink;
}

/** Lines that fill an outline, at one distance and one angle. */
export interface HatchItem {
	readonly kind: "hatch";
	readonly layer: Layer;
	readonly outline: readonly PathVertex[];
	/** mm between lines. */
	readonly spacing: number;
	/** Radians, counter-clockwise as seen on the paper. */
	readonly angle: number;
	readonly stroke: Stroke;
}

/** A part of a larger drawing, seen through a hole in the paper. */
export interface WindowItem {
	readonly kind: "window";
	readonly hole: Box;
	/** The place of the drawing that comes to lie in the hole's upper left corner. */
	readonly from: PaperPoint;
	/** Paper mm for each mm of the drawing. */
	readonly across: number;
	readonly down: number;
	readonly items: readonly Mark[];
}

/** Everything but a window. */
export type Mark = PathItem | CircleItem | TextItem | HatchItem;
export type Item = Mark | WindowItem;

/** A size of paper, mm. */
export interface PaperSize {
	readonly width: number;
	readonly height: number;
}

export interface Page {
	readonly size: PaperSize;
	/** What it is called in a reader of PDF: `BT-1`. */
	readonly label: string;
	/** Nothing but this page's own border lies outside it. */
	readonly inside: Box;
	readonly items: readonly Item[];
}

/** A drawing for other programs: in mm of the room, not of the paper. */
export interface Figure {
	/** For a file's name: `plan`, `bend-1`. */
	readonly name: string;
	/** mm of the room for each mm drawn. */
	readonly scale: number;
	readonly items: readonly Mark[];
}

export type SheetName = "fitting" | "bends" | "strips" | "survey" | "order" | "workroom" | "hand-over";

/** One sheet, of one or more pages: composed once, written by any writer. */
export interface Sheet {
	readonly name: SheetName;
	/** Id of the bay it is of. */
	readonly bay: string;
	/** For people. */
	readonly title: string;
	readonly pages: readonly Page[];
	readonly figures: readonly Figure[];
	readonly tables: readonly TableData[];
	/** It only serves at its own size. */
	readonly trueSize: boolean;
}
