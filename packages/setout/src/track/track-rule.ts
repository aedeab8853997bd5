import type { BareBend, FitRule, TrackEnds } from "@baywright/geometry";
import { fittedProjections } from "../fitted/already-there.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { besideBend } from "./bend-spans.ts";

/** Projection of the centre line from each wall's face, mm: as its brackets really stand off, else as planned. */
export function projectionsOf(bay: Bay, system: TrackSystem): number[] {
	const fitted = new Map(fittedProjections(bay.fitted, bay.walls.length).map(({ wall, mean }) => [wall, mean]));
	return projectionsPlanned(bay, system).map((planned, wall) => fitted.get(wall) ?? planned);
}

/** As set: the wall's own, else the track's, else the system's. */
export function projectionsPlanned({ walls, track }: Bay, system: TrackSystem): number[] {
	const usual = track.projection ?? system.projection.default;
	return walls.map((wall) => wall.projection ?? usual);
}

/** Where the track starts and ends: by default from one end of the bay to the other. */
export function endsOf({ track, walls }: Bay, lengths: readonly number[]): TrackEnds {
	const last = Math.max(walls.length - 1, 0);
	return {
		start: track.start ?? { wall: 0, at: 0 },
		end: track.end ?? { wall: last, at: lengths[last] ?? 0 },
	};
}

/** What the fit must keep to on this track. */
export function fitRuleOf({ track, walls, fitted }: Bay, system: TrackSystem): FitRule {
	return {
		leastRadius: system.minRadius,
		preferredRadius: track.radius ?? system.preferredRadius,
		straightBesideBend: system.straightBesideBend,
		endStraight: system.endTakeUp,
		clearance: system.clearance,
		corridor:
			track.follow === "walls"
				? null
				: {
						least: Math.max(system.projection.min, system.clearance),
						greatest: system.projection.max,
						kept: new Set([
							...walls.flatMap(({ projection }, wall) => (projection === null ? [] : [wall])),
							...fittedProjections(fitted, walls.length).map(({ wall }) => wall),
						]),
						bare: bareBendOf(system),
					},
		setRadii: new Map(track.bends.map(({ corner, radius }) => [corner, radius])),
	};
}

/** How long a bend that carries no bracket may be, so that the brackets beside it are no further apart than the system allows. */
function bareBendOf(system: TrackSystem): BareBend | null {
	const { acrossBendMax, carryRadius } = system.bracket;
	if (acrossBendMax === null) return null;
	return { under: carryRadius ?? Number.POSITIVE_INFINITY, longest: acrossBendMax - 2 * besideBend(system) };
}

/** How far above the top of the highest opening a track goes where nobody says otherwise, mm (common practice, no source). */
const ABOVE_OPENING = 100;

/** Height of the track above the floor, mm; null where neither the job nor an opening says it. */
export function heightOf({ track, openings }: Bay): number | null {
	if (track.height !== null) return track.height;
	const heads = openings.flatMap(({ head }) => (head === null ? [] : [head]));
	return heads.length > 0 ? Math.max(...heads) + ABOVE_OPENING : null;
}
