/** An elliptical arc of SVG path data, in absolute coordinates: radii, rotation in degrees, flags, end. */
export interface SvgArc {
	readonly rx: number;
	readonly ry: number;
	readonly large: boolean;
	readonly sweep: boolean;
	readonly from: { readonly x: number; readonly y: number };
	readonly to: { readonly x: number; readonly y: number };
}

/** Radii this alike, by share, are those of a circle: what writers' rounding leaves. */
const ROUND = 1e-4;

/**
 * tan(angle / 4) of the arc, + where it runs with the sweep flag (clockwise as seen, y down); 0 where it is a straight, null where it is no arc of a circle.
 * Source: SVG 2, appendix B.2 "Elliptical arc parameterization": a radius too small for its chord is raised to half of it (B.2.5); half the angle at
 * the centre has the sine (chord / 2) / r.
 */
export function arcBulge({ rx, ry, large, sweep, from, to }: SvgArc): number | null {
	const [a, b] = [Math.abs(rx), Math.abs(ry)];
	if (a === 0 || b === 0) return 0;
	if (Math.abs(a - b) > ROUND * Math.max(a, b)) return null;
	const chord = Math.hypot(to.x - from.x, to.y - from.y);
	const radius = Math.max((a + b) / 2, chord / 2);
	const half = Math.asin(Math.min(1, chord / 2 / radius));
	const angle = large ? 2 * Math.PI - 2 * half : 2 * half;
	return Math.tan(angle / 4) * (sweep ? 1 : -1);
}
