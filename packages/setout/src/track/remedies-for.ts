import {
	behindRemedies,
	meetingRemedies,
	offTrackRemedies,
	overlapRemedies,
	stackRemedies,
} from "../curtains/curtain-remedies.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import { endsForShortPiece } from "../fitted/fitted-findings.ts";
import { extraBrackets } from "../loads/extra-brackets.ts";
import { obstacleRemedies } from "./obstacle-remedies.ts";
import {
	forBow,
	forCorner,
	type Needed,
	projectionForBow,
	projectionRoundCorner,
	wideEnoughToCarry,
} from "./projection-remedies.ts";
import { withoutFaulty, withoutSuspects } from "./reading-remedies.ts";
import {
	drawAsPair,
	follow,
	moveEnd,
	setProjection,
	setRadius,
	setWallProjection,
	swapEnds,
	type TrackEnd,
	toEndOfBay,
} from "./remedies.ts";
import {
	curing,
	flatterBows,
	levelProjections,
	nearestCure,
	otherLine,
	otherProjection,
	otherSystems,
	otherWallProjections,
	type Refused,
	releases,
} from "./search-remedies.ts";
import { endedAtCorner, endedBeforeStretch, endMovedAlong, endMovedPast } from "./shorter-track.ts";

/**
 * What would cure a finding: every remedy has been tried on the whole plan, and leads to one without this finding and without any refusal
 * that is not there now. Those that leave no refusal come first, of these the likeliest; figures are whole mm.
 */
export function remediesFor(finding: Finding, refused: Refused): Remedy[] {
	// Back to the walls comes first: what is tried on the smoothest line takes long.
	const walls = FIT.has(finding.code) && refused.bay.track.follow === "smoothest" ? otherLine(refused, finding) : [];
	const likely = likelyRemedies(finding, refused);
	const found = likely.length > 0 || walls.length > 0 ? [...walls, ...likely] : lastResorts(finding, refused);
	return clearingFirst(found, refused);
}

/** Those after which nothing at all is refused come first, else as they were. */
function clearingFirst(remedies: readonly Remedy[], { trial }: Refused): Remedy[] {
	if (remedies.length < 2) return [...remedies];
	const clears = remedies.map(({ change }) => trial.clears(change));
	return [...remedies.filter((_, i) => clears[i]), ...remedies.filter((_, i) => !clears[i])];
}

