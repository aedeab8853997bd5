import { cautionsFor } from "@baywright/setout";
import type { Entry } from "../paper/words.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Where in the work a caution is said. */
export type Step = "first" | "drill" | "cut" | "hang" | "cords";

/** What each step is about; a caution about anything else is said first of all, so that none is ever left out. */
const ABOUT: Readonly<Record<Exclude<Step, "first">, readonly RegExp[]>> = {
	drill: [/^cables/i, /^old finishes/i, /^the wall/i, /^eyes/i],
	cut: [/^cut ends/i],
	hang: [/^ladders/i],
	cords: [/^cords/i],
};

/** The cautions that belong to a step of the work. */
export function cautionsAt({ job, plan }: SheetOf, step: Step): Entry[] {
	const isAbout = (about: string, patterns: readonly RegExp[]) => patterns.some((pattern) => pattern.test(about));
	return cautionsFor(job.region, plan.system.corded)
		.filter(({ about }) =>
			step === "first"
				? !Object.values(ABOUT).some((patterns) => isAbout(about, patterns))
				: isAbout(about, ABOUT[step]),
		)
		.map(({ about, text }) => ({ sign: "dash", lead: about, text }));
}
