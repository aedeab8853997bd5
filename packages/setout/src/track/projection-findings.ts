import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** Projections that the system's brackets do not reach: the track's own, then each wall's. */
export function projectionFindings({ track, walls }: Bay, { projection: range }: TrackSystem): Finding[] {
	const { min, max } = range;
	const asked = [
		{ where: {}, projection: track.projection },
		...walls.map(({ projection }, wall) => ({ where: { wall }, projection })),
	];
	return asked.flatMap(({ where, projection }): Finding[] =>
		projection === null || (projection >= min && projection <= max)
			? []
			: [{ code: "projection-out-of-range", where, figures: { projection, min, max }, remedies: [] }],
	);
}