function likelyRemedies(finding: Finding, refused: Refused): Remedy[] {
	const { bay, chain } = refused;
	const { code, where, figures } = finding;
	const wall = where.wall ?? 0;
	const corner = where.corner ?? 0;
	const cures = (...remedies: Remedy[]) => curing(refused, finding, remedies);
	switch (code) {
		case "corner-folded":
			return flatterBows(refused, finding, [corner - 1, corner]);
		case "walls-cross":
			return flatterBows(refused, finding, [wall, Number(figures.other)]);
		case "bow-too-deep":
			return flatterBows(refused, finding, [wall]);
		case "projection-out-of-range":
			return projectionInRange(finding, refused);
		case "end-off-wall": {
			const end = where.end as TrackEnd;
			const length = Math.floor(chain?.walls[wall]?.faceLength ?? 0);
			const nearest = Number(figures.at) < 0 ? 0 : length;
			const onWall = nearestCure(refused, finding, (at) => moveEnd(end, wall, at), nearest, [0, length]);
			const remedies = [...onWall, ...cures(toEndOfBay(end))];
			const beside = end === "left" ? wall + 1 : wall;
			return remedies.length > 0 ? remedies : endMovedPast(refused, finding, end, beside);
		}
		case "ends-reversed":
			return firstThatCure(
				() => cures(swapEnds(bay.track)),
				() => cures(toEndOfBay("left"), toEndOfBay("right")),
				() => cures(toEndOfBay("left", "right")),
				() => eitherEndMoved(finding, refused),
			);
		case "projection-change-at-slight-turn": {
			const alike = cures(
				setWallProjection(corner, Number(figures.left)),
				setWallProjection(corner - 1, Number(figures.right)),
			);
			return [...alike, ...levelProjections(refused, finding)];
		}
		case "radius-below-least":
		case "radius-too-large":
			return [...otherRadius(finding, refused), ...releases(refused, finding, [corner])];
		case "legs-do-not-meet":
			return [
				...levelProjections(refused, finding),
				...otherProjection(refused, finding),
				...otherWallProjections(refused, finding, [corner - 1, corner]),
				...lineOrSystem(finding, refused),
			];
		case "bow-too-tight":
			return [...projectionForBow(finding, refused), ...lineOrSystem(finding, refused, forBow(finding, refused))];
		case "no-room-round-corner":
			return [
				...projectionRoundCorner(finding, refused),
				...releases(refused, finding, [corner]),
				...lineOrSystem(finding, refused, forCorner(finding, refused)),
				...endedAtCorner(refused, finding, corner),
			];
		case "end-too-near-corner": {
			const end = where.end as TrackEnd;
			const further = endMovedAlong(refused, finding, end);
			return [
				...further,
				...levelProjections(refused, finding),
				...endMovedPast(refused, finding, end, corner),
				...releases(refused, finding, [corner]),
				...lineOrSystem(finding, refused),
			];
		}
		case "track-too-short":
			return [
				...eitherEndMoved(finding, refused),
				...cures(toEndOfBay("left", "right")),
				...otherSystems(refused, finding),
			];
		case "leg-too-short":
			return [
				...releases(refused, finding, [wall, wall + 1]),
				...otherProjection(refused, finding),
				...moreAlike(finding, refused),
				...lineOrSystem(finding, refused),
				...endOffWall(finding, refused),
			];
		case "track-too-near-wall":
		case "track-crosses-itself":
			return [
				...eitherEndMoved(finding, refused),
				...otherProjection(refused, finding),
				...lineOrSystem(finding, refused),
			];
		case "obstacle-in-the-way":
			return [...obstacleRemedies(finding, refused), ...smoothest(finding, refused)];
		case "piece-longer-than-stock":
			return otherSystems(refused, finding);
		case "piece-too-short":
			return [...eitherEndMoved(finding, refused), ...otherSystems(refused, finding)];
		case "stack-on-bend":
		case "stacks-meet":
		case "stack-overhangs":
			return stackRemedies(finding, refused);
		case "overlap-on-bend":
		case "leading-edges-on-bend":
			return meetingRemedies(finding, refused);
		case "curtain-off-track":
			return offTrackRemedies(finding, refused);
		case "curtains-not-hung":
			return cures(drawAsPair);
		case "curtains-overlap":
			return overlapRemedies(finding, refused);
		case "curtain-touches-behind":
			return behindRemedies(finding, refused);
		case "brackets-on-tight-bow":
			return [...cures(...wideEnoughToCarry(finding, refused)), ...otherSystems(refused, finding)];
		case "bracket-overloaded":
			return firstThatCure(
				() => extraBrackets(finding, refused),
				() => systemsThatCarry(finding, refused),
			);
		case "cut-piece-too-short":
			return cures(
				...endsForShortPiece(
					finding,
					bay,
					(chain?.walls ?? []).map(({ faceLength }) => faceLength),
				),
			);
		case "readings-disagree":
			return withoutSuspects(finding, refused);
		case "readings-cannot-settle":
			return withoutFaulty(finding, refused);
		case "no-smoother-track":
		case "smoothest-is-worse":
			return cures(follow("walls"));
		default:
			return [];
	}
}

/** The nearest that the brackets reach: the system's own figure, whole or not; where that does not do, another in their range. */
function projectionInRange(finding: Finding, refused: Refused): Remedy[] {
	const { wall } = finding.where;
	const { min, max } = refused.system.projection;
	const asked = Number(finding.figures.projection);
	const remedyOf = (one: number) => (wall === undefined ? setProjection(one) : setWallProjection(wall, one));
	return firstThatCure(
		() => curing(refused, finding, [remedyOf(Math.min(Math.max(asked, min), max))]),
		() => [
			...nearestCure(refused, finding, remedyOf, asked, [min, max]),
			...levelProjections(refused, finding),
			...otherSystems(refused, finding),
		],
	);
}

const eitherEndMoved = (finding: Finding, refused: Refused): Remedy[] => [
	...endMovedAlong(refused, finding, "left"),
	...endMovedAlong(refused, finding, "right"),
];

/** The remedies of the first search that finds any. */
function firstThatCure(...searches: readonly (() => Remedy[])[]): Remedy[] {
	for (const search of searches) {
		const remedies = search();
		if (remedies.length > 0) return remedies;
	}
	return [];
}

