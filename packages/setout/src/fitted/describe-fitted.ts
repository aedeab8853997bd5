import type { Finding } from "../finding/finding.ts";
import { formatLength } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import { AT_95 } from "../survey/may-change.ts";
import type { CutPiece } from "./as-fitted.ts";
import type { BendOfPiece } from "./bent-piece.ts";
import { bendNames, bentAnswer, endsText, whereBendsLie } from "./describe-bent.ts";
import { nearestSteps, roundedDown, stepsDown, stepsText, stepsUp } from "./in-steps.ts";

type Play = CutPiece["play"];

/** Whether a piece is straight for good, still to be bent, or bent in at least one place. */
export type BentSoFar = "straight" | "to-bend" | "bent";

export function bentSoFar(bends: readonly BendOfPiece[]): BentSoFar {
	if (bends.length === 0) return "straight";
	return bends.some(({ made }) => made) ? "bent" : "to-bend";
}

/** What becomes of a piece that is cut already, in a few plain sentences. */
export function cutAnswer(piece: CutPiece, unit: LengthUnit): string {
	const { verdict, bent, sd } = piece;
	const answer = bent === null || verdict === "fits" ? lengthAnswer(piece, unit) : bentAnswer(piece, bent, unit);
	const sure = sd === null ? 0 : AT_95 * sd;
	if (verdict === "fits" || sure < mostOut(piece)) return answer;
	return `${answer} The bay is taped to ± ${formatLength(sure, unit, { unit: true, precision: 1 })} only: it may fit yet.`;
}

/** The most (mm) that a piece is out by in any one place. */
function mostOut({ cut, needed, bent }: CutPiece): number {
	if (bent === null) return Math.abs(cut - needed);
	return Math.max(Math.abs(bent.left), Math.abs(bent.right), Math.abs(bent.between?.by ?? 0));
}

/** The same in short, from the figures of a finding about a piece cut too long or too short. */
export function cutFindingText(figures: Finding["figures"], unit: LengthUnit): string {
	const of = (name: string) => Number(figures[name]);
	const play = { left: of("left"), right: of("right") };
	if (figures.leftOver !== undefined) return endsText({ left: of("leftOver"), right: of("rightOver") }, play, unit);
	const over = of("cut") - of("needed");
	const so = figures.bent as BentSoFar;
	return over > 0 ? longText(over, so, unit) : shortText(-over, play, so, unit);
}

/** By its length alone: it is not bent, or not known where. */
function lengthAnswer({ cut, needed, verdict, play, bends, bent }: CutPiece, unit: LengthUnit): string {
	const so = bentSoFar(bends);
	const over = cut - needed;
	const answer =
		verdict === "fits"
			? fitsText(over, unit)
			: verdict === "long"
				? longText(over, so, unit)
				: shortText(-over, play, so, unit);
	if (so === "bent" && bent === null) return `${answer} ${whereBendsLie(bends, needed, unit)}`;
	if (so !== "to-bend" || verdict === "fits") return answer;
	const marks = verdict === "long" ? marksOfLong(over, bends, unit) : marksOfShort(-over, play, bends, unit);
	return `${answer}${marks}`;
}

function fitsText(over: number, unit: LengthUnit): string {
	const steps = nearestSteps(over, unit);
	if (steps === 0) return "Still fits, to the length.";
	return steps > 0
		? `Still fits, ${stepsText(steps, unit)} to spare.`
		: `Still fits, ${stepsText(-steps, unit)} short of the figure.`;
}

function longText(over: number, so: BentSoFar, unit: LengthUnit): string {
	const by = roundedDown(over, unit);
	if (so === "bent") return `${by} too long. It is bent already: saw off an end only what it has too much there.`;
	return `${by} too long: saw ${by} off either end${so === "straight" ? "" : ", before it is bent"}.`;
}

const marksOfLong = (over: number, bends: readonly BendOfPiece[], unit: LengthUnit): string =>
	` What is marked on it for ${bendNames(bends)} then lies ${roundedDown(over, unit)} nearer the sawn end: mark it anew.`;

function shortText(short: number, play: Play, so: BentSoFar, unit: LengthUnit): string {
	const { by, left, right, half, at } = shared(short, play, unit);
	const text = (steps: number) => stepsText(steps, unit);
	const most = text(left + right);
	if (at === null) {
		const room =
			left + right === 0
				? "neither end has room to give"
				: `its ends have ${most} to give before they leave the last bracket`;
		return `${text(by)} too short: cut it anew; ${room}.`;
	}
	if (so === "bent")
		return `${text(by)} too short. It is bent already: let the end that lacks it stand further in, the left by up to ${text(left)}, the right by up to ${text(right)}.`;
	if (at === "both")
		return `${text(by)} too short: let each end stand ${text(half)} further in; up to ${most} could be taken up so.`;
	if (at === "some")
		return `${text(by)} too short: let the ends stand further in, the left by up to ${text(left)} and the right by up to ${text(right)}.`;
	return `${text(by)} too short: let the ${at} end stand ${text(by)} further in; up to ${most} could be taken up so.`;
}

/** Where the left end stands further in, all that is marked from it comes nearer to it. */
function marksOfShort(short: number, play: Play, bends: readonly BendOfPiece[], unit: LengthUnit): string {
	const { by, half, at } = shared(short, play, unit);
	if (at === null) return "";
	const names = bendNames(bends);
	if (at === "right") return ` Mark ${names} from its left end, as listed.`;
	if (at === "some") return ` Mark ${names} as much nearer its left end than listed as that end stands in.`;
	return ` Mark ${names} ${stepsText(at === "both" ? half : by, unit)} nearer its left end than listed.`;
}

/**
 * How the ends take up what is missing, in steps of what is shown: what is missing rounded up and what they can give rounded down,
 * and so held against each other. `at` is null where they cannot.
 */
function shared(short: number, play: Play, unit: LengthUnit) {
	const by = stepsUp(short, unit);
	const half = stepsUp(short / 2, unit);
	const [left, right] = [stepsDown(play.left, unit), stepsDown(play.right, unit)];
	const at =
		by > left + right
			? null
			: half <= Math.min(left, right)
				? "both"
				: left >= by
					? "left"
					: right >= by
						? "right"
						: "some";
	return { by, half, left, right, at } as const;
}
