// A bay's track worked out with pencil and calculator: room angles and runs in, what a fitter cuts and marks out. Shares
// nothing with the project but the formulas of the trade (a bend is a circular curve, see tests/published).

type Corner = readonly [x: number, y: number];

/** Walls as taped: runs in mm, and the room angle in degrees at each corner between two of them. */
export interface Walls {
	readonly runs: readonly number[];
	readonly angles: readonly number[];
}

export interface TrackByHand {
	/** mm from the wall face to the centre line. */
	readonly projection: number;
	readonly radius: number;
	/** mm along the first wall at which the track starts, and along the last at which it ends. */
	readonly start: number;
	readonly end: number;
	/** mm that the hardware at both ends takes up together. */
	readonly takeUp: number;
}

export function tape(corners: readonly Corner[]): Walls {
	const headings: number[] = [];
	const runs: number[] = [];
	for (let i = 1; i < corners.length; i++) {
		const [from, to] = [corners[i - 1] as Corner, corners[i] as Corner];
		runs.push(Math.hypot(to[0] - from[0], to[1] - from[1]));
		headings.push((Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI);
	}
	// Travelled left to right with the room at the right hand: an internal corner turns clockwise.
	const angles = headings.slice(1).map((heading, i) => 180 - ((headings[i] as number) - heading));
	return { runs, angles };
}

/** Set-back along the wall face and sweep of one bend, mm; external corners have room angles over 180°. */
export function bend(angle: number, projection: number, radius: number) {
	const half = (angle / 2) * (Math.PI / 180);
	return {
		setBack: projection / Math.tan(half) + radius / Math.abs(Math.tan(half)),
		sweep: (radius * Math.abs(180 - angle) * Math.PI) / 180,
		/** From the corner, along the face, to the foot of the virtual corner (past the corner, and less than 0, outside an external one); and from there to the bend. */
		foot: projection / Math.tan(half),
		tangent: radius / Math.abs(Math.tan(half)),
	};
}

/** Cut length of the track in one piece, mm: legs between virtual corners, less two tangents and plus a sweep at each bend. */
export function cutLength({ runs, angles }: Walls, track: TrackByHand): number {
	let length = track.end - track.start - track.takeUp;
	for (const run of runs.slice(0, -1)) length += run;
	for (const angle of angles) {
		const { foot, tangent, sweep } = bend(angle, track.projection, track.radius);
		length += sweep - 2 * foot - 2 * tangent;
	}
	return length;
}

/** As the screen shows millimetres. */
export const whole = (mm: number): string => String(Math.round(mm));

/** Far enough from a half that rounding on screen cannot go the other way. */
export const isClearOfHalf = (value: number): boolean => Math.abs(value - Math.floor(value) - 0.5) > 0.02;
