import type { Bay, Job } from "@baywright/setout";

/** Parts of a mm that coordinates keep: far finer than a tape, coarse enough that files stay readable. */
const KEPT = 1000;

/** Moves one corner by a way in the plan (mm); it comes to stand on whole millimetres. */
export function moveCorner(job: Job, bay: number, corner: number, dx: number, dy: number): Job {
	return withCorners(job, bay, (corners) =>
		corners.map((at, i): Corner => (i === corner ? [Math.round(at[0] + dx), Math.round(at[1] + dy)] : at)),
	);
}

/** Moves one wall parallel to itself by `out` mm, + away from the room; the walls beside it follow with their ends. */
export function moveWall(job: Job, bay: number, wall: number, out: number): Job {
	return withCorners(job, bay, (corners) => {
		const left = corners[wall];
		const right = corners[wall + 1];
		if (!left || !right) return corners;
		const length = Math.hypot(right[0] - left[0], right[1] - left[1]);
		if (length === 0) return corners;
		const dx = (-(right[1] - left[1]) / length) * out;
		const dy = ((right[0] - left[0]) / length) * out;
		return corners.map((at, i): Corner => (i === wall || i === wall + 1 ? [kept(at[0] + dx), kept(at[1] + dy)] : at));
	});
}

/** Bows one wall by `rise` mm, + away from the room: whole millimetres, no deeper than half its chord, and straight within `snap` mm of it. */
export function bowWall(job: Job, bay: number, wall: number, rise: number, snap = 0): Job {
	const bays = job.bays.map((it, i): Bay => {
		if (i !== bay) return it;
		const deepest = deepestBow(it, wall);
		const held = Math.round(Math.max(-deepest, Math.min(deepest, rise)));
		// `+ 0` because a rise of −0 is not one that a file should hold.
		const next = Math.abs(held) <= snap ? 0 : held + 0;
		return { ...it, walls: it.walls.map((old, k) => (k === wall ? { ...old, rise: next } : old)) };
	});
	return { ...job, bays };
}

/** The greatest rise a wall can have, mm: a half circle over its chord. */
export function deepestBow({ corners }: Bay, wall: number): number {
	const left = corners[wall];
	const right = corners[wall + 1];
	return left && right ? Math.floor(Math.hypot(right[0] - left[0], right[1] - left[1]) / 2) : 0;
}

/** How far (mm) a way in the plan goes away from the room, square to a wall. */
export function wayOut(bay: Bay, wall: number, dx: number, dy: number): number {
	const left = bay.corners[wall];
	const right = bay.corners[wall + 1];
	if (!left || !right) return 0;
	const length = Math.hypot(right[0] - left[0], right[1] - left[1]);
	if (length === 0) return 0;
	return (dy * (right[0] - left[0]) - dx * (right[1] - left[1])) / length;
}

type Corner = readonly [number, number];

function withCorners(job: Job, bay: number, move: (corners: Bay["corners"]) => readonly Corner[]): Job {
	const bays = job.bays.map((it, i): Bay => (i === bay ? { ...it, corners: move(it.corners) as Bay["corners"] } : it));
	return { ...job, bays };
}

const kept = (value: number): number => Math.round(value * KEPT) / KEPT;
