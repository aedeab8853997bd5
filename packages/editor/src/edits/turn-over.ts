import type { Bay, Reading } from "@baywright/setout";
import { carryOver } from "./carry-over.ts";
import { lengthOfWall } from "./faces.ts";
import { type Corner, kept } from "./on-bay.ts";

/**
 * The bay as seen in a mirror: left becomes right, about the middle of its width. What stands on a wall stands on its image;
 * curtains keep their place on a track of `track` mm, or where that is not known their order.
 */
export function mirror(bay: Bay, track: number | null): Bay {
	const xs = bay.corners.map(([x]) => x);
	const across = xs.length === 0 ? 0 : Math.min(...xs) + Math.max(...xs);
	return turnedOver(bay, ([x, y]) => [kept(across - x), y], 1, track);
}

/** The same walls with the room on their other side: what was the right end is the left end. */
export function otherSide(bay: Bay, track: number | null): Bay {
	return turnedOver(bay, (corner) => corner, -1, track);
}

/** True where the room of a chain of walls, drawn in this order, lies outside the angle that they make: their turns sum up to the left. */
export function isInsideOut(corners: readonly Corner[]): boolean {
	let turned = 0;
	for (let i = 1; i + 1 < corners.length; i++) {
		const [a, b, c] = [corners[i - 1], corners[i], corners[i + 1]] as [Corner, Corner, Corner];
		const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
		turned += Math.atan2(uy * vx - ux * vy, ux * vx + uy * vy);
	}
	return turned < -SOME_TURN;
}

/** Radians: less than this says nothing about which side the room is on. */
const SOME_TURN = 0.05;

/** Everything in the other order, each corner moved by `move`; `bows` is −1 where what bowed away from the room bows into it. */
function turnedOver(bay: Bay, move: (corner: Corner) => Corner, bows: 1 | -1, length: number | null): Bay {
	const last = bay.corners.length - 1;
	const lengths = bay.walls.map((_, wall) => kept(lengthOfWall(bay, wall)));
	const lengthOf = (wall: number) => lengths[wall] ?? 0;
	const onWall = (wall: number) => last - 1 - wall;
	const onCorner = (corner: number) => last - corner;
	const { start, end } = bay.track;
	const next: Bay = {
		...bay,
		corners: bay.corners.map(move).reverse() as unknown as Bay["corners"],
		walls: bay.walls.map((wall) => ({ ...wall, rise: wall.rise * bows + 0 })).reverse(),
	};
	const carried = carryOver(
		next,
		{ ...bay, track: { ...bay.track, start: end, end: start } },
		{
			place: (wall, at) => ({ wall: onWall(wall), at: kept(lengthOf(wall) - at) }),
			corner: onCorner,
			reading: (reading) => readingAfter(reading, onWall, onCorner, lengthOf, bows),
		},
	);
	const { track } = carried;
	const draws = { left: "right", right: "left", pair: "pair", none: "none" } as const;
	// Lists that go from left to right go so again.
	return {
		...carried,
		walls: carried.walls.map((wall) => ({ ...wall, noDrill: wall.noDrill.toReversed() })),
		track: {
			...track,
			draw: draws[track.draw],
			bends: track.bends.toReversed(),
			joints: typeof track.joints === "string" ? track.joints : track.joints.toReversed(),
			brackets: track.brackets.toReversed(),
		},
		curtains: bay.curtains.map((curtain) => turnCurtain(curtain, length)).reverse(),
		fitted: {
			...carried.fitted,
			spans: carried.fitted.spans.map((span) => ({ ...span, from: span.to, to: span.from })),
		},
	};
}

/** A curtain with its stations read from the other end of a track of `length` mm; one that hangs off the track stays where it is. */
function turnCurtain(curtain: Bay["curtains"][number], length: number | null): Bay["curtains"][number] {
	const fromOther = (station: number | null) =>
		station === null || length === null ? null : Math.max(0, kept(kept(length) - station));
	if (length !== null && (curtain.from ?? 0) >= length) return curtain;
	const stacks = ({ left: "right", right: "left", both: "both", auto: "auto" } as const)[curtain.stacks];
	return { ...curtain, stacks, from: fromOther(curtain.to), to: fromOther(curtain.from) };
}

function readingAfter(
	reading: Reading,
	onWall: (wall: number) => number,
	onCorner: (corner: number) => number,
	lengthOf: (wall: number) => number,
	bows: 1 | -1,
): Reading | null {
	switch (reading.kind) {
		case "run":
			return { ...reading, wall: onWall(reading.wall) };
		case "rise": {
			const at = reading.at === null ? null : Math.max(0, kept(lengthOf(reading.wall) - reading.at));
			return { ...reading, wall: onWall(reading.wall), at, value: reading.value * bows + 0 };
		}
		case "diagonal":
			return { ...reading, from: onCorner(reading.from), to: onCorner(reading.to) };
		case "angle":
			return {
				...reading,
				corner: onCorner(reading.corner),
				value: bows === 1 ? reading.value : kept(360 - reading.value),
			};
		case "chord": {
			// Between marks on both faces it tells the room angle, past an external corner the turn: c = 2a sin(θ/2) becomes 2a cos(θ/2).
			const value = bows === 1 ? reading.value : Math.sqrt((2 * reading.arm) ** 2 - reading.value ** 2);
			return value > 0 ? { ...reading, corner: onCorner(reading.corner), value } : null;
		}
		case "square":
			return {
				...reading,
				corner: onCorner(reading.corner),
				wall: onWall(reading.wall),
				value: reading.value * bows + 0,
			};
	}
}
