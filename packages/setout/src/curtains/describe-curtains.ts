import { capital } from "../finding/capital.ts";
import type { Finding } from "../finding/finding.ts";
import type { Heading } from "../library/heading.ts";
import type { SensibleFigure } from "./unusual-figures.ts";

type Told = Pick<Finding, "where" | "figures">;
type Figures = Finding["figures"];

/** What headings are called. */
export const HEADING_NAMES: Readonly<Record<Heading, string>> = {
	pencil: "pencil pleat",
	pinch: "pinch pleat",
	goblet: "goblet",
	box: "box pleat",
	wave: "wave",
};

/** "curtain 2", or "the left part of curtain 2" where it parts in the middle. */
export function curtainName(curtain: number | string | undefined, part?: number | string): string {
	const name = `curtain ${Number(curtain ?? 0) + 1}`;
	return part === undefined ? name : `the ${part} part of ${name}`;
}

export function offTrackSentence({ where }: Told, length: (name: string) => string): string {
	const name = capital(curtainName(where.curtain));
	return `${name} is to hang from ${length("from")} to ${length("to")} along the track, which is ${length("length")} long.`;
}

export const notHungSentence = ({ figures }: Told): string =>
	`The track's draw is set to none, so that ${Number(figures.count) === 1 ? "the curtain of this bay does" : `the ${figures.count} curtains of this bay do`} not hang: no stacks, no loads and nothing of cloth in the order.`;

export function overlapSentence({ where, figures }: Told, length: (name: string) => string): string {
	const [first, second] = [curtainName(figures.other), curtainName(where.curtain)];
	return `${capital(first)} and ${second} overlap by ${length("by")}, from ${length("from")} to ${length("to")} along the track.`;
}

export function onBendSentence({ where, figures }: Told, length: (name: string) => string, bend: string): string {
	const name = curtainName(where.curtain, figures.part);
	return `Drawn back, ${name} lies from ${length("from")} to ${length("to")} along the track, where it bends to radius ${length("radius")} ${bend}: a stack there spreads like a fan, and its gliders jam.`;
}

export function stacksMeetSentence({ where, figures }: Told, length: (name: string) => string): string {
	const isOne = figures.other === where.curtain;
	const names = isOne
		? `the two parts of ${curtainName(where.curtain)}`
		: `${curtainName(where.curtain)} and ${curtainName(figures.other)}`;
	return figures.has === undefined
		? `Drawn back, ${names} stand side by side ${length("at")} from the track's left end and take up ${length("takes")} there.`
		: `Drawn back, ${names} take up ${length("takes")} and have ${length("has")} of track: nothing is left clear between them.`;
}

export function overhangsSentence({ where, figures }: Told, length: (name: string) => string): string {
	const name = curtainName(where.curtain, figures.part);
	return `Drawn back, ${name} takes up ${length("takes")} and has ${length("has")} of track: ${length("by")} would hang over its end.`;
}

export function meetOnBendSentence({ where, figures }: Told, length: (name: string) => string, bend: string): string {
	return `${meeting(where.curtain, figures)} ${length("at")} from the track's left end, where it bends to radius ${length("radius")} ${bend}.`;
}

export function overlapStraightSentence(
	{ where, figures }: Told,
	length: (name: string) => string,
	bend: string,
): string {
	const isPair = where.curtain === undefined;
	const who = isPair ? "The pair meets in the middle of the track," : meeting(where.curtain, figures);
	const end = isPair ? "its finished left end, and needs" : "the track's finished left end and need";
	return `${who} ${length("at")} from ${end} ${length("straight")} of straight track there; ${isPair ? "the track" : "it"} bends to radius ${length("radius")} ${bend}.`;
}

function meeting(curtain: number | undefined, figures: Figures): string {
	if (figures.other === curtain) return `The two parts of ${curtainName(curtain)} meet`;
	return `${capital(curtainName(curtain))} and ${curtainName(figures.other)} meet`;
}

export function touchesSentence(
	{ where, figures }: Told,
	length: (name: string) => string,
	wall: string,
	corner: string,
): string {
	const name = curtainName(where.curtain);
	const what =
		figures.what === "wall"
			? `the ${wall}`
			: figures.what === "corner"
				? corner
				: figures.what === "sill"
					? `the sill board of opening ${(where.opening ?? 0) + 1}`
					: `the ${String(figures.what).replace("-", " ")} on the ${wall}`;
	const others = Number(figures.others ?? 0);
	const touches = `The folds of ${name} reach ${length("behind")} behind the track, and ${what} leaves ${length("room")}`;
	const more = others === 1 ? "one more place" : `${others} more places`;
	const all = others === 0 ? "" : `; at ${more} they touch as well, by no more`;
	// How far off the corner a track comes round it hangs on its bend too: the cure is tried, not reckoned.
	if (figures.what === "corner") return `${touches}${all}.`;
	const needed = `projection of ${length("needed")} clears`;
	return others === 0 ? `${touches}; a ${needed} it.` : `${touches}${all}. A ${needed} them all.`;
}

export function unusualTitle(figures: Figures): string {
	return `Unusual ${NAMES[figures.what as SensibleFigure]}`;
}

export function unusualSentence({ where, figures }: Told, length: (name: string) => string): string {
	const what = figures.what as SensibleFigure;
	const of = figures.of ?? (where.curtain === undefined ? "the make-up" : curtainName(where.curtain));
	const unit = UNITS[what];
	const shown = (name: string) => (unit === "length" ? length(name) : `${Number(figures[name])}${unit}`);
	return `The ${NAMES[what]} of ${of} is ${shown("value")}; ${shown("least")} to ${shown("greatest")} is sensible. It is worked with as it stands.`;
}

const NAMES: Readonly<Record<SensibleFigure, string>> = {
	stretch: "stretch of track",
	fullness: "fullness",
	drop: "finished drop",
	overlap: "overlap",
	returns: "return",
	ease: "ease",
	"side turning": "side turning",
	"heading turning": "heading turning",
	"hem turning": "hem turning",
	width: "width of cloth",
	repeat: "pattern repeat",
	mass: "mass",
	thickness: "thickness",
	"lining width": "width of lining",
	"lining mass": "mass of lining",
	"lining thickness": "thickness of lining",
	packing: "packing",
	"glider spacing": "glider spacing",
};

const UNITS: Readonly<Record<SensibleFigure, "length" | string>> = {
	stretch: "length",
	fullness: "",
	drop: "length",
	overlap: "length",
	returns: "length",
	ease: "length",
	"side turning": "length",
	"heading turning": "length",
	"hem turning": "length",
	width: "length",
	repeat: "length",
	mass: " g/m²",
	thickness: " mm",
	"lining width": "length",
	"lining mass": " g/m²",
	"lining thickness": " mm",
	packing: " mm for each metre",
	"glider spacing": "length",
};
