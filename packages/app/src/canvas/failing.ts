import { cornerBend, type Point, pointOffFace, step } from "@baywright/geometry";
import type { Finding } from "@baywright/setout";
import type { Subject } from "./scene.ts";

/** A clearance that is not kept: where, and by how much. Lengths mm. */
export interface Failing {
	readonly finding: number;
	/** On the track's centre line, or on the bend that was tried. */
	readonly track: Point;
	/** On the wall or the obstacle. */
	readonly thing: Point;
	/** Between the two; under 0 where the track would run inside the wall; null where no bend was tried. */
	readonly distance: number | null;
	/** What the system keeps. */
	readonly clearance: number;
	/** The tightest bend that this track makes, where it finds no room. */
	readonly tried: TriedBend | null;
}

export interface TriedBend {
	readonly centre: Point;
	readonly radius: number;
	readonly from: Point;
	readonly to: Point;
}

/** mm: clearances that fail nearer together than this are one. */
const SAME_PLACE = 1;

/** Whether a finding is about a clearance: it is drawn as one and not as a mark on its place. */
export const isAboutClearance = ({ code }: Finding): boolean =>
	code === "track-too-near-wall" || code === "obstacle-in-the-way" || code === "no-room-round-corner";

/** Every clearance that fails, the worst of those at one place. */
export function failings(subject: Subject): Failing[] {
	const all: Failing[] = [];
	subject.plan.findings.forEach((finding, index) => {
		if (!isAboutClearance(finding)) return;
		const failing = failingOf(finding, index, subject);
		if (failing === null) return;
		const same = all.findIndex(
			({ thing }) => Math.hypot(thing.x - failing.thing.x, thing.y - failing.thing.y) < SAME_PLACE,
		);
		if (same < 0) all.push(failing);
		else if ((failing.distance ?? 0) < ((all[same] as Failing).distance ?? 0)) all[same] = failing;
	});
	return all;
}

function failingOf(finding: Finding, index: number, subject: Subject): Failing | null {
	const { where, figures } = finding;
	if (finding.code === "no-room-round-corner") return noRoom(finding, index, subject);
	const { at: track, from: thing } = where;
	if (track === undefined || thing === undefined) return null;
	const [distance, clearance] = [Number(figures.distance), Number(figures.clearance)];
	return { finding: index, track, thing, distance, clearance, tried: null };
}

/** The corner, and how near the tightest bend would come to it; beside a bowed wall only the corner. */
function noRoom({ where, figures }: Finding, index: number, { plan }: Subject): Failing | null {
	const { chain, projections } = plan;
	const { corner = -1 } = where;
	const thing = chain?.corners[corner];
	const [before, after] = [chain?.walls[corner - 1], chain?.walls[corner]];
	if (chain === null || thing === undefined || !before || !after) return null;
	const clearance = Number(figures.clearance);
	const none: Failing = { finding: index, track: thing, thing, distance: null, clearance, tried: null };
	const turn = chain.turns[corner] as (typeof chain.turns)[number];
	if (before.bow !== null || after.bow !== null || turn > 0) return none;
	const radius = Number(figures.radius);
	const [left, right] = [projections[corner - 1] ?? 0, projections[corner] ?? 0];
	const { setBack } = cornerBend(turn, left, right, radius);
	const start = before.length - setBack[0];
	const centre = pointOffFace(chain, corner - 1, start, left - radius);
	const [dx, dy] = [thing.x - centre.x, thing.y - centre.y];
	const away = Math.hypot(dx, dy);
	if (!(away > 0)) return none;
	return {
		...none,
		track: step(centre, dx / away, dy / away, radius),
		distance: radius - away,
		tried: {
			centre,
			radius,
			from: pointOffFace(chain, corner - 1, start, left),
			to: pointOffFace(chain, corner, setBack[1], right),
		},
	};
}
