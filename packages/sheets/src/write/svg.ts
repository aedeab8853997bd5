import { BOLD_FILES } from "../fonts/bold.ts";
import { REGULAR_FILES } from "../fonts/regular.ts";
import { SUBSETS } from "../fonts/widths.ts";
import { CAPITAL, shape } from "../lettering/shape.ts";
import { stepsOf } from "../paper/arcs.ts";
import {
	type Item,
	LAYERS,
	type Layer,
	type Mark,
	type Page,
	type PathItem,
	type PathVertex,
	type Stroke,
	type TextItem,
} from "../paper/drawing.ts";
import { hatchLines } from "../paper/hatching.ts";
import { DASHES, INKS, type Ink, PENS } from "../paper/pens.ts";
import { heightOf, widthOf } from "../paper/place.ts";

const FAMILY = "Baywright Sans";

/** A page as an SVG of its own, true to size, each layer a group of its name, with the letters that it uses. Curves are arcs. */
export function writeSvg(page: Page, title: string): string {
	const { width, height } = page.size;
	const windows = page.items.flatMap((item) => (item.kind === "window" ? [item] : []));
	const clips = windows.map(({ hole }, i) => {
		const place = `x="${mm(hole.left)}" y="${mm(hole.top)}" width="${mm(widthOf(hole))}" height="${mm(heightOf(hole))}"`;
		return `<clipPath id="hole-${i}"><rect ${place}/></clipPath>`;
	});
	const groups = LAYERS.map((layer) => {
		const drawn = page.items.flatMap((item) => itemIn(layer, item, windows.indexOf(item as never)));
		return drawn.length === 0 ? "" : `<g id="${layer}">\n${drawn.join("\n")}\n</g>\n`;
	});
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" fill="none">\n`,
		`<title>${escaped(title)}</title>\n`,
		`<defs>\n<style>\n${fontFaces(page)}text{font-family:"${FAMILY}","Noto Sans",sans-serif;font-kerning:none;font-variant-ligatures:none;white-space:pre;text-rendering:geometricPrecision}\n</style>\n${clips.join("\n")}\n</defs>\n`,
		`<rect width="${mm(width)}" height="${mm(height)}" fill="${INKS.white}"/>\n`,
		...groups,
		"</svg>\n",
	].join("");
}

function itemIn(layer: Layer, item: Item, window: number): string[] {
	if (item.kind !== "window") return item.layer === layer ? markSvg(item) : [];
	const inside = item.items.filter((each) => each.layer === layer).flatMap(markSvg);
	if (inside.length === 0) return [];
	const { hole, from, across, down } = item;
	const matrix = [across, 0, 0, down, hole.left - from.x * across, hole.top - from.y * down].map(mm).join(" ");
	return [`<g clip-path="url(#hole-${window})"><g transform="matrix(${matrix})">`, ...inside, "</g></g>"];
}

function markSvg(item: Mark): string[] {
	switch (item.kind) {
		case "path":
			return [`<path d="${pathData(item.vertices, item.closed)}"${scaleOf(item)}${look(item.stroke, item.fill)}/>`];
		case "circle":
			return [
				`<circle cx="${mm(item.centre.x)}" cy="${mm(item.centre.y)}" r="${mm(item.radius)}"${look(item.stroke, item.fill)}/>`,
			];
		case "hatch": {
			const lines = hatchLines(item).map(([a, b]) => `M${mm(a.x)} ${mm(a.y)}L${mm(b.x)} ${mm(b.y)}`);
			return lines.length === 0 ? [] : [`<path class="hatch" d="${lines.join("")}"${look(item.stroke, undefined)}/>`];
		}
		case "text":
			return item.text === "" ? [] : [textSvg(item)];
	}
}

/** For whoever takes walls from the drawing. */
const scaleOf = ({ scale }: PathItem): string => (scale === undefined ? "" : ` data-scale="${scale}"`);

/** The large-arc flag of SVG is for more than half a turn; its sweep flag is for clockwise as seen. */
function pathData(vertices: readonly PathVertex[], closed: boolean): string {
	const first = vertices[0];
	if (first === undefined) return "";
	const steps = stepsOf(vertices, closed).map((step) => {
		const end = `${mm(step.to.x)} ${mm(step.to.y)}`;
		if (step.kind === "line") return `L${end}`;
		const { radius, sweep } = step.arc;
		return `A${mm(radius)} ${mm(radius)} 0 ${Math.abs(sweep) > Math.PI ? 1 : 0} ${sweep < 0 ? 1 : 0} ${end}`;
	});
	return `M${mm(first.at.x)} ${mm(first.at.y)}${steps.join("")}${closed ? "Z" : ""}`;
}

