import { type BayPlan, cordSentences } from "@baywright/setout";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

/** Where the cord of a corded track hangs, and how long it is. */
export function cordsText({ cords, projections }: BayPlan, { whole }: Lengths): string[] {
	if (cords === null) return [];
	const sentences = cordSentences(cords, projections.length, whole);
	return section(
		"Cord",
		sentences.flatMap((sentence) => wrap(sentence, { indent: "  " })),
	);
}
