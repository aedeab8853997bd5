import type { Bay } from "@baywright/setout";
import type { Corner } from "./edits/on-bay.ts";

/**
 * A bay of which one corner was moved by hand, with that corner no further than what was taped lets it go while the others lie where they lay
 * `before`: round the corner that its one distance was taped to. One between two taped runs goes round the neighbour towards the middle, and the
 * other comes after it as on a rope, with those beyond. Left to the readings alone, untaped walls share in what the tape takes back, and a
 * corner at the other end goes the other way. The very bay where more was moved or typed, or more was read than such distances.
 */
export function slid(bay: Bay, before: Bay): Bay {
	if (before.corners.length !== bay.corners.length || bay.readings !== before.readings) return bay;
	const moved = bay.corners.flatMap(([x, y], i) =>
		x === before.corners[i]?.[0] && y === before.corners[i]?.[1] ? [] : [i],
	);
	const [corner] = moved;
	if (corner === undefined || moved.length > 1) return bay;
	const held = tapedTo(bay, corner);
	if (held === null || held.size === 0) return bay;

	const towardsEnd = corner < (bay.corners.length - 1) / 2 ? -1 : 1;
	const [anchor, follows] = held.size === 1 ? [[...held][0] as number, false] : [corner - towardsEnd, true];
	if (follows && !(held.size === 2 && held.has(anchor) && held.has(corner + towardsEnd))) return bay;
	const corners = [...bay.corners];
	const goRound = (centre: number, which: number) => {
		corners[which] = atDistance(corners[centre] as Corner, before.corners, centre, which, corners[which] as Corner);
	};
	goRound(anchor, corner);
	for (let next = corner + towardsEnd; follows && next in corners; next += towardsEnd) {
		const on = next - towardsEnd;
		const taped = tapedTo(bay, next);
		if (taped === null || [...taped].some((end) => end !== on && end !== next + towardsEnd)) return bay;
		if (!taped.has(on)) break;
		goRound(on, next);
	}
	return { ...bay, corners: corners as unknown as Bay["corners"] };
}

/** As far from a centre as it was before, in the direction in which it is now. */
function atDistance(
	[x, y]: Corner,
	before: Bay["corners"],
	centre: number,
	which: number,
	[nowX, nowY]: Corner,
): Corner {
	const [from, to] = [before[centre] as Corner, before[which] as Corner];
	const reach = Math.hypot(nowX - x, nowY - y);
	const share = reach === 0 ? 1 : Math.hypot(to[0] - from[0], to[1] - from[1]) / reach;
	return [x + (nowX - x) * share, y + (nowY - y) * share];
}

/** The corners to which distances were taped from this one; null where anything else that was read hangs on it. */
function tapedTo({ readings, fitted }: Bay, corner: number): ReadonlySet<number> | null {
	const isBeside = (wall: number) => wall === corner - 1 || wall === corner;
	if (fitted.spans.some(({ from, to }) => isBeside(from.wall) || isBeside(to.wall))) return null;
	const far = new Set<number>();
	for (const reading of readings) {
		switch (reading.kind) {
			case "run":
			case "diagonal": {
				const ends = reading.kind === "run" ? [reading.wall, reading.wall + 1] : [reading.from, reading.to];
				for (const end of ends) if (ends.includes(corner) && end !== corner) far.add(end);
				break;
			}
			case "rise":
				break;
			case "square":
				if (reading.corner === corner || isBeside(reading.wall)) return null;
				break;
			default:
				if (Math.abs(reading.corner - corner) <= 1) return null;
		}
	}
	return far;
}
