import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** Projections that the system's brackets do not reach: the track's own, then each wall's. */
export function projectionFindings({ track, walls }: Bay, { projection: range }: TrackSystem): Finding[] {
	const { min, max } = range;
	const asked = [
		{ path: "/track/projection", where: {}, projection: track.projection },
		...walls.map(({ projection }, wall) => ({ path: `/walls/${wall}/projection`, where: { wall }, projection })),
	];
	return asked.flatMap(({ path, where, projection }): Finding[] => {
		if (projection === null || (projection >= min && projection <= max)) return [];
		const nearest = Math.min(Math.max(projection, min), max);
		return [
			{
				code: "projection-out-of-range",
				where,
				figures: { projection, min, max },
				remedies: [
					{
						action: "set-projection",
						figures: { projection: nearest },
						change: [{ op: "replace", path, value: nearest }],
					},
				],
			},
		];
	});
}
