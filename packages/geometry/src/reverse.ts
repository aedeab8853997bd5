import { type Radians, radians } from "./angle.ts";
import type { WallChain, WallFace } from "./chain.ts";
import { approach, type Curve } from "./curve.ts";
import { faceCurve, footOnFace, pointOffFace } from "./face.ts";
import type { Point } from "./point.ts";
import { SLIGHT_TURN } from "./tolerance.ts";

/** A stretch of track with a heading at its start. */
interface Stretch extends Curve {
	readonly heading: Radians;
	readonly length: number;
}

/** An arc of a reverse bend. mm; turn right positive. */
export interface ReverseArc extends Stretch {
	readonly centre: Point;
	readonly radius: number;
	readonly turn: Radians;
}

/**
 * A reverse bend: two bends of opposite sense with a straight between that is tangent to both and follows no wall, in place of the
 * two bends of a leg too short for them. It starts `footLeft` mm along the wall on its left and ends `footRight` along that on its right.
 */
export interface Reverse {
	readonly footLeft: number;
	readonly footRight: number;
	readonly before: ReverseArc;
	readonly between: Stretch;
	readonly after: ReverseArc;
}

/** Steps in which a reverse bend is slid along its left leg in search of clearance; the last step is then halved to the exact limit. */
const STEPS = 64;
const HALVINGS = 40;

/**
 * The reverse bend past the short wall between corners `first` and `first` + 1, which turn opposite ways: both radii at their least, the
 * straight between `straight` mm long, as far along as its clearance from the three walls lets it. Null where there is none.
 */
export function reverseBetween(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	radii: readonly [before: number, after: number],
	straight: number,
	clearance: number,
): Reverse | null {
	const walls = [first - 1, first, first + 1] as const;
	if (walls.some((wall) => (chain.walls[wall] as WallFace).bow !== null)) return null;
	const faces = walls.map((wall) => faceCurve(chain, wall));
	// Round an internal corner first, it starts as late as the corner after lets it; round an external one as soon as it has passed that.
	const late = (chain.turns[first] as number) > 0;
	const clear = (at: number): Reverse | null => {
		const reverse = startingAt(chain, projections, first, radii, straight, at);
		if (reverse === null || (!late && reverse.footRight < 0)) return null;
		const stretches = [reverse.before, reverse.between, reverse.after];
		const isClear = faces.every((face) => stretches.every((stretch) => approach(stretch, face).distance >= clearance));
		return isClear ? reverse : null;
	};
	const length = (chain.walls[first - 1] as WallFace).length;
	const reach = (chain.walls[first] as WallFace).length + 2 * (radii[0] + radii[1]) + straight;
	const from = Math.max(0, length - reach);
	const to = late ? length : length + reach;
	const step = (to - from) / STEPS;
	let missed: number | null = null;
	for (let i = 0; i <= STEPS; i++) {
		const at = late ? to - i * step : from + i * step;
		const reverse = clear(at);
		if (reverse === null) missed = at;
		else return missed === null ? reverse : limitBetween(clear, at, missed, reverse);
	}
	return null;
}

function limitBetween(clear: (at: number) => Reverse | null, good: number, bad: number, best: Reverse): Reverse {
	let yes = good;
	let no = bad;
	let found = best;
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (yes + no) / 2;
		const reverse = clear(middle);
		if (reverse === null) no = middle;
		else {
			yes = middle;
			found = reverse;
		}
	}
	return found;
}

/** The reverse bend that leaves the left leg at `at`: its first turn is the one that brings its end onto the right leg. */
function startingAt(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	radii: readonly [number, number],
	straight: number,
	at: number,
): Reverse | null {
	const left = first - 1;
	const right = first + 1;
	const net = (chain.turns[first] as number) + (chain.turns[first + 1] as number);
	const side = Math.sign(chain.turns[first] as number);
	const heading = (chain.walls[left] as WallFace).heading;
	const from = pointOffFace(chain, left, at, projections[left] as number);
	const laid = (turn: number) => lay(from, heading, side * turn, net - side * turn, radii, straight);
	const beyond = (turn: number) =>
		side * (footOnFace(chain, right, laid(turn).after.to).off - (projections[right] as number));

	let low = Math.max(0, side * net);
	// No steeper than the wall it passes: beyond that a wider projection is the cure, not a wilder bend.
	let high = Math.abs(chain.turns[first] as number);
	// Turning more to the right brings the end further into the room, to the left less.
	if (!(beyond(low) < 0 && beyond(high) >= 0)) return null;
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (beyond(middle) < 0) low = middle;
		else high = middle;
	}
	const { before, between, after } = laid((low + high) / 2);
	// Does one bend alone reach the right leg? Then this is no reverse bend.
	if (Math.min(Math.abs(before.turn), Math.abs(after.turn)) < SLIGHT_TURN) return null;
	return { footLeft: at, footRight: footOnFace(chain, right, after.to).at, before, between, after };
}

function lay(
	from: Point,
	heading: number,
	firstTurn: number,
	secondTurn: number,
	[r1, r2]: readonly [number, number],
	straight: number,
): Pick<Reverse, "before" | "between" | "after"> {
	const before = arc(from, heading, firstTurn, r1);
	const middle = heading - firstTurn;
	const to = {
		x: before.to.x + Math.cos(middle) * straight,
		y: before.to.y + Math.sin(middle) * straight,
	};
	const between = { from: before.to, to, heading: radians(middle), length: straight };
	return { before, between, after: arc(to, middle, secondTurn, r2) };
}

function arc(from: Point, heading: number, turn: number, radius: number): ReverseArc {
	const side = Math.sign(turn) * radius;
	const centre = { x: from.x + Math.sin(heading) * side, y: from.y - Math.cos(heading) * side };
	const end = heading - turn;
	const to = { x: centre.x - Math.sin(end) * side, y: centre.y + Math.cos(end) * side };
	return { from, to, centre, radius, turn: radians(turn), heading: radians(heading), length: radius * Math.abs(turn) };
}
