import { type FittedTrack, standOff } from "@baywright/geometry";

/** The facets that a track's bends leave out, and how far it stands off the leg along each, mm. */
export const bridgedOf = ({ chain, projections, bends, radii }: FittedTrack) =>
	bends.elbows.flatMap((elbow, i) =>
		elbow.reverse !== null
			? []
			: Array.from({ length: elbow.last - elbow.first }, (_, j) => ({
					wall: elbow.first + j,
					standOff: standOff(chain, projections, elbow, radii[i] as number, elbow.first + j),
				})),
	);
