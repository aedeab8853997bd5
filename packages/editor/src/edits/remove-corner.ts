import type { Bay, Opening, Reading, Wall } from "@baywright/setout";
import { type CarryOver, carryOver } from "./carry-over.ts";
import { lengthOfWall } from "./faces.ts";
import { kept, withoutAt } from "./on-bay.ts";

/** Whether a corner can go: a bay keeps at least one wall. */
export const canRemoveCorner = ({ corners }: Bay, corner: number): boolean =>
	corners.length > 2 && corner >= 0 && corner < corners.length;

/**
 * Takes a corner out. Between two walls they become one straight wall, and what stood on them keeps its share of the way along;
 * at an end of the bay its wall goes, with what stood on it. Readings that the change makes untrue go too.
 */
export function removeCorner(bay: Bay, corner: number): Bay {
	if (!canRemoveCorner(bay, corner)) return bay;
	return corner === 0 || corner === bay.corners.length - 1 ? removeEnd(bay, corner) : removeBetween(bay, corner);
}

function removeEnd(bay: Bay, corner: number): Bay {
	const gone = corner === 0 ? 0 : corner - 1;
	const onWall = (wall: number) => (corner === 0 ? wall - 1 : wall);
	const onCorner = (it: number) => (it === corner ? null : onWall(it));
	const next = { ...bay, corners: withoutAt(bay.corners, corner), walls: withoutAt(bay.walls, gone) } as Bay;
	const last = next.corners.length - 1;
	return carryOver(next, bay, {
		place: (wall, at) => (wall === gone ? null : { wall: onWall(wall), at }),
		corner: onCorner,
		reading: (reading) =>
			readingAfter(reading, {
				wall: (wall) => (wall === gone ? null : onWall(wall)),
				corner: onCorner,
				// The end of the bay has no angle.
				angle: (it) => it !== null && it > 0 && it < last,
			}),
	});
}

function removeBetween(bay: Bay, corner: number): Bay {
	const before = bay.walls[corner - 1] as Wall;
	const after = bay.walls[corner] as Wall;
	const [left, right] = [lengthOfWall(bay, corner - 1), lengthOfWall(bay, corner)];
	const [from, till] = [bay.corners[corner - 1], bay.corners[corner + 1]];
	const run = from && till ? Math.hypot(till[0] - from[0], till[1] - from[1]) : 0;
	const share = left + right > 0 ? run / (left + right) : 0;
	const inLine = Math.abs(left + right - run) < IN_LINE;
	const onWall = (wall: number) => (wall < corner ? wall : wall - 1);
	const onCorner = (it: number) => (it === corner ? null : it < corner ? it : it - 1);
	const next = {
		...bay,
		corners: withoutAt(bay.corners, corner),
		walls: [
			...bay.walls.slice(0, corner - 1),
			{ ...(left >= right ? before : after), rise: 0 },
			...bay.walls.slice(corner + 1),
		],
	} as Bay;
	const place: CarryOver["place"] = (wall, at) => {
		if (wall === corner - 1) return { wall, at: kept(at * share) };
		return { wall: onWall(wall), at: wall === corner ? kept((left + at) * share) : at };
	};
	const carried = carryOver(next, bay, {
		place,
		corner: onCorner,
		reading: (reading) => {
			const spans = reading.kind === "diagonal" && Math.abs(reading.from - reading.to) === 2;
			if (spans && Math.min(reading.from, reading.to) === corner - 1)
				return { kind: "run", wall: corner - 1, value: reading.value, sd: reading.sd };
			// The line of a wall that goes straight on is the line of both.
			if (inLine && reading.kind === "square" && (reading.wall === corner - 1 || reading.wall === corner)) {
				const to = onCorner(reading.corner);
				return to === null || to === corner - 1 || to === corner ? null : { ...reading, wall: corner - 1, corner: to };
			}
			return readingAfter(reading, {
				wall: (wall) => (wall === corner || wall === corner - 1 ? null : onWall(wall)),
				corner: onCorner,
				// The walls on either side have turned, unless the corner was none.
				angle: (it) => it !== null && (inLine || (it !== corner - 1 && it !== corner)),
			});
		},
	});
	return { ...carried, openings: joined(carried.openings) };
}

/** Openings of one wall that touch and are as high are one, as they were before a corner parted them. */
function joined(openings: Bay["openings"]): Bay["openings"] {
	const done: Opening[] = [];
	for (const it of openings) {
		const last = done.at(-1);
		const touches = last !== undefined && last.wall === it.wall && Math.abs(last.to - it.from) < IN_LINE;
		if (touches && last.sill === it.sill && last.head === it.head) done.splice(-1, 1, { ...last, to: it.to });
		else done.push(it);
	}
	return done;
}

/** mm by which two walls in one line may be longer than the one that they become. */
const IN_LINE = 1e-3;

interface After {
	wall(wall: number): number | null;
	corner(corner: number): number | null;
	/** Whether the angle at a corner (numbered as after) is still what it was. */
	angle(corner: number | null): boolean;
}

function readingAfter(reading: Reading, to: After): Reading | null {
	switch (reading.kind) {
		case "run":
		case "rise": {
			const wall = to.wall(reading.wall);
			return wall === null ? null : { ...reading, wall };
		}
		case "diagonal": {
			const from = to.corner(reading.from);
			const till = to.corner(reading.to);
			return from === null || till === null ? null : { ...reading, from, to: till };
		}
		case "angle":
		case "chord": {
			const corner = to.corner(reading.corner);
			return corner === null || !to.angle(corner) ? null : { ...reading, corner };
		}
		case "square": {
			const wall = to.wall(reading.wall);
			const corner = to.corner(reading.corner);
			return wall === null || corner === null ? null : { ...reading, wall, corner };
		}
	}
}
