import type { FitFault, WallChain, WallFace } from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { endsOf, projectionsOf } from "./track-rule.ts";

/** A fault of the fit as a finding; its remedies are looked for by trying (`remediesFor`). */
export function fitFinding(fault: FitFault, bay: Bay, chain: WallChain, system: TrackSystem): Finding {
	const of = (code: Finding["code"], where: Finding["where"], figures: Finding["figures"]): Finding => ({
		code,
		where,
		figures,
		remedies: [],
	});
	switch (fault.kind) {
		case "end-off-wall": {
			const { end, wall, at, length } = fault;
			return of("end-off-wall", { wall, end }, { at, length });
		}
		case "ends-reversed":
			return of("ends-reversed", {}, {});
		case "legs-do-not-meet": {
			const [left, right] = projectionsOf(bay, system).slice(fault.corner - 1) as [number, number];
			return of("legs-do-not-meet", { corner: fault.corner }, { left, right });
		}
		case "bow-too-tight": {
			const { wall, radius, least } = fault;
			return of("bow-too-tight", { wall }, { radius, least });
		}
		case "no-room-round-corner": {
			const { corner, last, radius, greatest } = fault;
			const run = last === corner ? {} : { last };
			const figures = { radius, greatest, clearance: system.clearance, ...run };
			const needed = projectionNeeded(fault, bay, chain, system);
			return of("no-room-round-corner", { corner }, needed === null ? figures : { ...figures, needed });
		}
		case "projection-change-at-slight-turn": {
			const { corner, left, right, turn } = fault;
			return of("projection-change-at-slight-turn", { corner }, { left, right, turn });
		}
		case "radius-below-least": {
			const { corner, radius, least } = fault;
			return of("radius-below-least", { corner }, { radius, least });
		}
		case "radius-too-large": {
			const { corner, radius, greatest } = fault;
			return of("radius-too-large", { corner }, { radius, greatest });
		}
		case "leg-too-short":
			return shortLeg(fault, bay, chain, system);
	}
}

/** The projection with which a bend of the least radius keeps clear of an external corner, mm: c·cos(|δ|/2) + R(1 − cos(|δ|/2)). */
export const projectionRound = (turn: number, { clearance, minRadius }: TrackSystem): number =>
	clearance * Math.cos(turn / 2) + minRadius.external * (1 - Math.cos(turn / 2));

/** The same where it is true: round one corner between straight walls at one projection; null elsewhere, where it is found by trying. */
function projectionNeeded(
	{ corner, last, turn }: Extract<FitFault, { kind: "no-room-round-corner" }>,
	bay: Bay,
	{ walls }: WallChain,
	system: TrackSystem,
): number | null {
	const projections = projectionsOf(bay, system);
	const alike = projections[corner - 1] === projections[corner];
	const straight = walls[corner - 1]?.bow === null && walls[corner]?.bow === null;
	if (corner !== last || !alike || !straight || turn > 0) return null;
	return projectionRound(turn, system);
}

/** Too short a leg: because the track ends on it too near to its corner, because the track is no longer than its ends, or because of the wall. */
function shortLeg(
	{ wall, length, needed }: Extract<FitFault, { kind: "leg-too-short" }>,
	bay: Bay,
	chain: WallChain,
	system: TrackSystem,
): Finding {
	const { start, end } = endsOf(
		bay,
		chain.walls.map(({ faceLength }) => faceLength),
	);
	const { faceLength, bow } = chain.walls[wall] as WallFace;
	const projection = projectionsOf(bay, system)[wall] as number;
	const stretch = bow === null ? 1 : (bow.radius - Math.sign(bow.turn) * projection) / bow.radius;
	const short = (needed - length) / stretch;
	const starts = wall === start.wall;
	const ends = wall === end.wall;
	if (starts && ends) return { code: "track-too-short", where: { wall }, figures: { length, needed }, remedies: [] };
	const unused = starts ? start.at : ends ? faceLength - end.at : 0;
	const fromCorner = faceLength - unused;
	if ((starts || ends) && unused >= short)
		return {
			code: "end-too-near-corner",
			where: { wall, corner: starts ? wall + 1 : wall, end: starts ? "left" : "right" },
			figures: { fromCorner, needed: fromCorner + short },
			remedies: [],
		};
	return {
		code: "leg-too-short",
		where: { wall },
		figures: {
			length,
			needed,
			short: short - unused,
			wallLength: faceLength,
			neededWall: faceLength + short - unused,
		},
		remedies: [],
	};
}
