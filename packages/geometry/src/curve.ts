import type { Point } from "./point.ts";

/** A straight stretch, or with a centre an arc; walls and track segments alike. mm; turn in radians, right positive. */
export interface Curve {
	readonly from: Point;
	readonly to: Point;
	readonly centre?: Point;
	readonly radius?: number;
	readonly turn?: number;
}

/** Where two curves come nearest. */
export interface Approach {
	readonly distance: number;
	readonly onA: Point;
	readonly onB: Point;
}

/** The nearest points of two curves; distance 0 where they cross or touch. */
export function approach(a: Curve, b: Curve): Approach {
	let best: Approach = { distance: Number.POSITIVE_INFINITY, onA: a.from, onB: b.from };
	const offer = (onA: Point, onB: Point) => {
		const distance = Math.sqrt((onA.x - onB.x) ** 2 + (onA.y - onB.y) ** 2);
		if (distance < best.distance) best = { distance, onA, onB };
	};
	for (const p of crossingPoints(a, b)) offer(p, p);
	if (best.distance === 0) return best;
	offer(a.from, nearestOn(b, a.from));
	offer(a.to, nearestOn(b, a.to));
	offer(nearestOn(a, b.from), b.from);
	offer(nearestOn(a, b.to), b.to);
	if (a.centre !== undefined && b.centre === undefined) {
		const foot = nearestOn(b, a.centre);
		offer(nearestOn(a, foot), foot);
	} else if (b.centre !== undefined && a.centre === undefined) {
		const foot = nearestOn(a, b.centre);
		offer(foot, nearestOn(b, foot));
	} else if (a.centre !== undefined && b.centre !== undefined) {
		const towardsB = nearestOn(a, b.centre);
		offer(towardsB, nearestOn(b, towardsB));
		const towardsA = nearestOn(b, a.centre);
		offer(nearestOn(a, towardsA), towardsA);
	}
	return best;
}

/**
 * A distance (mm) that two curves are certainly not nearer than; exact for two straight stretches. For an arc its whole circle is taken.
 * Quick, to leave out pairs that cannot matter.
 */
export function atLeastApart(a: Curve, b: Curve): number {
	if (a.centre === undefined) return b.centre === undefined ? straightsApart(a, b) : circleApart(b, a);
	return b.centre === undefined ? circleApart(a, b) : 0;
}

function straightsApart(a: Curve, b: Curve): number {
	if (isAcross(a, b) && isAcross(b, a)) return 0;
	return Math.sqrt(
		Math.min(
			offStraightSquared(a.from, b),
			offStraightSquared(a.to, b),
			offStraightSquared(b.from, a),
			offStraightSquared(b.to, a),
		),
	);
}

/** Do the ends of `b` lie on different sides of the line along `a`, or on it? */
function isAcross({ from, to }: Curve, b: Curve): boolean {
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	const first = dx * (b.from.y - from.y) - dy * (b.from.x - from.x);
	const second = dx * (b.to.y - from.y) - dy * (b.to.x - from.x);
	return first * second <= 0;
}

/** From a straight stretch to the circle that an arc is part of. */
function circleApart({ centre, radius }: Curve, straight: Curve): number {
	const c = centre as Point;
	const r = radius as number;
	const least = Math.sqrt(offStraightSquared(c, straight));
	if (least >= r) return least - r;
	const { from, to } = straight;
	const most = Math.sqrt(Math.max((from.x - c.x) ** 2 + (from.y - c.y) ** 2, (to.x - c.x) ** 2 + (to.y - c.y) ** 2));
	return most <= r ? r - most : 0;
}

function offStraightSquared(p: Point, { from, to }: Curve): number {
	const dx = to.x - from.x;
	const dy = to.y - from.y;
	const px = p.x - from.x;
	const py = p.y - from.y;
	const share = (px * dx + py * dy) / (dx * dx + dy * dy);
	const held = share > 0 ? Math.min(share, 1) : 0;
	const x = px - dx * held;
	const y = py - dy * held;
	return x * x + y * y;
}

/** The point of a curve nearest to `p`. */
export function nearestOn(curve: Curve, p: Point): Point {
	const { from, to, centre, radius } = curve;
	if (centre === undefined || radius === undefined) {
		const dx = to.x - from.x;
		const dy = to.y - from.y;
		const share = ((p.x - from.x) * dx + (p.y - from.y) * dy) / (dx * dx + dy * dy);
		if (!(share > 0)) return from;
		return share >= 1 ? to : { x: from.x + dx * share, y: from.y + dy * share };
	}
	const away = Math.sqrt((p.x - centre.x) ** 2 + (p.y - centre.y) ** 2);
	if (away > 0) {
		const share = radius / away;
		const foot = { x: centre.x + (p.x - centre.x) * share, y: centre.y + (p.y - centre.y) * share };
		if (holds(curve, foot)) return foot;
	}
	const nearFrom = (p.x - from.x) ** 2 + (p.y - from.y) ** 2 <= (p.x - to.x) ** 2 + (p.y - to.y) ** 2;
	return nearFrom ? from : to;
}

