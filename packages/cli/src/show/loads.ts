import {
	type BayPlan,
	describe,
	formatLimit,
	formatMass,
	type LengthUnit,
	LOADS_SENTENCE,
	type LoadStanding,
	standingOf,
	wallName,
} from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

const STANDINGS: Readonly<Record<LoadStanding, string>> = {
	over: "over the limit",
	near: "near it",
	within: "",
	"not-checked": "not checked",
};

/** What every bracket carries, how that is worked out, and what is not known; nothing while the job says nothing of curtains. */
export function loadsText(plan: BayPlan, unit: LengthUnit): string[] {
	const walls = plan.projections.length;
	const unknown = plan.findings.find(({ code }) => code === "mass-not-known");
	const missing = unknown === undefined ? [] : wrap(describe(unknown, { unit, walls }).message, { indent: "  " });
	if (plan.loads.length === 0) return missing.length === 0 ? [] : section("Loads on brackets: not worked out", missing);
	const { maxLoad } = plan.system.bracket;
	const limit = maxLoad === null ? "the system states no limit" : `limit ${formatLimit(maxLoad)} kg`;
	const rows = plan.loads.map((load) => [
		String(load.bracket + 1),
		wallName(plan.brackets[load.bracket]?.wall ?? 0, walls),
		formatMass(load.greatest),
		load.share === null ? "–" : `${Math.round(load.share * 100)} %`,
		formatMass(load.least),
		formatMass(load.drawn),
		formatMass(load.stacked),
		STANDINGS[standingOf(load)],
	]);
	const columns = [
		figures("no."),
		words("wall"),
		figures("greatest"),
		figures("of limit"),
		figures("least"),
		figures("drawn"),
		figures("stacked"),
		words(""),
	];
	return section(`Loads on brackets, kg; ${limit}`, [
		...table(columns, rows),
		...wrap(`${LOADS_SENTENCE} Less than nought: the bracket holds the track down.`, { indent: "  " }),
		...missing,
	]);
}
