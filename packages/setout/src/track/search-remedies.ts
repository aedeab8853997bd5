import type { WallChain } from "@baywright/geometry";
import type { BayPlan } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { nearestWhole } from "./nearest-whole.ts";
import {
	follow,
	onSystem,
	onSystemAt,
	releaseAllRadii,
	releaseRadius,
	releaseTwoRadii,
	sameProjection,
	setProjection,
	setProjectionEitherSide,
	setRise,
	setWallProjection,
} from "./remedies.ts";
import type { Trial } from "./trial.ts";

/** A refused bay and what its remedies are tried on. */
export interface Refused {
	readonly bay: Bay;
	/** Null where the corners make no chain of walls. */
	readonly chain: WallChain | null;
	readonly system: TrackSystem;
	readonly others: readonly TrackSystem[];
	/** Its plan, and all that it tells. */
	readonly plan: BayPlan;
	readonly findings: readonly Finding[];
	readonly trial: Trial;
}

/** Those of some remedies that cure a finding. */
export const curing = ({ trial }: Refused, finding: Finding, remedies: readonly Remedy[]): Remedy[] =>
	remedies.filter(({ change }) => trial.cures(finding, change));

/** The remedy whose figure is nearest to the one wanted and which cures, as a list of one or none. */
export function nearestCure(
	{ trial }: Refused,
	finding: Finding,
	remedyOf: (value: number) => Remedy,
	wanted: number,
	range: readonly [number, number],
	tries?: number,
): Remedy[] {
	const value = nearestWhole((one) => trial.cures(finding, remedyOf(one).change), wanted, range, tries);
	return value === null ? [] : [remedyOf(value)];
}

/** Another projection of the whole track, nearest to the present one or to the one wanted. */
export function otherProjection(refused: Refused, finding: Finding, wanted = usualOf(refused)): Remedy[] {
	const { min, max } = refused.system.projection;
	return nearestCure(refused, finding, setProjection, wanted, [min, max]);
}

const usualOf = ({ bay, system }: Refused): number => bay.track.projection ?? system.projection.default;

/** Fewer tries where several walls are searched one after another. */
const TRIES_A_WALL = 6;

/** Another projection on one of some walls; where none alone does, none. */
export function otherWallProjections(refused: Refused, finding: Finding, walls: readonly number[]): Remedy[] {
	const { bay, system } = refused;
	const { min, max } = system.projection;
	return walls.flatMap((wall) => {
		if (bay.walls[wall] === undefined) return [];
		const wanted = bay.walls[wall].projection ?? usualOf(refused);
		return nearestCure(refused, finding, (one) => setWallProjection(wall, one), wanted, [min, max], TRIES_A_WALL);
	});
}

export function otherProjectionEitherSide(refused: Refused, finding: Finding, corner: number): Remedy[] {
	const { min, max } = refused.system.projection;
	const remedyOf = (one: number) => setProjectionEitherSide(corner, one);
	return nearestCure(refused, finding, remedyOf, usualOf(refused), [min, max], TRIES_A_WALL);
}

/** All walls at the track's own projection, where some have others. */
export function levelProjections(refused: Refused, finding: Finding): Remedy[] {
	const remedy = sameProjection(refused.bay.walls);
	return remedy.change.length < 2 ? [] : curing(refused, finding, [remedy]);
}

/** The other of the two lines that a track can take. */
export const otherLine = (refused: Refused, finding: Finding): Remedy[] =>
	curing(refused, finding, [follow(refused.bay.track.follow === "walls" ? "smoothest" : "walls")]);

/**
 * Other systems, those that plan with the fewest warnings first; at their own usual projection where this one is out of their range, or
 * at the one that is `needed` of them.
 */
export function otherSystems(
	refused: Refused,
	finding: Finding,
	needed: (system: TrackSystem) => number | null = () => null,
): Remedy[] {
	const { bay, others, trial } = refused;
	const kept = bay.track.projection;
	const remedies = others.flatMap((other) => {
		const { min, max } = other.projection;
		const keeps = kept !== null && kept >= min && kept <= max;
		const choices = keeps ? [onSystem(other, kept), onSystem(other, null)] : [onSystem(other, null)];
		const least = needed(other);
		if (least !== null && least >= min && least <= max) choices.push(onSystemAt(other, least));
		return choices.find(({ change }) => trial.cures(finding, change)) ?? [];
	});
	return remedies
		.map((remedy) => ({ remedy, warnings: trial.warnings(remedy.change) }))
		.sort((a, b) => a.warnings - b.warnings)
		.map(({ remedy }) => remedy);
}

/** Gives up as few of the radii that the user has set as will do: one at these corners, two of them, or all there are. */
export function releases(refused: Refused, finding: Finding, corners: readonly number[]): Remedy[] {
	const { bends } = refused.bay.track;
	if (bends.length === 0) return [];
	const set = bends.map(({ corner }, index) => ({ corner, index })).filter(({ corner }) => corners.includes(corner));
	const single = curing(
		refused,
		finding,
		set.map(({ corner, index }) => releaseRadius(index, corner)),
	);
	if (single.length > 0) return single;
	const pairs = set.flatMap((a, i) =>
		set.slice(i + 1).map((b) => releaseTwoRadii([a.index, b.index], a.corner, b.corner)),
	);
	const two = curing(refused, finding, pairs);
	return two.length > 0 ? two : curing(refused, finding, [releaseAllRadii]);
}

/** The bow nearest to the present one that cures: a flatter one of the same side. A rise that was taped stays as it was taped. */
export function flatterBows(refused: Refused, finding: Finding, walls: readonly number[]): Remedy[] {
	return walls.flatMap((wall) => {
		const rise = refused.bay.walls[wall]?.rise ?? 0;
		if (rise === 0) return [];
		const range = rise > 0 ? ([0, rise] as const) : ([rise, 0] as const);
		return nearestCure(refused, finding, (one) => setRise(wall, one), rise, range);
	});
}
