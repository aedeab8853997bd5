import { type Bay, cornerName, formatAngle, formatLength, type Job, wallName } from "@baywright/setout";
import type { Selection } from "../desk/selection.ts";
import { roomAngle } from "./labels/figures.ts";
import { bowWall, moveCorner, moveWall, wayOut } from "./moving.ts";
import type { Subject } from "./scene.ts";
import type { ScreenPoint } from "./viewport.ts";

export type GripKind = "corner" | "wall" | "bow";

/** What is taken hold of to be moved, and the job as it was then: every move starts from there. */
export interface Grip {
	readonly kind: GripKind;
	readonly index: number;
	readonly job: Job;
	readonly bay: number;
}

export const isGrip = (it: Selection | null): it is Selection & { readonly kind: GripKind } =>
	it !== null && (it.kind === "corner" || it.kind === "wall" || it.kind === "bow");

/** The job with what is held moved by a way in the plan, mm; a wall goes square to itself by whole millimetres, a bow is straight within `snap` of it. */
export function moved({ kind, index, job, bay }: Grip, dx: number, dy: number, snap = 0): Job {
	if (kind === "corner") return moveCorner(job, bay, index, dx, dy);
	const before = job.bays[bay] as Bay;
	const out = wayOut(before, index, dx, dy);
	if (kind === "wall") return moveWall(job, bay, index, Math.round(out));
	return bowWall(job, bay, index, (before.walls[index]?.rise ?? 0) + out, snap);
}

/** What a history calls the move. */
export function moveLabel({ kind, index, job, bay }: Grip): string {
	const walls = (job.bays[bay] as Bay).corners.length - 1;
	if (kind === "corner") return `move ${cornerName(index, walls)}`;
	return `${kind === "bow" ? "bow" : "move"} the ${wallName(index, walls)}`;
}

export interface Reading {
	readonly name: string;
	readonly figure: string;
}

/** The figures that change while something is held: runs and angles at and beside it. */
export function gripReadings({ kind, index, job }: Grip, subject: Subject): Reading[] {
	const { bay, walls, corners, unit } = subject;
	if (kind === "bow") return bowReadings(index, subject);
	const runs = kind === "corner" ? [index - 1, index] : [index - 1, index, index + 1];
	const angles = kind === "corner" ? [index] : [index, index + 1];
	const count = corners.length - 1;
	const before = job.bays.find(({ id }) => id === bay.id);
	const out = kind === "wall" && before ? wayOut(before, index, ...wayBetween(before, bay, index)) : null;
	return [
		...(out === null ? [] : [{ name: out < 0 ? "moved in" : "moved out", figure: formatLength(Math.abs(out), unit) }]),
		...runs.flatMap((wall) => {
			const shape = walls[wall];
			return shape ? [{ name: wallName(wall, count), figure: formatLength(shape.chord.length, unit) }] : [];
		}),
		...anglesAt(angles, walls, (corner) => (kind === "corner" ? "angle" : `angle ${corner}`)),
	];
}

/** A bow's rise, the radius of its face and of the track along it, and the angles at its ends. */
function bowReadings(wall: number, { walls, plan, unit }: Subject): Reading[] {
	const shape = walls[wall];
	if (!shape) return [];
	const rise = shape.arc?.rise ?? 0;
	const radius = (off: number) =>
		shape.arc === null ? "straight" : formatLength(shape.arc.radius - Math.sign(rise) * off, unit);
	return [
		{ name: rise < 0 ? "rise into the room" : "rise", figure: formatLength(Math.abs(rise), unit) },
		{ name: "radius of the face", figure: radius(0) },
		{ name: "radius of the track", figure: radius(plan.projections[wall] ?? 0) },
		{ name: "along the face", figure: formatLength(shape.length, unit) },
		...anglesAt([wall, wall + 1], walls, (corner) => `angle ${corner}`),
	];
}

function anglesAt(at: readonly number[], walls: Subject["walls"], name: (corner: number) => string): Reading[] {
	return at.flatMap((corner) => {
		const left = walls[corner - 1]?.along.at(-1);
		const right = walls[corner]?.along[0];
		return left && right ? [{ name: name(corner), figure: formatAngle(roomAngle(left, right)) }] : [];
	});
}

/** Away from the room, on screen, where something is held; any length. */
export function gripOut({ kind, index }: Grip, { walls }: Subject): ScreenPoint {
	const before = kind === "corner" ? walls[index - 1]?.along.at(-1) : undefined;
	const after = kind === "corner" ? walls[index]?.along[0] : walls[index]?.chord;
	const ux = (before?.ux ?? 0) + (after?.ux ?? 0);
	const uy = (before?.uy ?? 0) + (after?.uy ?? 0);
	return { left: -uy, top: -ux };
}

function wayBetween(before: Bay, after: Bay, corner: number): [number, number] {
	const from = before.corners[corner];
	const to = after.corners[corner];
	return from && to ? [to[0] - from[0], to[1] - from[1]] : [0, 0];
}
