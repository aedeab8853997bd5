import { type Bay, cornerName, formatAngle, formatLength, type Job, wallName } from "@baywright/setout";
import { roomAngle } from "./labels/figures.ts";
import { moveCorner, moveWall, wayOut } from "./moving.ts";
import type { Subject } from "./scene.ts";
import type { ScreenPoint } from "./viewport.ts";

/** What is taken hold of to be moved, and the job as it was then: every move starts from there. */
export interface Grip {
	readonly kind: "corner" | "wall";
	readonly index: number;
	readonly job: Job;
	readonly bay: number;
}

/** The job with what is held moved by a way in the plan, mm; a wall goes square to itself by whole millimetres. */
export function moved({ kind, index, job, bay }: Grip, dx: number, dy: number): Job {
	if (kind === "corner") return moveCorner(job, bay, index, dx, dy);
	return moveWall(job, bay, index, Math.round(wayOut(job.bays[bay] as Bay, index, dx, dy)));
}

/** What a history calls the move. */
export function moveLabel({ kind, index, job, bay }: Grip): string {
	const walls = (job.bays[bay] as Bay).corners.length - 1;
	return kind === "corner" ? `move ${cornerName(index, walls)}` : `move the ${wallName(index, walls)}`;
}

export interface Reading {
	readonly name: string;
	readonly figure: string;
}

/** The figures that change while something is held: runs and angles at and beside it. */
export function gripReadings({ kind, index, job }: Grip, { bay, walls, corners, unit }: Subject): Reading[] {
	const runs = kind === "corner" ? [index - 1, index] : [index - 1, index, index + 1];
	const angles = kind === "corner" ? [index] : [index, index + 1];
	const count = corners.length - 1;
	const before = job.bays.find(({ id }) => id === bay.id);
	const out = kind === "wall" && before ? wayOut(before, index, ...wayBetween(before, bay, index)) : null;
	return [
		...(out === null ? [] : [{ name: out < 0 ? "moved in" : "moved out", figure: formatLength(Math.abs(out), unit) }]),
		...runs.flatMap((wall) => {
			const shape = walls[wall];
			return shape ? [{ name: wallName(wall, count), figure: formatLength(shape.length, unit) }] : [];
		}),
		...angles.flatMap((corner) => {
			const left = walls[corner - 1]?.along.at(-1);
			const right = walls[corner]?.along[0];
			return left && right
				? [{ name: kind === "corner" ? "angle" : `angle ${corner}`, figure: formatAngle(roomAngle(left, right)) }]
				: [];
		}),
	];
}

/** Away from the room, on screen, where something is held; any length. */
export function gripOut({ kind, index }: Grip, { walls }: Subject): ScreenPoint {
	const before = kind === "corner" ? walls[index - 1]?.along.at(-1) : undefined;
	const after = walls[index]?.along[0];
	const ux = (before?.ux ?? 0) + (after?.ux ?? 0);
	const uy = (before?.uy ?? 0) + (after?.uy ?? 0);
	return { left: -uy, top: -ux };
}

function wayBetween(before: Bay, after: Bay, corner: number): [number, number] {
	const from = before.corners[corner];
	const to = after.corners[corner];
	return from && to ? [to[0] - from[0], to[1] - from[1]] : [0, 0];
}
