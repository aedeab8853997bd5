import type { WallBow } from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { TrackSystem } from "../library/system.ts";
import { projectionRound } from "./fit-findings.ts";
import { setProjection, setWallProjection } from "./remedies.ts";
import { otherProjection, otherProjectionEitherSide, otherWallProjections, type Refused } from "./search-remedies.ts";

/** The projection, whole mm, at which a track on another system would do. */
export type Needed = (system: TrackSystem) => number | null;

/** Another projection with which the track along a bow is no tighter than it bends. */
export function projectionForBow(finding: Finding, refused: Refused): Remedy[] {
	const { bay, chain } = refused;
	const wall = finding.where.wall as number;
	const bow = chain?.walls[wall]?.bow ?? null;
	if (bow === null) return [];
	const projection = projectionForRadius(bow, Number(finding.figures.least));
	const own = bay.walls[wall]?.projection ?? null;
	const all = own === null ? otherProjection(refused, finding, projection) : [];
	return all.length > 0 ? all : otherWallProjections(refused, finding, [wall]);
}

/** The same for another system. */
export function forBow({ where }: Finding, { chain }: Refused): Needed {
	const bow = chain?.walls[where.wall as number]?.bow ?? null;
	return ({ minRadius }) =>
		bow === null ? null : projectionForRadius(bow, bow.turn > 0 ? minRadius.internal : minRadius.external);
}

/** The projection at which the track along a bow is as wide as brackets need. */
export function wideEnoughToCarry({ where, figures }: Finding, { bay, chain }: Refused): Remedy[] {
	const wall = where.wall as number;
	const bow = chain?.walls[wall]?.bow ?? null;
	if (bow === null || figures.least === undefined) return [];
	const projection = projectionForRadius(bow, Number(figures.least));
	return [bay.walls[wall]?.projection === null ? setProjection(projection) : setWallProjection(wall, projection)];
}

/** The leg along a wall that bows away from the room is wider the nearer it is to it, along one that bows into it the further off. */
const projectionForRadius = ({ turn, radius }: WallBow, least: number): number =>
	turn > 0 ? Math.floor(radius - least) : Math.ceil(least - radius);

/** Round an external corner a track passes further out the more it projects: the whole track, or one wall of the corner, or both. */
export function projectionRoundCorner(finding: Finding, refused: Refused): Remedy[] {
	const corner = finding.where.corner as number;
	const { needed } = finding.figures;
	const all =
		needed === undefined
			? otherProjection(refused, finding)
			: otherProjection(refused, finding, Math.ceil(Number(needed)));
	if (all.length > 0) return all;
	const one = otherWallProjections(refused, finding, [corner - 1, corner]);
	return one.length > 0 ? one : otherProjectionEitherSide(refused, finding, corner);
}

/** The same for another system, where one figure says it. */
export function forCorner({ where, figures }: Finding, { chain }: Refused): Needed {
	const turn = chain?.turns[where.corner as number] ?? 0;
	return (system) => (figures.needed === undefined ? null : Math.ceil(projectionRound(turn, system)));
}
