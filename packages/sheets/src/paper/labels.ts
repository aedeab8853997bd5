import { LEADING, SIZES, textWidth } from "../lettering/measure.ts";
import { CAPITAL, REACH_DOWN, REACH_UP } from "../lettering/shape.ts";
import { collide, cornersOfBox } from "./collide.ts";
import type { Layer, Mark } from "./drawing.ts";
import { line, text } from "./marks.ts";
import { at, type Box, grown, isWithin, overlap, type PaperPoint } from "./place.ts";

/** Words that belong to a place on the drawing. */
export interface LabelWish {
	readonly anchor: PaperPoint;
	/** The first is set bold. */
	readonly lines: readonly string[];
	readonly layer?: Layer;
	readonly height?: number;
	/** Where it would best stand, as seen from its place; radians, counter-clockwise. */
	readonly towards?: number;
	/** Said elsewhere, too: left out where it would stand worse than this, as if it were so far off, mm. */
	readonly atMost?: number;
	/** The same, but where it is left out it is still to be said elsewhere. */
	readonly elseLeft?: number;
}

export interface LabelRoom {
	/** Where labels may stand. */
	readonly area: Box;
	/** What they must not cover. */
	readonly taken: readonly Box[];
	/** What they must not cover and is not upright. */
	readonly shapes?: readonly (readonly PaperPoint[])[];
	/** Places along lines that they had better not cover. */
	readonly lines: readonly PaperPoint[];
}

export interface PlacedLabels {
	readonly items: readonly Mark[];
	/** Labels for which there was no room. */
	readonly left: readonly LabelWish[];
}

/** Free round a label, mm. */
const CLEAR = 1;
const DISTANCES = [5, 8, 12, 17, 23, 30, 38, 47, 57, 68, 80, 95, 110];
const DIRECTIONS = Array.from({ length: 16 }, (_, i) => (i * Math.PI) / 8);

/** Standing on the wrong side is as bad as standing twice this much further off, mm. */
const AWAY = 8;

/** Letters that all but touch a line read as badly as those on it, mm. */
const OFF_LINES = 0.4;

/** Covering one place of a line is as bad as standing this much further off, mm. */
const LINE_COVERED = 20;

/** Puts each label near its place, with a thin line to it, so that none covers another, what is taken, or the line to another. */
export function placeLabels(
	wishes: readonly LabelWish[],
	{ area, taken, shapes = [], lines }: LabelRoom,
): PlacedLabels {
	const boxes = [...taken];
	const leaders: (readonly [PaperPoint, PaperPoint])[] = [];
	const items: Mark[] = [];
	const left: LabelWish[] = [];
	for (const wish of wishes) {
		const best = bestPlace(wish, area, boxes, shapes, leaders, lines);
		if (best === null) {
			if (wish.atMost === undefined) left.push(wish);
			continue;
		}
		boxes.push(best.box);
		leaders.push(best.leader);
		items.push(...labelItems(wish, best));
	}
	return { items, left };
}

interface LabelPlace {
	readonly box: Box;
	readonly leader: readonly [PaperPoint, PaperPoint];
}

function bestPlace(
	wish: LabelWish,
	area: Box,
	boxes: readonly Box[],
	shapes: readonly (readonly PaperPoint[])[],
	leaders: readonly (readonly [PaperPoint, PaperPoint])[],
	lines: readonly PaperPoint[],
): LabelPlace | null {
	const { width, height } = sizeOf(wish);
	let best: LabelPlace | null = null;
	let least = wish.atMost ?? wish.elseLeft ?? Infinity;
	for (const far of DISTANCES) {
		if (far >= least) break;
		for (const direction of DIRECTIONS) {
			const place = placeAt(wish.anchor, direction, far, width, height);
			const clear = grown(place.box, CLEAR);
			if (!isWithin(clear, area)) continue;
			if (boxes.some((box) => overlap(box, clear) || cuts(place.leader, box))) continue;
			if (shapes.some((shape) => collide(shape, cornersOfBox(clear)) || collide(shape, place.leader))) continue;
			if (leaders.some((leader) => cuts(leader, clear) || crossing(leader, place.leader))) continue;
			const liked = far + (wish.towards === undefined ? 0 : AWAY * (1 - Math.cos(direction - wish.towards)));
			if (liked >= least) continue;
			const covered = countIn(lines, grown(place.box, OFF_LINES), (least - liked) / LINE_COVERED);
			const cost = liked + covered * LINE_COVERED;
			if (cost >= least) continue;
			least = cost;
			best = place;
		}
	}
	return best;
}

