/** Straight legs of a track by plain analytic geometry: lines off the walls, and where neighbouring ones meet. mm, radians. */
export interface Legs {
	/** Between virtual corners, or from the track's end to the first or last of them. */
	readonly length: readonly number[];
	/** Unsigned turn at each virtual corner. */
	readonly turn: readonly number[];
	readonly meeting: readonly (readonly [number, number])[];
}

export interface LegPlace {
	readonly wall: number;
	readonly at: number;
}

type Pair = readonly [number, number];

/** Legs along walls start.wall … end.wall, `projections` into the room, which lies on the right. */
export function legsOf(corners: readonly Pair[], projections: readonly number[], start: LegPlace, end: LegPlace): Legs {
	const lines = corners.slice(1).map(([bx, by], wall) => {
		const [ax, ay] = corners[wall] as Pair;
		const long = Math.hypot(bx - ax, by - ay);
		const along: Pair = [(bx - ax) / long, (by - ay) / long];
		const off = projections[wall] as number;
		const right: Pair = [along[1], -along[0]];
		return { through: [ax + right[0] * off, ay + right[1] * off] as Pair, along };
	});
	const line = (wall: number) => lines[wall] as (typeof lines)[number];
	const pointOn = ({ wall, at }: LegPlace): Pair => {
		const { through, along } = line(wall);
		return [through[0] + along[0] * at, through[1] + along[1] * at];
	};
	const meeting: Pair[] = [pointOn(start)];
	const turn: number[] = [];
	for (let wall = start.wall; wall < end.wall; wall++) {
		const { through: p, along: u } = line(wall);
		const { through: q, along: v } = line(wall + 1);
		const cross = u[0] * v[1] - u[1] * v[0];
		const share = ((q[0] - p[0]) * v[1] - (q[1] - p[1]) * v[0]) / cross;
		meeting.push([p[0] + u[0] * share, p[1] + u[1] * share]);
		turn.push(Math.abs(Math.atan2(cross, u[0] * v[0] + u[1] * v[1])));
	}
	meeting.push(pointOn(end));
	const length = meeting.slice(1).map(([x, y], leg) => {
		const [fromX, fromY] = meeting[leg] as Pair;
		const [ux, uy] = line(start.wall + leg).along;
		return (x - fromX) * ux + (y - fromY) * uy;
	});
	return { length, turn, meeting };
}

/** How much longer each leg is than its bends of these radii and the straights beside them need; below zero: too short. */
export function spareOf(
	{ length, turn }: Legs,
	radii: readonly number[],
	besideBend: number,
	endStraight: number,
): number[] {
	const tangent = (bend: number) =>
		bend < 0 || bend >= turn.length
			? endStraight
			: (radii[bend] as number) * Math.tan((turn[bend] as number) / 2) + besideBend;
	return length.map((long, leg) => long - tangent(leg - 1) - tangent(leg));
}
