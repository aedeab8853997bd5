import { toDegrees } from "@baywright/geometry";
import { type Bay, type BayPlan, formatAngle, formatLength, type Job, type LengthUnit } from "@baywright/setout";
import type { PaperName } from "../paper/papers.ts";

/** What every sheet may depend on besides the plan. */
export interface SheetOptions {
	/** A4 where left out. */
	readonly paper?: PaperName;
	/** Date of issue for the title block, year first; left out, it is filled in by hand. */
	readonly date?: string;
	/**
	 * What the check bars of an earlier print measured, mm: true-size paper is drawn so much larger or smaller that the same printer makes it
	 * right. 100 where left out.
	 */
	readonly measured?: { readonly across: number; readonly down: number };
	/** Strips on sheets of `paper` (left out), each piece on one long page to scale, or at true size for a roll of paper. */
	readonly strips?: StripPaper;
}

export type StripPaper = "sheets" | "long" | "roll";

/** What a sheet is composed from. */
export interface SheetOf {
	readonly job: Job;
	readonly bay: Bay;
	readonly plan: BayPlan;
	/** All that sheets are composed of together: what is of the job, not of one bay, is said once for them all. */
	readonly plans: readonly BayPlan[];
	readonly paper: PaperName;
	readonly date: string;
	readonly measured: { readonly across: number; readonly down: number };
	readonly strips: StripPaper;
	readonly unit: LengthUnit;
	/** A set-out figure without its unit: to the tenth of a mm, or the sixteenth of an inch. */
	readonly figure: (mm: number) => string;
	/** The same with its unit, for sentences. */
	readonly fine: (mm: number) => string;
	/** To the whole mm, with its unit. */
	readonly about: (mm: number) => string;
	/** Radians as shown in degrees. */
	readonly angle: (angle: number) => string;
}

export function sheetOf(job: Job, plan: BayPlan, options: SheetOptions, plans: readonly BayPlan[] = [plan]): SheetOf {
	const bay = job.bays.find(({ id }) => id === plan.id);
	if (bay === undefined)
		throw new Error(`Broken invariant: the plan is of a bay "${plan.id}" that the job does not have.`);
	const unit = job.display.length;
	return {
		job,
		bay,
		plan,
		plans,
		paper: options.paper ?? "A4",
		date: options.date ?? "",
		measured: options.measured ?? { across: CHECK_BAR, down: CHECK_BAR },
		strips: options.strips ?? "sheets",
		unit,
		figure: (mm) => formatLength(mm, unit, { precision: 1 }),
		fine: (mm) => formatLength(mm, unit, { precision: 1, unit: true }),
		about: (mm) => formatLength(mm, unit, { unit: true }),
		angle: (angle) => formatAngle(toDegrees(angle as never)),
	};
}

/** Length of the bars by which a print at true size is checked, mm. */
export const CHECK_BAR = 100;
