import { footOnFace, headingOfFace, pointOffFace, type WallChain } from "@baywright/geometry";
import { type Bay, wallName } from "@baywright/setout";
import { faceLength, facesOf, nearestOnWalls } from "../edits/faces.ts";
import { onBay } from "../edits/on-bay.ts";
import {
	onto,
	type Part,
	type Stretch,
	setNoDrill,
	setObstacle,
	setOpening,
	slide,
	stretchOf,
	tidy,
} from "../edits/on-walls.ts";
import type { Target } from "../selection.ts";
import { type SnapAlong, snapAlong, stopsOn } from "../snap/along.ts";
import { type Locus, line } from "../snap/locus.ts";
import type { Grip, Held } from "./grip.ts";

/** An opening slides along its wall, or on to another that it is taken to; either end can be pulled. */
export const openingGrip: Grip = stretchGrip({
	name: "opening",
	put: (bay, { index }, stretch) => setOpening(bay, index, stretch),
	besides: ({ index }) => index,
	roams: true,
});

export const obstacleGrip: Grip = stretchGrip({
	name: "obstacle",
	put: (bay, { index }, stretch) => setObstacle(bay, index, stretch),
	besides: () => null,
	roams: true,
});

/** A stretch that takes no hole stays on its wall. */
export const noDrillGrip: Grip = stretchGrip({
	name: "stretch without holes",
	put: (bay, { index, wall = 0 }, { from, to }) => setNoDrill(bay, wall, index, from, to),
	besides: () => null,
	roams: false,
});

interface StretchKind {
	readonly name: string;
	put(bay: Bay, target: Target, stretch: Stretch): Bay;
	/** The opening whose own edges do not draw it. */
	besides(target: Target): number | null;
	/** It may be taken to another wall. */
	readonly roams: boolean;
}

function stretchGrip({ name, put, besides, roams }: StretchKind): Grip {
	return {
		move({ target, job, bay, from }, to, reach) {
			const before = job.bays[bay] as Bay;
			const chain = facesOf(before);
			const old = stretchOf(before, target);
			if (chain === null || old === null) return { job, guides: [] };
			const part = target.part ?? "whole";
			const start = roams && part === "whole" ? takenTo(before, chain, old, from, to) : old;
			const length = faceLength(chain, start.wall);
			const by = footOnFace(chain, start.wall, to).at - footOnFace(chain, start.wall, from).at;
			const moved = start === old ? slide(old, part, by, length) : start;
			const drawn = snapAlong(placesOf(moved, part), stopsOn(before, moved.wall, length, besides(target)), reach);
			const next = tidy(slide(moved, part, drawn.by, length), length);
			return { job: onBay(job, bay, (it) => put(it, target, next)), guides: guidesAt(chain, moved.wall, drawn) };
		},
		label: (held) => labelOf(held, name),
	};
}

/** On the wall to which it is taken, if that is another one and has room. */
function takenTo(bay: Bay, chain: WallChain, old: Stretch, from: Held["from"], to: Held["from"]): Stretch {
	const held = footOnFace(chain, old.wall, from).at;
	// Taken hold of a little off the wall, it does not jump to another that is nearer there.
	const on = pointOffFace(chain, old.wall, Math.min(Math.max(held, old.from), old.to), 0);
	const near = nearestOnWalls(chain, { x: on.x + to.x - from.x, y: on.y + to.y - from.y });
	if (near === null || near.wall === old.wall) return old;
	// Held by a point of it that is not its middle: it goes along by as much.
	return onto(bay, old, near.wall, near.at - (held - (old.from + old.to) / 2)) ?? old;
}

function placesOf({ from, to }: Stretch, part: Part): readonly number[] {
	if (part === "left") return [from];
	return part === "right" ? [to] : [from, to, (from + to) / 2];
}

/** A line across the wall where something drew what slides along it. */
export function guidesAt(chain: WallChain, wall: number, { stop }: SnapAlong): readonly Locus[] {
	if (stop === null) return [];
	return [line(pointOffFace(chain, wall, stop.at, 0), headingOfFace(chain, wall, stop.at) + Math.PI / 2, stop.why)];
}

function labelOf({ target, job, bay }: Held, name: string): string {
	const it = job.bays[bay] as Bay;
	const wall = stretchOf(it, target)?.wall ?? 0;
	const did = target.part === undefined || target.part === "whole" ? "move" : "widen";
	return `${did} the ${name} in the ${wallName(wall, it.corners.length - 1)}`;
}
