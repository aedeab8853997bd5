import type { Bay } from "../job/bay-schema.ts";
import type { Library } from "../library/library.ts";
import type { Finding } from "./finding.ts";

/** Fields of the job that are read and kept but not yet worked with: each is said, so that nobody relies on it. */
export function keptForLater(bay: Bay, { prices }: Library): Finding[] {
	const parts: readonly (readonly [field: string, given: boolean])[] = [
		["ceiling", bay.ceiling !== null],
		["surface", bay.ceilingSurface !== "unknown" || bay.walls.some(({ surface }) => surface !== "unknown")],
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