function look(stroke: Stroke | undefined, fill: Ink | undefined): string {
	const filled = fill === undefined ? "" : ` fill="${INKS[fill]}"`;
	if (stroke === undefined) return filled;
	const dashes = DASHES[stroke.dash ?? "continuous"];
	const dash = dashes.length === 0 ? "" : ` stroke-dasharray="${dashes.join(" ")}"`;
	return `${filled} stroke="${INKS[stroke.ink ?? "black"]}" stroke-width="${PENS[stroke.pen]}"${dash}`;
}

/** Every run says how long it is, so that a reader without these letters keeps it in its place all the same. */
function textSvg({ at: place, text, height, bold, align, turn, ink }: TextItem): string {
	const { width, runs, strokes } = shape(text, bold);
	const em = height / CAPITAL;
	const left = align === "left" ? 0 : align === "centre" ? -width / 2 : -width;
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	const matrix = [cos, -sin, sin, cos].map((each) => String(Number(each.toFixed(6)))).join(" ");
	const where =
		turn === 0 ? `translate(${mm(place.x)} ${mm(place.y)})` : `matrix(${matrix} ${mm(place.x)} ${mm(place.y)})`;
	const weight = bold ? ` font-weight="700"` : "";
	const letters = runs.map((run, i) => {
		const end = runs[i + 1];
		const long =
			(end !== undefined && strokes.length === 0 && end.y === run.y && end.size === run.size
				? end.x
				: run.x + runWidth(run.text, bold, run.size)) - run.x;
		const size = mm(em * run.size);
		return `<text x="${mm((left + run.x) * em)}" y="${mm(-run.y * em)}" font-size="${size}"${weight} textLength="${mm(long * em)}" lengthAdjust="spacingAndGlyphs" xml:space="preserve">${escaped(run.text)}</text>`;
	});
	const lines = strokes.map(({ width: wide, points }) => {
		const data = points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${mm((left + x) * em)} ${mm(-y * em)}`).join("");
		return `<path d="${data}" fill="none" stroke="${INKS[ink]}" stroke-width="${mm(wide * em)}"/>`;
	});
	const isComposed = strokes.length > 0 || runs.length > 1;
	const label = isComposed ? ` role="img" aria-label="${escaped(text)}"` : "";
	return `<g transform="${where}" fill="${INKS[ink]}"${label}>${letters.join("")}${lines.join("")}</g>`;
}

const runWidth = (text: string, bold: boolean, size: number): number => shape(text, bold).width * size;

/** The parts of the font that the page has letters of. */
function fontFaces(page: Page): string {
	const used = new Set<string>();
	for (const item of page.items) {
		const marks = item.kind === "window" ? item.items : [item];
		for (const mark of marks) {
			if (mark.kind !== "text") continue;
			for (const { subset } of shape(mark.text, mark.bold).runs) used.add(`${mark.bold ? 1 : 0} ${subset}`);
		}
	}
	return [...used]
		.sort()
		.map((each) => {
			const [bold, subset] = each.split(" ").map(Number) as [number, number];
			const file = (bold === 1 ? BOLD_FILES : REGULAR_FILES)[subset] as string;
			return `@font-face{font-family:"${FAMILY}";font-weight:${bold === 1 ? 700 : 400};src:url(data:font/woff;base64,${file}) format("woff");unicode-range:${RANGES[SUBSETS[subset] as (typeof SUBSETS)[number]]}}\n`;
		})
		.join("");
}

/** Which characters each part is asked for. Source: the font's own parts. */
const RANGES: Readonly<Record<(typeof SUBSETS)[number], string>> = {
	latin:
		"U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215",
	"latin-ext":
		"U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF",
	greek: "U+0370-03FF",
	cyrillic: "U+0400-045F,U+0490-0491,U+04B0-04B1,U+2116",
};

/** To the ten-thousandth of a mm. */
const mm = (value: number): string => String(Number(value.toFixed(4)));

const escaped = (text: string): string =>
	[...text]
		.map((each) =>
			each === "&" ? "&amp;" : each === "<" ? "&lt;" : each === ">" ? "&gt;" : each === '"' ? "&quot;" : each,
		)
		.filter((each) => each >= " ")
		.join("");
