import { type Bay, type BayPlan, type Job, jobOrder } from "@baywright/setout";
import { plain } from "../text/plain.ts";
import { columnsOf, PAGE, wrap } from "../text/wrap.ts";
import { bowsText } from "./bows.ts";
import { bracketsText, jointsText } from "./brackets.ts";
import { cordsText } from "./cords.ts";
import { cornersText } from "./corners.ts";
import { curtainsText } from "./curtains.ts";
import { findingsText, isRefused, tally } from "./findings.ts";
import { fixingsText } from "./fixings.ts";
import { type Lengths, lengthsIn, unitLine } from "./lengths.ts";
import { loadsText } from "./loads.ts";
import { orderText } from "./order.ts";
import { piecesText } from "./pieces.ts";
import { section } from "./section.ts";
import { stockText } from "./stock.ts";

/** A job's plans for people to work from. `file` heads it where there are several. */
export function jobText(job: Job, plans: readonly BayPlan[], file: string | null): string {
	const unit = job.display.length;
	const lines = [
		...(file === null ? [] : fileHeading(file)),
		...wrap(titleOf(job)),
		...plans.flatMap((plan, i) => [...(i === 0 ? [] : [""]), ...bayText(plan, job, lengthsIn(unit))]),
		...(plans.length === 0 ? ["", "No bays in this job."] : []),
		...orderText(jobOrder(job, plans), unit),
	];
	return `${lines.join("\n")}\n`;
}

/** The name of a file, underlined. */
function fileHeading(file: string): string[] {
	const lines = wrap(plain(file));
	return [...lines, "─".repeat(Math.min(PAGE, Math.max(...lines.map(columnsOf)))), ""];
}

const titleOf = ({ title, site }: Job): string =>
	[title, site]
		.filter((text) => text.trim() !== "")
		.map(plain)
		.join(", ") || "Untitled job";

function bayText(plan: BayPlan, job: Job, lengths: Lengths): string[] {
	const bay = job.bays.find(({ id }) => id === plan.id) as Bay;
	return [
		"",
		...wrap(`Bay ${plain(bay.id)}${bay.name.trim() === "" ? "" : `: ${plain(bay.name)}`}`),
		...wrap(`${plain(plan.system.name)} track, ${mountedAt(bay, plan, lengths)}. ${unitLine(lengths.unit)}`, {
			indent: "  ",
		}),
		...(plan.path === null ? [] : [`  Finished length of the whole track ${lengths.fine(plan.path.length)}`]),
		...wrap(verdict(plan), { indent: "  " }),
		...(plan.findings.length === 0 ? [] : section("Findings", findingsText(plan, lengths.unit))),
		...cornersText(plan, lengths),
		...bowsText(plan, lengths),
		...piecesText(plan, lengths),
		...stockText(plan, lengths),
		...bracketsText(plan, lengths),
		...fixingsText(plan, bay),
		...jointsText(plan, lengths),
		...(plan.path === null ? [] : curtainsText(plan, lengths)),
		...cordsText(plan, lengths),
		...loadsText(plan, lengths.unit),
	];
}

function mountedAt({ track }: Bay, { height }: BayPlan, { whole }: Lengths): string {
	const place = track.mounting === "ceiling" ? "to the ceiling" : "on the wall";
	return height === null ? `${place}, height not set` : `${place}, ${whole(height)} above the floor`;
}

function verdict(plan: BayPlan): string {
	if (plan.path === null) return `Not planned: ${tally(plan)}.`;
	if (isRefused(plan))
		return `Planned with ${tally(plan)}: do not cut or drill by this plan until the refusals are settled.`;
	return `Planned: ${tally(plan)}.`;
}
