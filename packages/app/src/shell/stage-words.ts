import type { Stage } from "../desk/screen.ts";

/** What each stage is called. */
export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
	survey: "Survey",
	track: "Track",
	curtains: "Curtains",
	order: "Order",
	sheets: "Sheets",
};
