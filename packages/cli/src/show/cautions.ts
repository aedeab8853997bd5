import { type Caution, cautionsFor, type Region } from "@baywright/setout";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

/** What to beware of, once for all jobs: of every fitting, and for each region what holds of cords where it has a corded track. */
export function cautionsText(regions: ReadonlyMap<Region, boolean>): string[] {
	const told = new Map<string, Caution>();
	for (const [region, corded] of regions)
		for (const caution of cautionsFor(region, corded)) told.set(caution.about, caution);
	return section(
		"Cautions",
		[...told.values()].flatMap(({ text }) => {
			const [first = "", ...rest] = wrap(text, { indent: "    " });
			return [`  - ${first.trimStart()}`, ...rest];
		}),
	);
}
