import { type Box, boxesOverlap, extentOf, linesCross, type Stroke, strokeEnters } from "./box.ts";

/** What is on screen already, found by place. */
export interface Crowd {
	add(box: Box): void;
	addStroke(stroke: Stroke): void;
	/** Whether nothing lies in `box`. */
	isFree(box: Box): boolean;
	/** Whether `stroke` comes into no box, and a leader across no other. */
	isClear(stroke: Stroke): boolean;
}

/** px: about the size of a label, so that few cells are asked and few things are in each. */
const CELL = 48;

type Thing = { readonly kind: "box"; readonly box: Box } | { readonly kind: "stroke"; readonly stroke: Stroke };

export function createCrowd(): Crowd {
	const cells = new Map<number, Thing[]>();

	function put(thing: Thing, left: number, top: number, right: number, bottom: number): void {
		overCells(left, top, right, bottom, (key) => {
			const cell = cells.get(key);
			if (cell === undefined) cells.set(key, [thing]);
			else cell.push(thing);
			return false;
		});
	}

	/** A long stroke goes in bit by bit: its upright rectangle would fill half the screen. */
	function putStroke(stroke: Stroke): void {
		const thing: Thing = { kind: "stroke", stroke };
		for (const { left, top, right, bottom } of bits(stroke)) put(thing, left, top, right, bottom);
	}

	function some(left: number, top: number, right: number, bottom: number, hit: (thing: Thing) => boolean): boolean {
		return overCells(left, top, right, bottom, (key) => cells.get(key)?.some(hit) ?? false);
	}

	return {
		add(box) {
			const { left, top, right, bottom } = upright(box);
			put({ kind: "box", box }, left, top, right, bottom);
		},
		addStroke: putStroke,
		isFree(box) {
			const { left, top, right, bottom } = upright(box);
			return !some(left, top, right, bottom, (thing) =>
				thing.kind === "box" ? boxesOverlap(box, thing.box) : strokeEnters(box, thing.stroke),
			);
		},
		isClear(stroke) {
			return !bits(stroke).some(({ left, top, right, bottom }) =>
				some(left, top, right, bottom, (thing) =>
					thing.kind === "box"
						? strokeEnters(thing.box, stroke)
						: stroke.leader && thing.stroke.leader && linesCross(stroke, thing.stroke),
				),
			);
		},
	};
}

interface Upright {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

function upright(box: Box): Upright {
	const { width, height } = extentOf(box);
	return { left: box.left - width, top: box.top - height, right: box.left + width, bottom: box.top + height };
}

function bits({ from, to, half }: Stroke): Upright[] {
	const count = Math.max(1, Math.ceil(Math.hypot(to.left - from.left, to.top - from.top) / CELL));
	return Array.from({ length: count }, (_, i) => {
		const left = from.left + ((to.left - from.left) * i) / count;
		const top = from.top + ((to.top - from.top) * i) / count;
		const right = from.left + ((to.left - from.left) * (i + 1)) / count;
		const bottom = from.top + ((to.top - from.top) * (i + 1)) / count;
		return {
			left: Math.min(left, right) - half,
			top: Math.min(top, bottom) - half,
			right: Math.max(left, right) + half,
			bottom: Math.max(top, bottom) + half,
		};
	});
}

/** Cells are numbered row by row; rows are longer than any screen. */
const ROW = 100_003;

/** Goes through the cells under a rectangle until `visit` says true; whether it did. */
function overCells(left: number, top: number, right: number, bottom: number, visit: (key: number) => boolean): boolean {
	const lastRow = Math.floor(bottom / CELL);
	const lastColumn = Math.floor(right / CELL);
	for (let row = Math.floor(top / CELL); row <= lastRow; row++)
		for (let column = Math.floor(left / CELL); column <= lastColumn; column++)
			if (visit(row * ROW + column)) return true;
	return false;
}
