import { toDegrees } from "./angle.ts";
import type { WallBow, WallChain, WallFace } from "./chain.ts";
import type { FitFault, FitRule, TrackEnds, WallPlace } from "./fit.ts";
import { LENGTH_SLACK, SLIGHT_TURN } from "./tolerance.ts";

/** Track ends off their wall or the wrong way round. */
export function endFaults(chain: WallChain, { start, end }: TrackEnds): FitFault[] {
	const offLeft = offWall(chain, "left", start);
	const offRight = offWall(chain, "right", end);
	if (offLeft !== null || offRight !== null) return [offLeft, offRight].filter((fault) => fault !== null);
	const reversed = start.wall > end.wall || (start.wall === end.wall && end.at - start.at <= LENGTH_SLACK);
	return reversed ? [{ kind: "ends-reversed" }] : [];
}

/** Bowed walls whose legs would be too tight. */
export function bowFaults(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
): FitFault[] {
	const faults: FitFault[] = [];
	for (let wall = start.wall; wall <= end.wall; wall++) {
		const { bow } = chain.walls[wall] as WallFace;
		if (bow !== null) bowFault(bow, wall, projections[wall] as number, rule, faults);
	}
	return faults;
}

/** Where the turn is slight, legs of two projections would meet far away from the corner. */
export function unevenSlightTurns(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
): FitFault[] {
	const faults: FitFault[] = [];
	for (let wall = start.wall + 1; wall <= end.wall; wall++) {
		const turn = chain.turns[wall] as number;
		const left = projections[wall - 1] as number;
		const right = projections[wall] as number;
		if (left !== right && Math.abs(turn) < SLIGHT_TURN)
			faults.push({ kind: "projection-change-at-slight-turn", corner: wall, left, right, turn: toDegrees(turn) });
	}
	return faults;
}

/** The leg along a bowed wall is the arc concentric with it, and must bend no tighter than the track. */
function bowFault(bow: WallBow, wall: number, projection: number, { leastRadius }: FitRule, faults: FitFault[]): void {
	const radius = bow.radius - Math.sign(bow.turn) * projection;
	const least = bow.turn > 0 ? leastRadius.internal : leastRadius.external;
	if (radius < least - LENGTH_SLACK) faults.push({ kind: "bow-too-tight", wall, radius, least });
}

function offWall(chain: WallChain, end: "left" | "right", { wall, at }: WallPlace): FitFault | null {
	const length = chain.walls[wall]?.faceLength ?? 0;
	const onWall = length > 0 && at >= -LENGTH_SLACK && at <= length + LENGTH_SLACK;
	return onWall ? null : { kind: "end-off-wall", end, wall, at, length };
}
