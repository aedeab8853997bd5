import type { Selection, Size } from "@baywright/editor";
import { type BracketLoad, formatMass, type LoadStanding, standingOf } from "@baywright/setout";
import type { Pen } from "../canvas/paint/pen.ts";
import type { Palette } from "../canvas/palette.ts";
import { fontOf, type Measure } from "../canvas/text.ts";
import type { StripLayout } from "./layout.ts";
import { endsOf, marksOf } from "./paint.ts";

/** Which of a bracket's loads is drawn. */
export type LoadShown = keyof Pick<BracketLoad, "greatest" | "least" | "drawn" | "stacked">;

/** A bracket's load, hung under it; one that lifts stands up instead. px. */
export interface LoadBar {
	readonly bracket: number;
	/** Its middle, and its whole width. */
	readonly left: number;
	readonly width: number;
	/** Downwards from the base line; less than nought for a lift. */
	readonly length: number;
	/** The load goes further than the bar. */
	readonly cut: boolean;
	readonly standing: LoadStanding;
	/** Null where a greater load beside it takes its place. */
	readonly figure: string | null;
}

export interface StripLoads {
	readonly bars: readonly LoadBar[];
	/** The line from which bars hang. */
	readonly base: number;
	/** Where a bar reaches the system's limit; null where it states none. */
	readonly limit: number | null;
}

/** px that loads take off the foot of the strip. */
export const LOADS_BAND = 64;

/** px over the base line for what lifts, from it to the limit, and to the end of the longest bar. */
const ABOVE = 12;
const TO_LIMIT = 23;
const LONGEST = 31;

/** Share of the way to the next bracket that a bar takes, and its width at the least and at the most, px. */
const BAR_SHARE = 0.5;
const THINNEST = 3;
const WIDEST = 16;

/** px between two figures. */
const APART = 6;

/** Hangs the loads under their brackets, on a canvas of this size. */
export function hangLoads(strip: StripLayout, size: Size, shown: LoadShown, measure: Measure): StripLoads {
	const { loads, system } = strip.plan;
	const { maxLoad } = system.bracket;
	const marks = placesOf(strip).filter(({ of }) => loads[of] !== undefined);
	const gap = Math.min(...marks.slice(1).map(({ left }, i) => left - (marks[i]?.left ?? 0)), WIDEST / BAR_SHARE);
	const width = Math.max(THINNEST, Math.min(WIDEST, gap * BAR_SHARE));
	const most = Math.max(...loads.map((load) => Math.abs(load[shown])));
	const scale = maxLoad === null ? LONGEST / Math.max(most, 1) : TO_LIMIT / maxLoad;
	const base = size.height - LOADS_BAND + ABOVE;
	const hung = marks.map(({ of, left }) => {
		const kg = (loads[of] as BracketLoad)[shown];
		return { bracket: of, left, kg, text: formatMass(kg), standing: standingAt(kg, maxLoad) };
	});
	const written = figuresThatFit(hung, measure);
	return {
		base,
		limit: maxLoad === null ? null : base + TO_LIMIT,
		bars: hung.map(({ bracket, left, kg, text, standing }, i) => ({
			bracket,
			left,
			width,
			length: Math.max(-ABOVE + 2, Math.min(LONGEST, kg * scale)),
			cut: kg * scale > LONGEST,
			standing,
			figure: written.has(i) ? text : null,
		})),
	};
}

/** One place for each bracket: one at a joint is marked on both pieces, and its load hangs between them. */
function placesOf(strip: StripLayout): { readonly of: number; readonly left: number }[] {
	const marks = marksOf(strip, "bracket");
	return marks.flatMap(({ of, left }, i) => {
		if (marks[i - 1]?.of === of) return [];
		const next = marks[i + 1];
		return [{ of, left: next?.of === of ? (left + next.left) / 2 : left }];
	});
}

const standingAt = (kg: number, limit: number | null): LoadStanding =>
	standingOf({ share: limit === null ? null : kg / limit });

