import { type Point, pointAt } from "@baywright/geometry";
import { type Finding, type Severity, severityOf } from "@baywright/setout";
import { isAboutClearance } from "./failing.ts";
import type { Subject } from "./scene.ts";
import { onFace } from "./wall-shape.ts";

/** One or more findings at the same place, shown as the worst of them. */
export interface FindingMark {
	readonly at: Point;
	readonly severity: Severity;
	/** The wall that is refused as a whole; null where the mark is about its place only. */
	readonly wall: number | null;
	/** The worst is about a clearance, which is drawn as such. */
	readonly clearance: boolean;
	/** Indexes into the plan's findings, worst first. */
	readonly findings: readonly number[];
}

/** Where a finding sits in the plan; null where it is about the bay as a whole. */
export function findingPlace({ where }: Finding, subject: Subject): Point | null {
	const { plan, bay, corners, walls } = subject;
	const onWall = (wall: number | undefined, from: number, to: number) => {
		const shape = wall === undefined ? undefined : walls[wall];
		return shape ? onFace(shape, (from + to) / 2).at : null;
	};
	const onTrack = (station: number | undefined) =>
		station === undefined || plan.path === null ? null : (pointAt(plan.path, station)?.at ?? null);

	if (where.at !== undefined) return finitePoint(where.at);
	if (where.station !== undefined && plan.path !== null) return onTrack(where.station);
	if (where.corner !== undefined) return corners[where.corner] ?? null;
	if (where.bracket !== undefined) return plan.brackets[where.bracket]?.at ?? null;
	if (where.joint !== undefined) return onTrack(plan.joints[where.joint]?.station);
	if (where.obstacle !== undefined) {
		const obstacle = bay.obstacles[where.obstacle];
		return obstacle ? onWall(obstacle.wall, obstacle.from, obstacle.to) : null;
	}
	if (where.opening !== undefined) {
		const opening = bay.openings[where.opening];
		return opening ? onWall(opening.wall, opening.from, opening.to) : null;
	}
	if (where.piece !== undefined) {
		const piece = plan.pieces.find(({ name }) => name === where.piece);
		return piece ? onTrack((piece.from + piece.to) / 2) : null;
	}
	if (where.end !== undefined) {
		const end = where.end === "left" ? bay.track.start : bay.track.end;
		return onWall(end?.wall, end?.at ?? 0, end?.at ?? 0) ?? corners.at(where.end === "left" ? 0 : -1) ?? null;
	}
	if (where.wall !== undefined) return onWall(where.wall, 0, walls[where.wall]?.length ?? 0);
	return null;
}

/** mm: findings nearer together than this share one mark. */
const SAME_PLACE = 1;

const RANK: Readonly<Record<Severity, number>> = { refusal: 0, warning: 1, note: 2 };

/** One mark for each place that has a finding. */
export function findingMarks(subject: Subject): FindingMark[] {
	const marks: { at: Point; findings: number[] }[] = [];
	subject.plan.findings.forEach((finding, index) => {
		const at = findingPlace(finding, subject);
		if (at === null) return;
		const there = marks.find((mark) => Math.hypot(mark.at.x - at.x, mark.at.y - at.y) < SAME_PLACE);
		if (there === undefined) marks.push({ at, findings: [index] });
		else there.findings.push(index);
	});
	const severity = (index: number): Severity => severityOf((subject.plan.findings[index] as Finding).code);
	return marks.map(({ at, findings }) => {
		const sorted = findings.sort((a, b) => RANK[severity(a)] - RANK[severity(b)]);
		const worst = severity(sorted[0] as number);
		return {
			at,
			severity: worst,
			wall: worst === "refusal" ? wholeWall(sorted, subject) : null,
			clearance: isAboutClearance(subject.plan.findings[sorted[0] as number] as Finding),
			findings: sorted,
		};
	});
}

function wholeWall(sorted: readonly number[], { plan }: Subject): number | null {
	const { where } = plan.findings[sorted[0] as number] as Finding;
	const { wall, at, station, corner, end, obstacle } = where;
	const only = [at, station, corner, end, obstacle].every((other) => other === undefined);
	return wall !== undefined && only ? wall : null;
}

const finitePoint = (at: Point): Point | null => (Number.isFinite(at.x) && Number.isFinite(at.y) ? at : null);
