/** A figure of a bowed wall with its slopes by the chord and by the rise. */
export interface BowFigure {
	readonly value: number;
	readonly byChord: number;
	readonly byRise: number;
}

/**
 * Angle between the chord and the tangent at either end: φ = 2 atan(2h/c) for a rise h over a chord c, same sign as the rise.
 * Source: the arc through both ends and the top, whose chord to the top leans by atan(2h/c), half of φ (inscribed angle).
 */
export function tangentTilt(chord: number, rise: number): BowFigure {
	const share = 4 / (chord * chord + 4 * rise * rise);
	return { value: 2 * Math.atan((2 * rise) / chord), byChord: -rise * share, byRise: chord * share };
}

/** Angle between the chord and a straight line of length `arm` from one end to the face: φ − asin(arm·κ/2), κ = 2 sin φ / c; 0 at the other end. */
export function armTilt(chord: number, rise: number, arm: number): BowFigure {
	const tilt = tangentTilt(chord, rise);
	const lean = (arm * Math.sin(tilt.value)) / chord;
	const steep = 1 / Math.sqrt(1 - lean * lean);
	const byTilt = 1 - steep * ((arm * Math.cos(tilt.value)) / chord);
	return {
		value: tilt.value - Math.asin(lean),
		byChord: byTilt * tilt.byChord + (steep * lean) / chord,
		byRise: byTilt * tilt.byRise,
	};
}

/**
 * A place `at` along the face and `off` to its right, in the chord's own frame: along the chord from its first end, and to its left.
 * The heading turns evenly, from φ over the chord's by κ a unit of length; its integral is x = s·sinc(κs/2)·cos(φ − κs/2), y with sin.
 */
export function placeByBow(
	chord: number,
	rise: number,
	at: number,
	off: number,
): { along: BowFigure; left: BowFigure } {
	const tilt = tangentTilt(chord, rise);
	const sin = Math.sin(tilt.value);
	const curvature = (2 * sin) / chord;
	const curvatureByTilt = (2 * Math.cos(tilt.value)) / chord;
	const curvatureByChord = curvatureByTilt * tilt.byChord - curvature / chord;
	const curvatureByRise = curvatureByTilt * tilt.byRise;

	const half = (curvature * at) / 2;
	const mean = tilt.value - half;
	const heading = mean - half;
	const reach = at * sinc(half);
	const reachByCurvature = at * sincSlope(half) * (at / 2);
	const slope = (tiltSlope: number, curvatureSlope: number) => {
		const reachSlope = reachByCurvature * curvatureSlope;
		const meanSlope = tiltSlope - (at / 2) * curvatureSlope;
		const headingSlope = tiltSlope - at * curvatureSlope;
		return {
			along: reachSlope * Math.cos(mean) - reach * Math.sin(mean) * meanSlope + off * Math.cos(heading) * headingSlope,
			left: reachSlope * Math.sin(mean) + reach * Math.cos(mean) * meanSlope + off * Math.sin(heading) * headingSlope,
		};
	};
	const byChord = slope(tilt.byChord, curvatureByChord);
	const byRise = slope(tilt.byRise, curvatureByRise);
	return {
		along: {
			value: reach * Math.cos(mean) + off * Math.sin(heading),
			byChord: byChord.along,
			byRise: byRise.along,
		},
		left: { value: reach * Math.sin(mean) - off * Math.cos(heading), byChord: byChord.left, byRise: byRise.left },
	};
}

/** Below this the series has all the digits that the quotient would lose. */
const SMALL = 1e-3;

const sinc = (x: number): number => (Math.abs(x) < SMALL ? 1 - (x * x) / 6 + x ** 4 / 120 : Math.sin(x) / x);

const sincSlope = (x: number): number =>
	Math.abs(x) < SMALL ? -x / 3 + x ** 3 / 30 : (Math.cos(x) - Math.sin(x) / x) / x;
