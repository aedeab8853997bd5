import { footOnFace, type WallChain } from "@baywright/geometry";
import type { BayPlan } from "@baywright/setout";
import { bentStretches } from "../canvas/track-shape.ts";
import { alongOf, type Unrolled } from "./unrolled.ts";

/** The track as it is seen on the unrolled faces: stations (mm) set against places along them (mm). */
export interface TrackRun {
	readonly knots: readonly { readonly station: number; readonly along: number }[];
	readonly bends: readonly RunBend[];
	readonly from: number;
	readonly to: number;
}

/** What is bent: round a corner, or along a bowed wall. */
export interface RunBend {
	readonly bow: boolean;
	/** Its first corner, or the bowed wall. */
	readonly of: number;
	readonly radius: number;
	readonly from: number;
	readonly to: number;
}

/**
 * The track in front of the walls that it follows; across a corner it goes evenly from the foot of one end of its bend to
 * the other's. Round an external corner the feet meet at the corner. Null where no track fits.
 */
export function trackRun(plan: BayPlan, unrolled: Unrolled): TrackRun | null {
	const { path, chain } = plan;
	if (path === null || chain === null) return null;
	const knots: { station: number; along: number }[] = [];
	const tie = (station: number, wall: number, at: number) => {
		const along = Math.max(alongOf(unrolled, wall, at), knots.at(-1)?.along ?? 0);
		knots.push({ station, along });
	};
	for (const segment of path.segments) {
		if (segment.kind === "bend" || (segment.kind === "straight" && segment.crosses)) continue;
		tie(segment.start, segment.wall, footAt(chain, segment.wall, segment.from));
		tie(segment.start + segment.length, segment.wall, footAt(chain, segment.wall, segment.to));
	}
	if (knots.length === 0) return null;
	const bends = bentStretches(plan).map((segment): RunBend => {
		const bow = segment.kind === "bow";
		return {
			bow,
			of: bow ? segment.wall : (segment.corners[0] as number),
			radius: segment.radius,
			from: alongAt(knots, segment.start),
			to: alongAt(knots, segment.start + segment.length),
		};
	});
	return { knots, bends, from: alongAt(knots, 0), to: alongAt(knots, path.length) };
}

/** Where a station of the track is seen along the unrolled faces, mm. */
export const stationAlong = ({ knots }: TrackRun, station: number): number => alongAt(knots, station);

/** The station of the track that is seen at a place along the unrolled faces, mm: the first, where several are. */
export function stationAt({ knots }: TrackRun, along: number): number {
	const after = knots.findIndex((knot) => knot.along >= along);
	const right = knots[after < 0 ? knots.length - 1 : after] as TrackRun["knots"][number];
	const left = knots[after - 1];
	if (left === undefined || right.along === left.along) return right.station;
	return left.station + ((right.station - left.station) * (along - left.along)) / (right.along - left.along);
}

function alongAt(knots: TrackRun["knots"], station: number): number {
	const after = knots.findIndex((knot) => knot.station >= station);
	const right = knots[after < 0 ? knots.length - 1 : after] as TrackRun["knots"][number];
	const left = knots[after - 1];
	if (left === undefined || right.station === left.station) return right.along;
	return left.along + ((right.along - left.along) * (station - left.station)) / (right.station - left.station);
}

const footAt = (chain: WallChain, wall: number, p: { readonly x: number; readonly y: number }): number =>
	footOnFace(chain, wall, p).at;
