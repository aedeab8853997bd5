import { cordAdvice } from "../cautions/cord-advice.ts";
import { wallName } from "../finding/names.ts";
import type { Region } from "../job/schema.ts";
import type { CordSetOut } from "./set-out-cords.ts";

/** What is always added: the rule is told, not judged. */
const ASK = "Ask what holds where the track hangs.";

/** What the plan tells of a cord lower or longer than its region's advice. `length` words one of the figures. */
export function cordSentence(
	figures: Readonly<Record<string, number | string>>,
	length: (name: string) => string,
): string {
	const { where, source, checked } = cordAdvice(figures.region as Region);
	const ground = `Source for ${where}: ${source}; last checked ${checked}. ${ASK}`;
	if (figures.lowest !== undefined)
		return `The cord's loop comes down to ${length("lowest")} above the floor; the advice is ${length("loopAbove")} at the least, or a tensioner fixed so that the loop is always taut. ${ground}`;
	if (figures.longest !== undefined)
		return `${figures.hangs === undefined ? "A cord hangs from this track" : `The cord hangs ${length("hangs")} down from this track`}; one in reach is to be no longer than ${length("longest")}. Ask for a system without a hanging cord. ${ground}`;
	return `The track is no higher above the floor than the ${length("wanted")} that its cord is to stay above, so that no loop can hang from it. ${ground}`;
}

/** Where a cord hangs and how long it is, in sentences. `show` words a length in mm with its unit. */
export function cordSentences(cords: CordSetOut, walls: number, show: (mm: number) => string): string[] {
	const { side, chosen, at, inTrack, hangs, lowest, unknown, length, overOpening } = cords;
	const end = `Hangs at the ${side} end, ${show(at.at)} along the ${wallName(at.wall, walls)}${chosen ? ", as set by you" : ""}; along the track there and back ${show(inTrack)}.`;
	if (unknown === "no-height" || hangs === null || lowest === null || length === null)
		return [
			end,
			unknown === "no-height"
				? "How far it hangs and how long it is are not known: the track's height is not set."
				: "The track is too low for a loop: ask for a system without a hanging cord.",
		];
	return [
		end,
		`Loop ${show(hangs)} long, down to ${show(lowest)} above the floor; fix the tensioner there, so that the loop is always taut. In all ${show(length)} of cord, knots included.`,
		...(overOpening === null
			? []
			: ["An opening lies there: fix the tensioner to its frame or beside it, or hang the cord at the other end."]),
	];
}
