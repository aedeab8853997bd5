import {
	type Bay,
	type BayPlan,
	capital,
	fixingGuidance,
	GUIDANCE_GROUND,
	guidanceSentence,
	rangesOf,
	surfacesOf,
	ZONE_ADVICE,
	ZONE_SOURCE,
	zoneName,
} from "@baywright/setout";
import { table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

/** What the brackets are fixed to, and where their holes may meet a concealed cable. */
export function fixingsText(plan: BayPlan, bay: Bay): string[] {
	const { fixings } = plan;
	if (fixings.length === 0) return [];
	const walls = plan.projections.length;
	const overhead = bay.track.mounting === "ceiling";
	const alike = new Map<string, { readonly cells: readonly string[]; readonly brackets: number[] }>();
	fixings.forEach(({ into, zones }, i) => {
		const names = zones.map((zone) => zoneName(zone, walls)).join(", ") || "–";
		const cells = [fixingGuidance(into).surface, names];
		const same = alike.get(cells.join());
		if (same === undefined) alike.set(cells.join(), { cells, brackets: [i] });
		else same.brackets.push(i);
	});
	const rows = [...alike.values()].map(({ cells, brackets }) => [rangesOf(brackets), ...cells]);
	const columns = [words("brackets"), words("fixed to"), words("concealed cables to be expected")];
	const guidance = surfacesOf(fixings).map(
		(into) => `${capital(fixingGuidance(into).surface)}: ${guidanceSentence(into)}`,
	);
	return section(overhead ? "Fixings, up into the ceiling" : "Fixings", [
		...table(columns, rows),
		...said(overhead ? OVERHEAD : `${ZONE_ADVICE} ${ZONE_SOURCE}`),
		...guidance.flatMap(said),
		...said(GUIDANCE_GROUND),
	]);
}

const OVERHEAD = "Those zones are of walls; over a ceiling cables and pipes lie anywhere: look before every hole.";

const said = (text: string): string[] => wrap(text, { indent: "  " });
