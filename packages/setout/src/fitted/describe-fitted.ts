import { formatLength } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import { AT_95 } from "../survey/may-change.ts";
import type { CutPiece } from "./as-fitted.ts";

/** What becomes of a piece that is cut already, in one or two plain sentences. */
export function cutAnswer({ cut, needed, verdict, play, sd }: CutPiece, unit: LengthUnit): string {
	const answer = {
		fits: () => fitsText(cut - needed, unit),
		long: () => longText(cut - needed, unit),
		"short-in-play": () => shortText(needed - cut, play, unit),
		"too-short": () => shortText(needed - cut, play, unit),
	}[verdict]();
	const sure = sd === null ? 0 : AT_95 * sd;
	if (verdict === "fits" || sure < Math.abs(cut - needed)) return answer;
	return `${answer} The bay is taped to ± ${formatLength(sure, unit, { unit: true, precision: 1 })} only: it may fit yet.`;
}

/** Lengths under this (mm) are not told: no tape shows them. */
const HARDLY = 0.5;

function fitsText(over: number, unit: LengthUnit): string {
	if (Math.abs(over) < HARDLY) return "Still fits, to the length.";
	return over > 0
		? `Still fits, ${whole(over, unit, Math.ceil)} to spare.`
		: `Still fits, ${whole(-over, unit, Math.ceil)} short of the figure.`;
}

/** What is sawn off cannot be put back: rounded down. */
export const longText = (over: number, unit: LengthUnit): string =>
	`${whole(over, unit, Math.floor)} too long: saw ${whole(over, unit, Math.floor)} off a straight end.`;

export function shortText(short: number, { left, right }: CutPiece["play"], unit: LengthUnit): string {
	const by = `${whole(short, unit, Math.ceil)} too short: `;
	const [atLeft, atRight] = [Math.floor(left), Math.floor(right)];
	const most = whole(atLeft + atRight, unit, Math.floor);
	if (short > left + right)
		return left + right < 1
			? `${by}cut it anew; neither end has room to give.`
			: `${by}cut it anew; its ends have ${most} to give before they leave the last bracket.`;
	const half = whole(short / 2, unit, Math.ceil);
	if (short / 2 <= Math.min(left, right))
		return `${by}let each end stand ${half} further in; up to ${most} could be taken up so.`;
	const end = left >= short ? "left" : right >= short ? "right" : null;
	if (end !== null)
		return `${by}let the ${end} end stand ${whole(short, unit, Math.ceil)} further in; up to ${most} could be taken up so.`;
	return `${by}let the ends stand further in, the left by up to ${whole(atLeft, unit, Math.floor)} and the right by up to ${whole(atRight, unit, Math.floor)}.`;
}

/** To the safe side in whole mm; inches have their sixteenths. */
const whole = (mm: number, unit: LengthUnit, round: (mm: number) => number): string =>
	formatLength(round(mm), unit, { unit: true });
