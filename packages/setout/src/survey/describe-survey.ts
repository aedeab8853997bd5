import type { BayFault, Reading, ReadingOf } from "@baywright/survey";
import type { Wording } from "../finding/describe.ts";
import { cornerName, wallName } from "../finding/names.ts";
import { formatAngle, formatLength } from "../job/length-text.ts";
import type { MayChange } from "./may-change.ts";
import type { BaySurvey, Suspect } from "./settle.ts";
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
export function readingTask(reading: ReadingOf, { unit, walls }: Wording): string {
	const name = readingName(reading, walls);
	if (reading.kind === "chord") return `${name}, both arms ${formatLength(reading.arm, unit, { unit: true })}`;
	if (reading.kind !== "rise") return name;
	return reading.at === null
		? `${name}, in its middle`
		: `${name}, ${formatLength(reading.at, unit, { unit: true })} along`;
}

/** A figure of a reading with its unit: mm or degrees. */
export const readingFigure = ({ kind }: ReadingOf, value: number, { unit }: Wording): string =>
	kind === "angle" ? formatAngle(value) : formatLength(value, unit, { unit: true, precision: 1 });

/** `The diagonal 1–4 disagrees by 38 mm; without it everything closes within 2 mm.` */
export function suspectSentence(suspect: Suspect, { readings }: BaySurvey, wording: Wording): string {
	const named = suspect.readings.map((index) => (readings[index] as { reading: Reading }).reading);
	const names = named.map((reading) => `the ${readingName(reading, wording.walls)}`);
	const by = suspect.disagreesBy.map((error, i) => sizeText(named[i] as Reading, error, wording));
	const several = suspect.code === "two-disagree";
	const what = `${capital(names.join(" and "))} ${several ? "disagree" : "disagrees"} by ${by.join(" and ")}`;
	return `${what}; ${restText(suspect, several ? "them" : "it", wording)}.${alikeText(suspect, readings, wording)}`;
}

function restText({ without }: Suspect, it: string, wording: Wording): string {
	if (!without.checked) return `without ${it} nothing is left that could disagree`;
	const within = withinText(without, wording);
	return without.closes
		? `without ${it} everything closes within ${within}`
		: `without ${it} the rest is still ${within} apart`;
}

function alikeText({ alike }: Suspect, readings: BaySurvey["readings"], { walls }: Wording): string {
	if (alike.length === 0) return "";
	const names = alike.map((index) => `the ${readingName((readings[index] as { reading: Reading }).reading, walls)}`);
	return ` It might as well be ${names.join(" or ")}: take ${alike.length > 1 ? "them" : "both"} again.`;
}

/** `2 mm`, `2 mm and 0.3°`: how far the readings are from agreeing. */
export function withinText(
	{ length, angle }: { readonly length: number; readonly angle: number },
	{ unit }: Wording,
): string {
	const mm = formatLength(length, unit, { unit: true });
	return angle < LEAST_ANGLE ? mm : `${mm} and ${formatAngle(angle)}`;
}

/** Less than this does not show, degrees. */
const LEAST_ANGLE = 0.05;

const sizeText = (reading: Reading, error: number, { unit }: Wording): string =>
	reading.kind === "angle" ? formatAngle(Math.abs(error)) : formatLength(Math.abs(error), unit, { unit: true });

/** What may change within the ± of a cut length. */
export const mayChangeSentence = (change: MayChange): string =>
	({
		"no-fit": "Within its ± the bay may be one that this track does not fit.",
		"other-bends": "Within its ± the track may have to be bent elsewhere, and the length with it.",
		"uneven-length": "The length may be further off than its ± says: a leg here has just the room that its bends need.",
	})[change];

/** Why a bay cannot be settled, one sentence. */
export function surveyFaultSentence(fault: BayFault, readings: readonly Reading[], wording: Wording): string {
	const { walls, unit } = wording;
	const name = (index: number) => {
		const reading = readings[index];
		return reading === undefined ? `reading ${index + 1}` : `the ${readingName(reading, walls)} (reading ${index + 1})`;
	};
	switch (fault.kind) {
		case "reading-out-of-place":
			return `${capital(name(fault.reading))} is of a place that this bay does not have.`;
		case "chord-too-long":
			return `${capital(name(fault.reading))} is longer than both its arms together, ${formatLength(fault.greatest, unit, { unit: true })}.`;
		case "reading-impossible":
			return `${capital(name(fault.reading))} cannot be read in a bay like this.`;
		case "too-few-corners":
			return `A bay needs at least two corners; this one has ${fault.count}.`;
		case "no-such-wall":
			return `There is no wall ${fault.wall + 1}.`;
		case "corners-coincide":
			return `${capital(cornerName(fault.corners[0], walls))} and ${cornerName(fault.corners[1], walls)} are drawn in the same place.`;
		case "corner-not-a-number":
			return `${capital(cornerName(fault.corner, walls))} has no place.`;
		case "rise-not-a-number":
			return `The ${wallName(fault.wall, walls)} has no rise.`;
		case "unsettled":
			return "No bay is found between the drawing and the readings: draw it nearer to how it stands, or take the readings again.";
	}
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
