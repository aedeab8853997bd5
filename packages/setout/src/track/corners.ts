import { cornerBend, type FittedTrack, greatestRadius, type Radians, radians } from "@baywright/geometry";
import type { CornerSetOut } from "../bay-plan.ts";

/** What a fitter marks out at each corner that the track goes round. */
export function cornersOf({ chain, projections, bends, radii }: FittedTrack): CornerSetOut[] {
	return radii.map((radius, i) => {
		const corner = bends.first + 1 + i;
		const turn = chain.turns[corner] as Radians;
		const left = projections[corner - 1] as number;
		const { setBack, sweep, cornerGap } =
			radius === 0 ? NO_BEND(left) : cornerBend(turn, left, projections[corner] as number, radius);
		return {
			corner,
			interiorAngle: radians(Math.PI - turn),
			radius,
			setBack,
			sweep,
			cornerGap,
			sprung: bends.sprung.has(i),
			least: bends.floor[i] as number,
			greatest: radius === 0 ? 0 : greatestRadius(bends, bends.least, i),
			chosen: bends.set.has(i),
		};
	});
}

const NO_BEND = (projection: number) => ({ setBack: [0, 0] as const, sweep: 0, cornerGap: projection });
