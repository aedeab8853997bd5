import type { BayPlan, Job } from "@baywright/setout";
import type { Sheet, SheetName } from "../paper/drawing.ts";
import { bendTemplates } from "./bend-template.ts";
import { fittingSheet } from "./fitting-sheet.ts";
import { handOverSheet } from "./hand-over-sheet.ts";
import { orderSheet } from "./order-sheet.ts";
import { type SheetOf, type SheetOptions, sheetOf } from "./sheet-of.ts";
import { stripSheet } from "./strip-sheet.ts";
import { surveySheet } from "./survey-sheet.ts";
import { workroomSheet } from "./workroom-sheet.ts";

/** How each sheet is composed: null where the plan has nothing for it. */
const COMPOSERS: Readonly<Record<SheetName, (of: SheetOf) => Sheet | null>> = {
	survey: surveySheet,
	fitting: fittingSheet,
	bends: bendTemplates,
	strips: stripSheet,
	order: orderSheet,
	workroom: workroomSheet,
	"hand-over": handOverSheet,
};

/** Every sheet there is, in the order in which they are needed. */
export const SHEET_NAMES = Object.keys(COMPOSERS) as readonly SheetName[];

/**
 * The sheets of each plan, composed from the plan alone: bay by bay, each in the order of SHEET_NAMES. `only` = these and no others. Pure: the
 * same job, plans and options give the same sheets.
 */
export function composeSheets(
	job: Job,
	plans: readonly BayPlan[],
	options: SheetOptions = {},
	only: readonly SheetName[] = SHEET_NAMES,
): Sheet[] {
	return plans.flatMap((plan) => {
		const of = sheetOf(job, plan, options, plans);
		return SHEET_NAMES.filter((name) => only.includes(name)).flatMap((name) => COMPOSERS[name](of) ?? []);
	});
}