const smoothest = (finding: Finding, refused: Refused): Remedy[] =>
	refused.bay.track.follow === "smoothest" ? [] : otherLine(refused, finding);

const lineOrSystem = (finding: Finding, refused: Refused, needed?: Needed): Remedy[] => [
	...smoothest(finding, refused),
	...otherSystems(refused, finding, needed),
];

/** Other systems that state what their brackets carry, and carry this. */
function systemsThatCarry(finding: Finding, refused: Refused): Remedy[] {
	const others = refused.others.filter(({ bracket }) => bracket.maxLoad !== null);
	return otherSystems({ ...refused, others }, finding);
}

/** Projections that differ either side of a corner shift the bend along a wall: all alike, or another beside the wall that is too short. */
function moreAlike(finding: Finding, refused: Refused): Remedy[] {
	const { walls, track } = refused.bay;
	const wall = finding.where.wall as number;
	const alike = levelProjections(refused, finding);
	// On the smoothest line trying wall after wall takes too long.
	const search = alike.length === 0 && track.follow === "walls" && walls.some(({ projection }) => projection !== null);
	return search ? otherWallProjections(refused, finding, [wall - 1, wall, wall + 1]) : alike;
}

/** Where nothing likely helps: no walls' own projections, or others; no radii set; a shorter track. */
function lastResorts(finding: Finding, refused: Refused): Remedy[] {
	if (!FIT.has(finding.code)) return [];
	const { wall, corner } = finding.where;
	const near = wall === undefined ? [(corner ?? 1) - 1, corner ?? 0] : [wall - 1, wall, wall + 1];
	const set = refused.bay.track.bends.map((bend) => bend.corner);
	return firstThatCure(
		() => levelProjections(refused, finding),
		() => otherWallProjections(refused, finding, near),
		() => releases(refused, finding, set),
		() => otherSystems(refused, finding),
		() => endedRound(finding, refused),
	);
}

/** Refusals that say how the track lies. */
const FIT: ReadonlySet<Finding["code"]> = new Set([
	"legs-do-not-meet",
	"bow-too-tight",
	"no-room-round-corner",
	"projection-change-at-slight-turn",
	"projection-out-of-range",
	"end-too-near-corner",
	"end-off-wall",
	"ends-reversed",
	"radius-below-least",
	"radius-too-large",
	"leg-too-short",
	"track-too-near-wall",
	"track-crosses-itself",
	"obstacle-in-the-way",
]);

/** The track ended before the wall or the corner at which it is refused. */
function endedRound(finding: Finding, refused: Refused): Remedy[] {
	const { wall, corner } = finding.where;
	const faces = refused.chain?.walls ?? [];
	if (wall === undefined) return corner === undefined ? [] : endedAtCorner(refused, finding, corner);
	const before = wall - 1;
	const after = wall + 1;
	const from = faces[before] === undefined ? { wall, at: 0 } : { wall: before, at: faces[before].faceLength };
	const to = faces[after] === undefined ? { wall, at: faces[wall]?.faceLength ?? 0 } : { wall: after, at: 0 };
	return endedBeforeStretch(refused, finding, { from, to });
}

/** The radius nearest to the one that was set. */
function otherRadius(finding: Finding, refused: Refused): Remedy[] {
	const { code, where, figures } = finding;
	const corner = where.corner as number;
	const index = refused.bay.track.bends.findIndex((bend) => bend.corner === corner);
	if (index < 0) return [];
	const remedyOf = (radius: number) => setRadius(index, corner, radius);
	const least = code === "radius-below-least" ? Math.ceil(Number(figures.least)) : 1;
	const greatest = code === "radius-below-least" ? 2 * least : Math.floor(Number(figures.greatest));
	return nearestCure(refused, finding, remedyOf, Number(figures.radius), [least, greatest]);
}

/** Off the first or the last wall of the track, where that is the one too short. */
function endOffWall(finding: Finding, refused: Refused): Remedy[] {
	const { bay, chain } = refused;
	const wall = finding.where.wall as number;
	const first = bay.track.start?.wall ?? 0;
	const last = bay.track.end?.wall ?? (chain?.walls.length ?? 1) - 1;
	if (wall === first) return endMovedPast(refused, finding, "left", wall + 1);
	return wall === last ? endMovedPast(refused, finding, "right", wall) : [];
}
