import { type BayPlan, describe, type LengthUnit, type Severity, severityOf } from "@baywright/setout";
import { wrap } from "../text/wrap.ts";
import { count } from "./section.ts";

const GRAVEST_FIRST: readonly Severity[] = ["refusal", "warning", "note"];

/** Every finding with its message and what would cure it. */
export function findingsText(plan: BayPlan, unit: LengthUnit): string[] {
	const wording = { unit, walls: plan.projections.length };
	return plan.findings.flatMap((finding) => {
		const { severity, title, message, remedies } = describe(finding, wording);
		const cures = remedies.length === 0 ? [] : wrap(`Remedy: ${remedies.join(" · or: ")}`, { indent: "    " });
		return [
			...wrap(`${severity.toUpperCase()}  ${title}`, { indent: "  " }),
			...wrap(message, { indent: "    " }),
			...cures,
		];
	});
}

/** `1 refusal, 2 notes`; "nothing to report" where there is none. */
export function tally(plan: BayPlan): string {
	const said = GRAVEST_FIRST.map((severity) => ({
		severity,
		number: plan.findings.filter(({ code }) => severityOf(code) === severity).length,
	}))
		.filter(({ number }) => number > 0)
		.map(({ severity, number }) => count(number, severity));
	return said.length === 0 ? "nothing to report" : said.join(", ");
}

/** Whether something in the plan cannot be fitted. */
export const isRefused = ({ findings }: BayPlan): boolean =>
	findings.some(({ code }) => severityOf(code) === "refusal");