function placeAt(anchor: PaperPoint, direction: number, far: number, width: number, height: number): LabelPlace {
	const [ux, uy] = [Math.cos(direction), -Math.sin(direction)];
	const end = at(anchor.x + ux * far, anchor.y + uy * far);
	// The label hangs on the end of its line by the side or corner that faces the place.
	const left = end.x - (width * (1 - snapped(ux))) / 2;
	const top = end.y - (height * (1 - snapped(uy))) / 2;
	const box = { left, top, right: left + width, bottom: top + height };
	const short = 1.2 / far;
	return {
		box,
		leader: [at(anchor.x + ux * far * short, anchor.y + uy * far * short), at(end.x - ux * 0.4, end.y - uy * 0.4)],
	};
}

const snapped = (part: number): number => (part > 0.3 ? 1 : part < -0.3 ? -1 : 0);

const heightIn = ({ height = SIZES.usual }: LabelWish): number => height;

/** Of its letters, as the box of a text is. */
function sizeOf(wish: LabelWish): { readonly width: number; readonly height: number } {
	const height = heightIn(wish);
	const width = Math.max(...wish.lines.map((each, i) => textWidth(each, height, i === 0)));
	const em = height / CAPITAL;
	return { width, height: (wish.lines.length - 1) * height * LEADING + (REACH_UP + REACH_DOWN) * em };
}

function labelItems(wish: LabelWish, { box, leader }: LabelPlace): Mark[] {
	const height = heightIn(wish);
	const base = box.top + (REACH_UP * height) / CAPITAL;
	const isRight = leader[0].x > box.right;
	return [
		line("DIMENSIONS", leader[0], leader[1], { pen: "narrow", ink: "grey" }),
		...wish.lines.map((words, i) =>
			text(at(isRight ? box.right : box.left, base + i * height * LEADING), words, {
				height,
				bold: i === 0,
				align: isRight ? "right" : "left",
				layer: wish.layer ?? "TEXT",
			}),
		),
	];
}

/** How many of the places lie in a box, counted no further than makes it worse than the best so far. */
function countIn(places: readonly PaperPoint[], box: Box, most: number): number {
	let count = 0;
	for (const p of places) if (isIn(p, box) && ++count > most) break;
	return count;
}

const isIn = ({ x, y }: PaperPoint, { left, top, right, bottom }: Box): boolean =>
	x > left && x < right && y > top && y < bottom;

/** Whether a straight line goes through a box. */
function cuts([a, b]: readonly [PaperPoint, PaperPoint], { left, top, right, bottom }: Box): boolean {
	let [from, to] = [0, 1];
	for (const [start, step, low, high] of [
		[a.x, b.x - a.x, left, right],
		[a.y, b.y - a.y, top, bottom],
	] as const) {
		if (step === 0) {
			if (start <= low || start >= high) return false;
			continue;
		}
		const [one, other] = [(low - start) / step, (high - start) / step];
		from = Math.max(from, Math.min(one, other));
		to = Math.min(to, Math.max(one, other));
	}
	return from < to;
}

function crossing([a, b]: readonly [PaperPoint, PaperPoint], [c, d]: readonly [PaperPoint, PaperPoint]): boolean {
	const side = (p: PaperPoint, q: PaperPoint, r: PaperPoint) =>
		Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
	return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}
