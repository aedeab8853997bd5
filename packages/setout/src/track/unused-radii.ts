import type { FittedTrack } from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";

/** Radii that the user has set where no bend takes them: each is said, with the way to let it go. */
export function unusedRadii({ track: { bends: set } }: Bay, { bends }: FittedTrack): Finding[] {
	return set.flatMap(({ corner, radius }, index): Finding[] => {
		const bend = bends.elbows.findIndex(({ first, last }) => first <= corner && corner <= last);
		if (bends.set.has(bend)) return [];
		const why = bend < 0 ? "beyond" : bends.elbows[bend]?.reverse !== null ? "reverse" : "slight";
		const release = {
			action: "release-radius",
			figures: { corner },
			change: [{ op: "remove", path: `/track/bends/${index}` }],
		} as const;
		return [{ code: "radius-not-used", where: { corner }, figures: { radius, why }, remedies: [release] }];
	});
}
