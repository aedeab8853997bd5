import type { Bay } from "../job/bay-schema.ts";
import type { Library } from "../library/library.ts";
import type { Finding } from "./finding.ts";

/** Fields of the job that are read and kept but not yet worked with: each is said, so that nobody relies on it. */
export function keptForLater(bay: Bay, { cloths, prices }: Library): Finding[] {
	const { makeUp, fitted } = bay;
	const parts: readonly (readonly [field: string, given: boolean])[] = [
		["curtains", bay.curtains.length > 0],
		["makeUp", makeUp.overlap !== 100 || makeUp.returns !== 0 || makeUp.ease !== 0],
		["fitted", fitted.cut.length > 0 || fitted.brackets.some(isElsewhere)],
		["ceiling", bay.ceiling !== null],
		["surface", bay.ceilingSurface !== "unknown" || bay.walls.some(({ surface }) => surface !== "unknown")],
		["cloths", cloths.length > 0],
		["prices", prices.length > 0],
	];
	const fields = parts.filter(([, given]) => given).map(([field]) => field);
	if (fields.length === 0) return [];
	return [
		{
			code: "kept-for-later",
			where: { field: fields[0] as string },
			figures: { fields: fields.join(", ") },
			remedies: [],
		},
	];
}

/** Fitted otherwise than planned; one that only records that it was done as planned asks nothing of the plan. */
const isElsewhere = ({ planned, at, projection }: Bay["fitted"]["brackets"][number]): boolean =>
	projection !== null || (planned !== null && planned !== at);