/** The greatest loads are written first; what has no room beside them is left to the table. */
function figuresThatFit(hung: readonly { left: number; kg: number; text: string }[], measure: Measure): Set<number> {
	const halves = hung.map(({ text }) => measure(text, "small") / 2);
	const kept = new Set<number>();
	const greatestFirst = hung.map((_, i) => i).sort((a, b) => Math.abs(kgAt(hung, b)) - Math.abs(kgAt(hung, a)));
	for (const i of greatestFirst) {
		const touches = [...kept].some(
			(k) => Math.abs((hung[i]?.left ?? 0) - (hung[k]?.left ?? 0)) < (halves[i] ?? 0) + (halves[k] ?? 0) + APART,
		);
		if (!touches) kept.add(i);
	}
	return kept;
}

const kgAt = (hung: readonly { kg: number }[], i: number): number => hung[i]?.kg ?? 0;

const COLOURS: Readonly<Record<LoadStanding, keyof Palette>> = {
	within: "track",
	near: "warn",
	over: "cut",
	"not-checked": "soft",
};

/** px between the stripes of a bar that is near the limit. */
const STRIPES = 4;

/** Bars told apart by what they are filled with as well: open within the limit, striped near it, solid over it, broken where there is none to hold it to. */
export function paintStripLoads(pen: Pen, strip: StripLayout, { bars, base, limit }: StripLoads): void {
	const { palette, size } = strip;
	paintLines(pen, strip, base, limit);
	pen.font = fontOf("small");
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	for (const bar of bars) {
		if (bar.left < -WIDEST || bar.left > size.width + WIDEST) continue;
		const left = bar.left - bar.width / 2;
		const top = Math.min(base, base + bar.length);
		const height = Math.abs(bar.length);
		pen.strokeStyle = palette[COLOURS[bar.standing]];
		pen.fillStyle = palette[COLOURS[bar.standing]];
		if (bar.standing === "over") pen.fillRect(left, top, bar.width, height);
		else {
			pen.lineWidth = 1.5;
			if (bar.standing === "not-checked") pen.setLineDash([3, 2]);
			pen.strokeRect(left, top, bar.width, height);
			pen.setLineDash([]);
			if (bar.standing === "near")
				for (let at = STRIPES; at < height; at += STRIPES) pen.fillRect(left, top + at, bar.width, 1.5);
		}
		if (bar.cut) pen.fillRect(left - 3, base + bar.length, bar.width + 6, 2);
		if (bar.figure === null) continue;
		pen.fillStyle = bar.standing === "over" || bar.standing === "near" ? palette[COLOURS[bar.standing]] : palette.ink;
		pen.fillText(bar.figure, bar.left, base + LONGEST + 11);
	}
}

/** Under every piece the line that bars hang from, and broken the limit. */
function paintLines(pen: Pen, strip: StripLayout, base: number, limit: number | null): void {
	pen.strokeStyle = strip.palette.soft;
	pen.lineWidth = 1;
	strip.plan.pieces.forEach((piece, i) => {
		const [left, right] = endsOf(strip, piece, i);
		pen.beginPath();
		pen.moveTo(left, base);
		pen.lineTo(right, base);
		pen.stroke();
		if (limit === null) return;
		pen.setLineDash([6, 4]);
		pen.beginPath();
		pen.moveTo(left, limit);
		pen.lineTo(right, limit);
		pen.stroke();
		pen.setLineDash([]);
	});
}

/** The bar of the bracket that is chosen or pointed at. */
export function paintLoadHighlight(
	pen: Pen,
	{ palette }: StripLayout,
	{ bars, base }: StripLoads,
	it: Selection | null,
	alpha: number,
): void {
	const bar = it?.kind === "bracket" ? bars.find(({ bracket }) => bracket === it.index) : undefined;
	if (bar === undefined) return;
	pen.save();
	pen.globalAlpha = alpha;
	pen.fillStyle = palette.track;
	pen.beginPath();
	pen.roundRect(bar.left - WIDEST, base - ABOVE, 2 * WIDEST, LOADS_BAND, 4);
	pen.fill();
	pen.restore();
}

/** The bracket under whose place in the band of loads a pointer is. */
export function loadUnder(
	{ bars, base }: StripLoads,
	at: { readonly left: number; readonly top: number },
): Selection | null {
	if (at.top < base - ABOVE) return null;
	const under = bars
		.map(({ bracket, left }) => ({ bracket, away: Math.abs(left - at.left) }))
		.filter(({ away }) => away <= WIDEST)
		.sort((a, b) => a.away - b.away)[0];
	return under === undefined ? null : { kind: "bracket", index: under.bracket };
}
