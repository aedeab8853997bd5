import type { FitFault, WallChain, WallFace } from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { wouldFit } from "./fit-bay.ts";
import { otherSystems, setProjection } from "./remedies.ts";
import { endsOf } from "./track-rule.ts";

/** A fault of the fit as a finding, with the remedies that were tried and do fit. Remedy figures are whole mm on the safe side. */
export function fitFinding(
	fault: FitFault,
	bay: Bay,
	chain: WallChain,
	system: TrackSystem,
	others: readonly TrackSystem[],
): Finding {
	switch (fault.kind) {
		case "end-off-wall": {
			const { end, wall, at, length } = fault;
			return { code: "end-off-wall", where: { wall, end }, figures: { at, length }, remedies: [wholeLength(end)] };
		}
		case "ends-reversed":
			return {
				code: "ends-reversed",
				where: {},
				figures: {},
				remedies: [{ ...wholeLength("left"), change: [...wholeLength("left").change, ...wholeLength("right").change] }],
			};
		case "legs-do-not-meet": {
			const { corner } = fault;
			return { code: "legs-do-not-meet", where: { corner }, figures: {}, remedies: otherSystems(bay, chain, others) };
		}
		case "bow-too-tight": {
			const { wall, radius, least } = fault;
			return {
				code: "bow-too-tight",
				where: { wall },
				figures: { radius, least },
				remedies: [...projectionForBow(bay, chain, system, wall, least), ...otherSystems(bay, chain, others)],
			};
		}
		case "no-room-round-corner": {
			const { corner, radius, greatest, turn } = fault;
			const needed = system.clearance * Math.cos(turn / 2) + radius * (1 - Math.cos(turn / 2));
			return {
				code: "no-room-round-corner",
				where: { corner },
				figures: { radius, greatest, clearance: system.clearance, needed },
				remedies: [
					...moreProjection(bay, chain, system, needed),
					...otherSystems(bay, chain, others),
					...endAtCorner(bay, chain, system, corner),
				],
			};
		}
		case "projection-change-at-slight-turn": {
			const { corner, left, right, turn } = fault;
			return {
				code: "projection-change-at-slight-turn",
				where: { corner },
				figures: { left, right, turn },
				remedies: [projectionOfWall(corner, left), projectionOfWall(corner - 1, right)],
			};
		}
		case "radius-below-least": {
			const { corner, radius, least } = fault;
			const remedies = radiusRemedies(bay, chain, system, corner, Math.ceil(least));
			return { code: "radius-below-least", where: { corner }, figures: { radius, least }, remedies };
		}
		case "radius-too-large": {
			const { corner, radius, greatest } = fault;
			const remedies = radiusRemedies(bay, chain, system, corner, Math.floor(greatest));
			return { code: "radius-too-large", where: { corner }, figures: { radius, greatest }, remedies };
		}
		case "leg-too-short": {
			const { wall, length, needed, gain } = fault;
			const { faceLength: wallLength } = chain.walls[wall] as WallFace;
			const short = needed - length;
			return {
				code: "leg-too-short",
				where: { wall },
				figures: { length, needed, short, wallLength, neededWall: wallLength + short },
				remedies: [
					...otherProjection(bay, chain, system, short, gain),
					...smoothest(bay, chain, system),
					...otherSystems(bay, chain, others),
				],
			};
		}
	}
}

const wholeLength = (end: "left" | "right"): Remedy => ({
	action: "track-to-end-of-bay",
	figures: {},
	change: [{ op: "replace", path: end === "left" ? "/track/start" : "/track/end", value: null }],
});

const projectionOfWall = (wall: number, projection: number): Remedy => ({
	action: "set-wall-projection",
	figures: { wall, projection },
	change: [{ op: "replace", path: `/walls/${wall}/projection`, value: projection }],
});

