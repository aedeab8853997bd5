import { type Bay, type Job, wallName } from "@baywright/setout";
import { type Corner, kept, onBay } from "../edits/on-bay.ts";
import { stepFor } from "../snap/even.ts";
import { type Locus, line } from "../snap/locus.ts";
import type { Grip } from "./grip.ts";

/** A wall goes square to itself, + away from the room; the walls beside it follow with their ends. */
export const wallGrip: Grip = {
	move({ target: { index }, job, bay, from }, to, reach) {
		const before = job.bays[bay] as Bay;
		const out = wayOut(before, index, to.x - from.x, to.y - from.y);
		const drawn = reach > 0 ? drawnTo(before, index, out, reach) : null;
		return {
			job: moveWall(job, bay, index, drawn?.out ?? Math.round(out)),
			guides: drawn?.guide ? [drawn.guide] : [],
		};
	},
	label: ({ target, job, bay }) => `move the ${wallName(target.index, (job.bays[bay] as Bay).corners.length - 1)}`,
};

/** Moves one wall parallel to itself by `out` mm, + away from the room; the walls beside it follow with their ends. */
export function moveWall(job: Job, bay: number, wall: number, out: number): Job {
	return onBay(job, bay, (it) => {
		const unit = directionOf(it, wall);
		if (unit === null) return it;
		const [dx, dy] = [-unit[1] * out, unit[0] * out];
		const corners = it.corners.map(
			(at, i): Corner => (i === wall || i === wall + 1 ? [kept(at[0] + dx), kept(at[1] + dy)] : at),
		);
		return { ...it, corners: corners as unknown as Bay["corners"] };
	});
}

/** How far (mm) a way in the plan goes away from the room, square to a wall. */
export function wayOut(bay: Bay, wall: number, dx: number, dy: number): number {
	const unit = directionOf(bay, wall);
	return unit === null ? 0 : dy * unit[0] - dx * unit[1];
}

function directionOf({ corners }: Bay, wall: number): readonly [number, number] | null {
	const [from, to] = [corners[wall], corners[wall + 1]];
	if (!from || !to) return null;
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	return length === 0 ? null : [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** Sine of the angle within which walls are parallel. */
const PARALLEL = 1e-3;

/** In line with a parallel wall, or with the runs of the walls beside it, where those are square to it, in whole 5 mm. */
function drawnTo(
	bay: Bay,
	wall: number,
	out: number,
	reach: number,
): { readonly out: number; readonly guide: Locus | null } | null {
	const walls = bay.corners.length - 1;
	const unit = directionOf(bay, wall);
	const from = bay.corners[wall];
	if (unit === null || from === undefined) return null;
	const lined = Array.from({ length: walls }, (_, other) => other).flatMap((other) => {
		const along = directionOf(bay, other);
		const at = bay.corners[other];
		if (other === wall || along === null || at === undefined) return [];
		if (Math.abs(unit[0] * along[1] - unit[1] * along[0]) > PARALLEL) return [];
		const wanted = wayOut(bay, wall, at[0] - from[0], at[1] - from[1]);
		const guide = line(
			{ x: at[0], y: at[1] },
			Math.atan2(along[1], along[0]),
			`in line with the ${wallName(other, walls)}`,
		);
		return [{ out: wanted, away: Math.abs(wanted - out), guide }];
	});
	const [best] = lined.filter(({ away }) => away <= reach).sort((a, b) => a.away - b.away);
	if (best !== undefined) return { out: best.out, guide: best.guide };
	const even = evenOut(bay, wall, out, unit, stepFor(reach));
	return even === null ? null : { out: even, guide: null };
}

function evenOut(bay: Bay, wall: number, out: number, unit: readonly [number, number], step: number): number | null {
	for (const [beside, sign] of [
		[wall - 1, 1],
		[wall + 1, -1],
	] as const) {
		const along = directionOf(bay, beside);
		const [from, to] = [bay.corners[beside], bay.corners[beside + 1]];
		if (along === null || !from || !to) continue;
		const square = along[1] * unit[0] - along[0] * unit[1];
		if (Math.abs(Math.abs(square) - 1) > PARALLEL) continue;
		const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
		const grows = sign * Math.sign(square);
		return (Math.round((run + grows * out) / step) * step - run) * grows;
	}
	return null;
}