/** Points common to both curves: none, one or two; none reported where they lie on one another. */
export function crossingPoints(a: Curve, b: Curve): readonly Point[] {
	if (a.centre === undefined) return b.centre === undefined ? lineLine(a, b) : lineArc(a, b);
	return b.centre === undefined ? lineArc(b, a) : arcArc(a, b);
}

/** Does the arc's own angle take in the direction of `p` from its centre? Straight stretches hold everything. */
function holds({ from, to, centre, turn }: Curve, p: Point): boolean {
	if (centre === undefined || turn === undefined) return true;
	const side = turn > 0 ? -1 : 1;
	const fx = from.x - centre.x;
	const fy = from.y - centre.y;
	const tx = to.x - centre.x;
	const ty = to.y - centre.y;
	const px = p.x - centre.x;
	const py = p.y - centre.y;
	const pastFrom = side * (fx * py - fy * px) >= 0;
	const beforeTo = side * (px * ty - py * tx) >= 0;
	return Math.abs(turn) <= Math.PI ? pastFrom && beforeTo : pastFrom || beforeTo;
}

function lineLine(a: Curve, b: Curve): Point[] {
	const ax = a.to.x - a.from.x;
	const ay = a.to.y - a.from.y;
	const bx = b.to.x - b.from.x;
	const by = b.to.y - b.from.y;
	const cross = ax * by - ay * bx;
	if (cross === 0) return [];
	const x = b.from.x - a.from.x;
	const y = b.from.y - a.from.y;
	const alongA = (x * by - y * bx) / cross;
	const alongB = (x * ay - y * ax) / cross;
	if (alongA < 0 || alongA > 1 || alongB < 0 || alongB > 1) return [];
	return [{ x: a.from.x + ax * alongA, y: a.from.y + ay * alongA }];
}

function lineArc(line: Curve, arc: Curve): Point[] {
	const { x: cx, y: cy } = arc.centre as Point;
	const radius = arc.radius as number;
	const dx = line.to.x - line.from.x;
	const dy = line.to.y - line.from.y;
	const fx = line.from.x - cx;
	const fy = line.from.y - cy;
	const a = dx * dx + dy * dy;
	const b = fx * dx + fy * dy;
	const root = b * b - a * (fx * fx + fy * fy - radius * radius);
	if (root < 0) return [];
	return [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]
		.filter((share) => share >= 0 && share <= 1)
		.map((share) => ({ x: line.from.x + dx * share, y: line.from.y + dy * share }))
		.filter((p) => holds(arc, p));
}

function arcArc(a: Curve, b: Curve): Point[] {
	const ca = a.centre as Point;
	const cb = b.centre as Point;
	const ra = a.radius as number;
	const rb = b.radius as number;
	const dx = cb.x - ca.x;
	const dy = cb.y - ca.y;
	const apart = Math.sqrt(dx * dx + dy * dy);
	if (ra > rb) return arcArc(b, a);
	if (apart === 0 || apart > ra + rb || apart < rb - ra) return [];
	const along = ((apart - rb) * (apart + rb) + ra * ra) / (2 * apart);
	const aside = Math.sqrt(Math.max(0, ra * ra - along * along));
	const x = ca.x + (dx * along) / apart;
	const y = ca.y + (dy * along) / apart;
	return [
		{ x: x + (dy * aside) / apart, y: y - (dx * aside) / apart },
		{ x: x - (dy * aside) / apart, y: y + (dx * aside) / apart },
	].filter((p) => holds(a, p) && holds(b, p));
}

/** Writes the box round a curve: least x, least y, greatest x, greatest y. */
export function writeBox(curve: Curve, boxes: Float64Array, offset: number): void {
	const { from, to, centre, radius } = curve;
	boxes[offset] = Math.min(from.x, to.x);
	boxes[offset + 1] = Math.min(from.y, to.y);
	boxes[offset + 2] = Math.max(from.x, to.x);
	boxes[offset + 3] = Math.max(from.y, to.y);
	if (centre === undefined || radius === undefined) return;
	const { x, y } = centre;
	if (holds(curve, { x: x - radius, y })) boxes[offset] = x - radius;
	if (holds(curve, { x, y: y - radius })) boxes[offset + 1] = y - radius;
	if (holds(curve, { x: x + radius, y })) boxes[offset + 2] = x + radius;
	if (holds(curve, { x, y: y + radius })) boxes[offset + 3] = y + radius;
}
