import type { BayFault, Reading, ReadingOf } from "@baywright/survey";
import { capital } from "../finding/capital.ts";
import type { Wording } from "../finding/describe.ts";
import type { Finding } from "../finding/finding.ts";
import { cornerName, wallName } from "../finding/names.ts";
import { formatAngle, formatLength } from "../job/length-text.ts";
import type { MayChange } from "./may-change.ts";
import type { BaySurvey, CheckedReading, Suspect } from "./settle.ts";
import { typedCorner } from "./typed-places.ts";

/** What a reading is called: `run of the front wall`, `diagonal 1–4`. */
export function readingName(reading: ReadingOf, walls: number): string {
	const wall = (index: number) => `the ${wallName(index, walls)}`;
	const corner = (index: number) => cornerName(index, walls);
	switch (reading.kind) {
		case "run":
			return `run of ${wall(reading.wall)}`;
		case "diagonal":
			return `diagonal ${typedCorner(reading.from, walls)}–${typedCorner(reading.to, walls)}`;
		case "angle":
			return `angle at ${corner(reading.corner)}`;
		case "chord":
			return `chord at ${corner(reading.corner)}`;
		case "rise":
			return `rise of ${wall(reading.wall)}`;
		case "square":
			return `square of ${corner(reading.corner)} from ${wall(reading.wall)}`;
		case "span":
			return `span between brackets on ${wall(reading.from.wall)} and ${wall(reading.to.wall)}`;
	}
}

/** How to take it, where the name does not say: `diagonal 1–4`, `chord at corner 2, arms of 600 mm`. */
export const readingTask = (reading: ReadingOf, { unit, walls }: Wording): string =>
	taskSentence(taskFigures(reading, walls), unit);

/** What tells a reading that is to be taken, as figures of a finding. */
export function taskFigures(reading: ReadingOf, walls: number): Figures {
	const name = readingName(reading, walls);
	if (reading.kind === "chord") return { name, arm: reading.arm };
	if (reading.kind !== "rise") return { name };
	return { name, along: reading.at ?? "middle" };
}

/** The same in words. */
export function taskSentence({ name, arm, along }: Figures, unit: Wording["unit"]): string {
	const length = (mm: unknown) => formatLength(Number(mm), unit, { unit: true });
	if (arm !== undefined) return `${name}, both arms ${length(arm)}`;
	if (along === undefined) return String(name);
	return along === "middle" ? `${name}, in its middle` : `${name}, ${length(along)} along`;
}

type Figures = Finding["figures"];

/** A figure of a reading with its unit: mm or degrees. */
export const readingFigure = ({ kind }: ReadingOf, value: number, { unit }: Wording): string =>
	kind === "angle" ? formatAngle(value) : formatLength(value, unit, { unit: true, precision: 1 });

/** `The diagonal 1–4 disagrees by 38 mm; without it everything closes within 2 mm.` */
export const suspectSentence = (
	suspect: Suspect,
	{ readings }: Pick<BaySurvey, "readings">,
	wording: Wording,
): string => disagreementSentence(disagreementFigures(suspect, readings, wording.walls), wording);

/** What tells a suspect, as figures of a finding: one reading, or two with the second as `other`. */
export function disagreementFigures(
	{ readings: named, disagreesBy, alike, without }: Suspect,
	readings: BaySurvey["readings"],
	walls: number,
): Figures {
	const nameOf = (index: number) => readingName((readings[index] as CheckedReading).reading, walls);
	const measure = (index: number) => ((readings[index] as CheckedReading).reading.kind === "angle" ? "degrees" : "mm");
	const [first, second] = named as readonly [number, number?];
	return {
		reading: first,
		name: nameOf(first),
		by: Math.abs(disagreesBy[0] as number),
		in: measure(first),
		...(second === undefined
			? {}
			: {
					otherReading: second,
					other: nameOf(second),
					otherBy: Math.abs(disagreesBy[1] as number),
					otherIn: measure(second),
				}),
		...(alike.length === 0
			? {}
			: { alike: eitherOf(alike.map((index) => `the ${nameOf(index)}`)), alikeCount: alike.length }),
		rest: !without.checked ? "unchecked" : without.closes ? "closes" : "apart",
		length: without.length,
		angle: without.angle,
	};
}

/** `a`, `a or b`, `a, b or c`. */
const eitherOf = (names: readonly string[]): string =>
	[names.slice(0, -1).join(", "), ...names.slice(-1)].filter((each) => each !== "").join(" or ");