/** Another radius for this corner, and giving it up to the track's own choice. */
function radiusRemedies(bay: Bay, chain: WallChain, system: TrackSystem, corner: number, radius: number): Remedy[] {
	const { bends } = bay.track;
	const index = bends.findIndex((bend) => bend.corner === corner);
	const path = `/track/bends/${index}`;
	const remedies: Remedy[] = [];
	if (wouldFit(bay, chain, system, { bends: bends.with(index, { corner, radius }) }))
		remedies.push({
			action: "set-radius",
			figures: { corner, radius },
			change: [{ op: "replace", path: `${path}/radius`, value: radius }],
		});
	if (wouldFit(bay, chain, system, { bends: bends.toSpliced(index, 1) }))
		remedies.push({ action: "release-radius", figures: { corner }, change: [{ op: "remove", path }] });
	if (remedies.length === 0 && wouldFit(bay, chain, system, { bends: [] }))
		remedies.push({
			action: "release-all-radii",
			figures: {},
			change: [{ op: "replace", path: "/track/bends", value: [] }],
		});
	return remedies;
}

/** Fewer, wider bends inside what the brackets reach. */
function smoothest(bay: Bay, chain: WallChain, system: TrackSystem): Remedy[] {
	if (bay.track.follow === "smoothest" || !wouldFit(bay, chain, system, { follow: "smoothest" })) return [];
	return [
		{
			action: "follow-smoothest",
			figures: {},
			change: [{ op: "replace", path: "/track/follow", value: "smoothest" }],
		},
	];
}

/** Legs between internal corners are longer nearer to the walls, between external ones further off. */
function otherProjection(bay: Bay, chain: WallChain, system: TrackSystem, short: number, gain: number): Remedy[] {
	const usual = bay.track.projection ?? system.projection.default;
	const exact = usual - short / gain;
	return tryProjection(bay, chain, system, gain > 0 ? Math.floor(exact) : Math.ceil(exact));
}

/** Round an external corner a track passes further out the more it projects. */
const moreProjection = (bay: Bay, chain: WallChain, system: TrackSystem, needed: number): Remedy[] =>
	tryProjection(bay, chain, system, Math.ceil(needed));

/** The leg along a wall that bows away from the room is wider the nearer it is to it, along one that bows into it the further off. */
function projectionForBow(bay: Bay, chain: WallChain, system: TrackSystem, wall: number, least: number): Remedy[] {
	const bow = chain.walls[wall]?.bow ?? null;
	if (bow === null) return [];
	return tryProjection(
		bay,
		chain,
		system,
		bow.turn > 0 ? Math.floor(bow.radius - least) : Math.ceil(least - bow.radius),
	);
}

function tryProjection(bay: Bay, chain: WallChain, system: TrackSystem, projection: number): Remedy[] {
	if (!wouldFit(bay, chain, system, { projection })) return [];
	return [setProjection(projection)];
}

/** From an external edge to the end of a track that stops at it, mm: where the wall no longer breaks out. */
const SHORT_OF_EDGE = 75;

/** The longer part of the track, ended short of a corner that it cannot pass. */
function endAtCorner(bay: Bay, chain: WallChain, system: TrackSystem, corner: number): Remedy[] {
	const before = chain.walls[corner - 1] as WallFace;
	const lengths = chain.walls.map(({ faceLength }) => faceLength);
	const { start, end } = endsOf(bay, lengths);
	const along = (from: number, to: number) => lengths.slice(from, to).reduce((sum, length) => sum + length, 0);
	const leftIsLonger = along(start.wall, corner) >= along(corner, end.wall + 1);
	const place = leftIsLonger
		? { wall: corner - 1, at: Math.floor(before.faceLength - SHORT_OF_EDGE) }
		: { wall: corner, at: SHORT_OF_EDGE };
	const key = leftIsLonger ? "end" : "start";
	if (place.at <= 0 || !wouldFit(bay, chain, system, { [key]: place })) return [];
	return [
		{ action: "end-at-corner", figures: { corner }, change: [{ op: "replace", path: `/track/${key}`, value: place }] },
	];
}
