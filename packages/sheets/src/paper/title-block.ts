import { SIZES, shortened } from "../lettering/measure.ts";
import type { Item } from "./drawing.ts";
import { line, rectangle, text } from "./marks.ts";
import { at, type Box, boxAt } from "./place.ts";

/** mm. Source: ISO 7200:2004, a title block 180 wide, which is what is left of A4 inside its frame. */
export const TITLE_WIDTH = 180;
export const TITLE_HEIGHT = 27;

/** What a title block says. Source: ISO 7200:2004, the fields that it has everyone give, and of the others those of use here. */
export interface TitleBlock {
	/** Left empty to be filled in by hand, like the next two. */
	readonly owner: string;
	readonly madeBy: string;
	readonly approvedBy: string;
	readonly title: string;
	/** Second line of the title. */
	readonly supplement: string;
	/** Kind of document. */
	readonly kind: string;
	/** Identification number. */
	readonly number: string;
	/** Date of issue, year first; empty to be filled in by hand. */
	readonly date: string;
	/** `1:20`, `1:1`; a dash where nothing is to scale. */
	readonly scale: string;
	readonly paper: string;
	/** Unit of all figures: `mm`. */
	readonly unit: string;
	/** From 1. */
	readonly sheet: number;
	readonly sheets: number;
}

const ROW = TITLE_HEIGHT / 3;
const SIDE = 1.5;

export function titleBlockItems(block: TitleBlock, box: Box): Item[] {
	const fields: readonly (readonly [name: string, value: string, left: number, row: number, width: number])[] = [
		["Kind of document", block.kind, 90, 0, 54],
		["Number", block.number, 144, 0, 36],
		["Scale", block.scale, 90, 1, 16],
		["Paper", block.paper, 106, 1, 16],
		["Figures in", block.unit, 122, 1, 16],
		["Date of issue", block.date, 138, 1, 26],
		["Sheet", `${block.sheet} / ${block.sheets}`, 164, 1, 16],
		["Owner", block.owner, 0, 2, 60],
		["Made by", block.madeBy, 60, 2, 60],
		["Approved by", block.approvedBy, 120, 2, 60],
	];
	const narrow = { pen: "narrow" } as const;
	const { left, top } = box;
	return [
		rectangle("PAPER", box, { stroke: { pen: "heavy" }, fill: "white" }),
		fieldName("Title", left, top),
		text(at(left + SIDE, top + 9.6), shortened(block.title, 90 - 2 * SIDE, SIZES.title, true), {
			height: SIZES.title,
			bold: true,
			layer: "PAPER",
		}),
		text(at(left + SIDE, top + 15.6), shortened(block.supplement, 90 - 2 * SIDE, SIZES.usual), {
			height: SIZES.usual,
			ink: "grey",
			layer: "PAPER",
		}),
		...fields.flatMap(([name, value, from, row, width]) =>
			fieldItems(name, value, boxAt(left + from, top + row * ROW, width, ROW)),
		),
		...[1, 2].map((row) =>
			line("PAPER", at(left + (row === 1 ? 90 : 0), top + row * ROW), at(box.right, top + row * ROW), narrow),
		),
		...fields
			.filter(([, , from]) => from > 0)
			.map(([, , from, row]) =>
				line("PAPER", at(left + from, top + row * ROW), at(left + from, top + (row + 1) * ROW), narrow),
			),
	];
}

function fieldItems(name: string, value: string, box: Box): Item[] {
	const words = shortened(value, box.right - box.left - 2 * SIDE, SIZES.usual);
	return [
		fieldName(name, box.left, box.top),
		...(words === ""
			? []
			: [text(at(box.left + SIDE, box.bottom - 1.7), words, { height: SIZES.usual, layer: "PAPER" })]),
	];
}

const fieldName = (name: string, left: number, top: number): Item =>
	text(at(left + SIDE, top + 2.9), name, { height: 1.5, ink: "grey", layer: "PAPER" });
