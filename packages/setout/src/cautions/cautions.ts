import type { Region } from "../job/schema.ts";
import { cordAdvice } from "./cord-advice.ts";

/** One thing to beware of, in a word or two and in full. */
export interface Caution {
	readonly about: string;
	readonly text: string;
}

/**
 * What every fitting brings with it, in the order of the work. General, for any country: the figures of each are for its own
 * rules to say, and nothing here stands above the system's instructions, local codes and licensed trades.
 */
export const CAUTIONS: readonly Caution[] = [
	{
		about: "What comes first",
		text: "The track system's own instructions, local codes and licensed trades come first: where they differ from this plan, follow them.",
	},
	{
		about: "Cables and pipes",
		text: "Find cables and pipes before drilling, around every switch and socket above all. If in doubt, ask a licensed electrician or plumber before the first hole.",
	},
	{
		about: "Old finishes",
		text: "Old paint can hold lead, old plaster, boards and coatings asbestos. Do not drill or sand what may: have it tested first.",
	},
	{
		about: "The wall",
		text: "A wall of unknown make may not hold: drill a trial hole, use the fixing that wall and system ask for, and pull on it before anything hangs there.",
	},
	{
		about: "Ladders",
		text: "For short, light work only: stand the ladder level, one out for four up, and keep between its sides. Never lean it, or yourself, against glass; beside a window have someone hold it.",
	},
	{
		about: "Eyes",
		text: "Wear eye protection when sawing and drilling, overhead above all.",
	},
	{
		about: "Cut ends",
		text: "Cut ends are sharp: wear gloves, deburr every cut, and keep offcuts out of the way.",
	},
	{
		about: "Cords and children",
		text: "Cords can strangle small children: keep every cord taut or out of reach with the safety device supplied, and keep cots, beds and seats away from it.",
	},
];

/** Those of every fitting, and where a track is corded what the region's rules are read to say of cords. */
export function cautionsFor(region: Region, corded: boolean): readonly Caution[] {
	if (!corded) return CAUTIONS;
	const { where, says, source, checked } = cordAdvice(region);
	return [
		...CAUTIONS,
		{
			about: `Cords in ${where}`,
			text: `${says} Source: ${source}; last checked ${checked}. This is no proof that anything complies.`,
		},
	];
}
