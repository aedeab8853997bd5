import type { FittedTrack } from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";

/** Legs along bowed walls: the piece must be bent there too, and to what radius over which stretch is said for each. */
export function bowsToBend({ path }: FittedTrack): Finding[] {
	return path.segments.flatMap((segment): Finding[] => {
		if (segment.kind !== "bow") return [];
		const { start, length, radius, wall } = segment;
		return [
			{
				code: "bow-to-be-bent",
				where: { wall, station: start + length / 2 },
				figures: { radius, length, from: start, to: start + length },
				remedies: [],
			},
		];
	});
}
