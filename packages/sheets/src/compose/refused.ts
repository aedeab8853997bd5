import { severityOf } from "@baywright/setout";
import type { Entry } from "../paper/words.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Said first on every sheet that something is made or bought by, where the plan refuses something; else nothing. */
export function refusedEntries({ plan }: Pick<SheetOf, "plan">, todo: string): Entry[] {
	if (!plan.findings.some(({ code }) => severityOf(code) === "refusal")) return [];
	return [
		{
			sign: "none",
			lead: `Do not ${todo} by this sheet yet.`,
			text: "The plan refuses something: the fitting sheet says what, and it must be settled first.",
		},
	];
}