/** The same in words; where no reading stands out, how far they all are apart. */
export function disagreementSentence(figures: Figures, { unit }: Wording): string {
	const within = withinText({ length: Number(figures.length), angle: Number(figures.angle) }, { unit });
	if (figures.name === undefined)
		return `The readings are up to ${within} out, and no one of them stands out as wrong: take them again.`;
	const size = (by: unknown, measure: unknown) =>
		measure === "degrees" ? formatAngle(Number(by)) : formatLength(Number(by), unit, { unit: true });
	const several = figures.other !== undefined;
	const names = `the ${figures.name}${several ? ` and the ${figures.other}` : ""}`;
	const by = `${size(figures.by, figures.in)}${several ? ` and ${size(figures.otherBy, figures.otherIn)}` : ""}`;
	const what = `${capital(names)} ${several ? "disagree" : "disagrees"} by ${by}`;
	return `${what}; ${restText(figures.rest, several ? "them" : "it", within)}.${alikeText(figures)}`;
}

function restText(rest: unknown, it: string, within: string): string {
	if (rest === "unchecked") return `without ${it} nothing is left that could disagree`;
	return rest === "closes"
		? `without ${it} everything closes within ${within}`
		: `without ${it} the rest is still ${within} apart`;
}

const alikeText = ({ alike, alikeCount }: Figures): string =>
	alike === undefined ? "" : ` It might as well be ${alike}: take ${Number(alikeCount) > 1 ? "them" : "both"} again.`;

/** `2 mm`, `2 mm and 0.3°`: how far the readings are from agreeing. */
export function withinText(
	{ length, angle }: { readonly length: number; readonly angle: number },
	{ unit }: Pick<Wording, "unit">,
): string {
	const mm = formatLength(length, unit, { unit: true });
	return angle < LEAST_ANGLE ? mm : `${mm} and ${formatAngle(angle)}`;
}

/** Less than this does not show, degrees. */
const LEAST_ANGLE = 0.05;

/** What may change within the ± of a cut length. */
export const mayChangeSentence = (change: MayChange): string =>
	({
		"no-fit": "Within its ± the bay may be one that this track does not fit.",
		"other-bends": "Within its ± the track may have to be bent elsewhere, and the length with it.",
		"uneven-length": "The length may be further off than its ± says: a leg here has just the room that its bends need.",
	})[change];

/** Why a bay cannot be settled, one sentence. */
export const surveyFaultSentence = (fault: BayFault, readings: readonly Reading[], wording: Wording): string =>
	faultSentence(faultFigures(fault, readings, wording.walls), wording);

/** What tells why a bay cannot be settled, as figures of a finding. */
export function faultFigures({ kind, ...fault }: BayFault, readings: readonly Reading[], walls: number): Figures {
	const figures: Record<string, number | string> = { why: kind };
	if ("reading" in fault) {
		const reading = readings[fault.reading];
		figures.reading = fault.reading;
		if (reading !== undefined) figures.name = readingName(reading, walls);
	}
	if ("greatest" in fault) figures.greatest = fault.greatest;
	if ("count" in fault) figures.count = fault.count;
	if ("wall" in fault) figures.wall = fault.wall;
	if ("corner" in fault) figures.corner = fault.corner;
	if ("corners" in fault && kind === "corners-coincide")
		[figures.corner, figures.other] = fault.corners as [number, number];
	return figures;
}

/** The same in words. */
export function faultSentence(figures: Figures, { unit, walls }: Wording): string {
	const number = `reading ${Number(figures.reading) + 1}`;
	const reading = capital(figures.name === undefined ? number : `the ${figures.name} (${number})`);
	const corner = (name: string) => cornerName(Number(figures[name]), walls);
	switch (figures.why as BayFault["kind"]) {
		case "reading-out-of-place":
			return `${reading} is of a place that this bay does not have.`;
		case "chord-too-long":
			return `${reading} is longer than both its arms together, ${formatLength(Number(figures.greatest), unit, { unit: true })}.`;
		case "reading-impossible":
			return `${reading} cannot be read in a bay like this.`;
		case "too-few-corners":
			return `A bay needs at least two corners; this one has ${figures.count}.`;
		case "no-such-wall":
			return `There is no wall ${Number(figures.wall) + 1}.`;
		case "corners-coincide":
			return `${capital(corner("corner"))} and ${corner("other")} are drawn in the same place.`;
		case "corner-not-a-number":
			return `${capital(corner("corner"))} has no place.`;
		case "rise-not-a-number":
			return `The ${wallName(Number(figures.wall), walls)} has no rise.`;
		case "unsettled":
			return "No bay is found between the drawing and the readings: draw it nearer to how it stands, or take the readings again.";
	}
}
