type Corner = readonly [number, number];

/** As much of a wall as turns its ends: how far it bows, mm, + away from the room. */
interface Bowed {
	readonly rise: number;
}

/** Coordinates are kept to a thousandth of a millimetre: finer than any tape, and a typed angle comes back as typed. */
const KEPT = 1000;

/** Corner to corner along wall `wall`, mm. */
export function runOf(corners: readonly Corner[], wall: number): number {
	const [left, right] = [corners[wall], corners[wall + 1]];
	return left && right ? Math.hypot(right[0] - left[0], right[1] - left[1]) : 0;
}

/** Room angle at `corner`, degrees, 0 to 360: over 180 where the corner is external; between tangents where a wall bows. */
export function angleOf(corners: readonly Corner[], corner: number, walls: readonly Bowed[] = []): number {
	const [before, at, after] = [corners[corner - 1], corners[corner], corners[corner + 1]];
	if (!before || !at || !after) return 180;
	const chords = wrap(headingOf(before, at) - headingOf(at, after));
	const bows = endTurn(before, at, walls[corner - 1]) + endTurn(at, after, walls[corner]);
	return 180 - ((chords - bows) * 180) / Math.PI;
}

/** The walls with one run `length` mm long: the corners after it move along it. */
export function withRun(corners: readonly Corner[], wall: number, length: number): Corner[] {
	const [left, right] = [corners[wall], corners[wall + 1]];
	if (!left || !right) return [...corners];
	const heading = headingOf(left, right);
	const more = length - runOf(corners, wall);
	return corners.map((corner, i) =>
		i <= wall ? corner : kept(corner[0] + more * Math.cos(heading), corner[1] + more * Math.sin(heading)),
	);
}

/**
 * The walls with the room angle at one corner (degrees). The middle wall lies as it lay, with all on its side of the
 * corner; what is beyond turns about the corner.
 */
export function withAngle(
	corners: readonly Corner[],
	corner: number,
	angle: number,
	walls: readonly Bowed[] = [],
): Corner[] {
	const pivot = corners[corner];
	if (!pivot) return [...corners];
	const leftStays = middleWall(corners) < corner;
	const turn = ((angle - angleOf(corners, corner, walls)) * Math.PI) / (leftStays ? 180 : -180);
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	return corners.map((at, i) => {
		if (leftStays ? i <= corner : i >= corner) return at;
		const [x, y] = [at[0] - pivot[0], at[1] - pivot[1]];
		return kept(pivot[0] + x * cos - y * sin, pivot[1] + x * sin + y * cos);
	});
}

/** The wall nearest the middle of the chain; of two as near, the longer. */
export function middleWall(corners: readonly Corner[]): number {
	const middle = (corners.length - 2) / 2;
	const [left, right] = [Math.floor(middle), Math.ceil(middle)];
	return runOf(corners, right) > runOf(corners, left) ? right : left;
}

/** Between a wall's chord and its face at either end: half of the arc's angle, 4·atan(2h/c). */
function endTurn(left: Corner, right: Corner, wall: Bowed | undefined): number {
	const chord = Math.hypot(right[0] - left[0], right[1] - left[1]);
	return wall === undefined || chord === 0 ? 0 : 2 * Math.atan((2 * wall.rise) / chord);
}

function headingOf(from: Corner, to: Corner): number {
	return Math.atan2(to[1] - from[1], to[0] - from[0]);
}

function wrap(turn: number): number {
	return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

function kept(x: number, y: number): Corner {
	return [Math.round(x * KEPT) / KEPT, Math.round(y * KEPT) / KEPT];
}
