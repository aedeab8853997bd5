import type { Point } from "@baywright/geometry";
import Flatten from "@flatten-js/core";
import makerjs from "makerjs";

/** A segment with what a fitted path knows of it: station, length and heading at its start. */
interface Laid {
	readonly shape: unknown;
	readonly station: number;
	readonly length: number;
	readonly heading: number;
}

/** The same track by hand with the classes of @flatten-js/core: lines offset, intersected, and an arc at every corner. */
export function roundWithFlatten(corners: readonly Point[], projection: number, radius: number): Laid[] {
	const { point, vector, segment, line, Arc } = Flatten;
	const offset = corners.slice(1).map((to, i) => {
		const from = corners[i] as Point;
		const wall = segment(point(from.x, from.y), point(to.x, to.y));
		const aside = wall.tangentInStart().rotate90CW().multiply(projection);
		return wall.translate(aside);
	});
	const virtual = offset.slice(1).map((next, i) => {
		const before = offset[i] as Flatten.Segment;
		return line(before.ps, before.pe).intersect(line(next.ps, next.pe))[0] as Flatten.Point;
	});
	const track: Laid[] = [];
	let station = 0;
	const lay = (shape: Flatten.Segment | Flatten.Arc) => {
		track.push({ shape, station, length: shape.length, heading: shape.tangentInStart().slope });
		station += shape.length;
	};
	let from = (offset[0] as Flatten.Segment).ps;
	virtual.forEach((at, i) => {
		const before = (offset[i] as Flatten.Segment).tangentInStart();
		const after = (offset[i + 1] as Flatten.Segment).tangentInStart();
		const turn = Math.atan2(after.cross(before), before.dot(after));
		const tangent = radius * Math.tan(Math.abs(turn) / 2);
		const start = at.translate(before.multiply(-tangent));
		const end = at.translate(after.multiply(tangent));
		const toCentre = (turn > 0 ? after.rotate90CW() : after.rotate90CCW()).multiply(radius);
		const centre = end.translate(toCentre);
		lay(segment(from, start));
		lay(new Arc(centre, radius, vector(centre, start).slope, vector(centre, end).slope, turn < 0));
		from = end;
	});
	lay(segment(from, (offset.at(-1) as Flatten.Segment).pe));
	return track;
}

/** The same track with the ready-made fillets of makerjs: offset lines converged at each corner, then filleted. */
export function roundWithMaker(corners: readonly Point[], projection: number, radius: number): Laid[] {
	const lines = corners.slice(1).map((to, i) => {
		const from = corners[i] as Point;
		const length = Math.hypot(to.x - from.x, to.y - from.y);
		const ox = ((to.y - from.y) / length) * projection;
		const oy = (-(to.x - from.x) / length) * projection;
		return new makerjs.paths.Line([from.x + ox, from.y + oy], [to.x + ox, to.y + oy]);
	});
	const bends: makerjs.IPathArc[] = [];
	for (let i = 1; i < lines.length; i++) {
		const before = lines[i - 1] as makerjs.paths.Line;
		const after = lines[i] as makerjs.paths.Line;
		makerjs.path.converge(before, after);
		bends.push(makerjs.path.fillet(before, after, radius) as makerjs.IPathArc);
	}
	const track: Laid[] = [];
	let station = 0;
	lines.forEach((line, i) => {
		const heading = makerjs.angle.ofLineInDegrees(line);
		for (const shape of [line, bends[i]]) {
			if (shape === undefined) continue;
			const length = makerjs.measure.pathLength(shape);
			track.push({ shape, station, length, heading });
			station += length;
		}
	});
	return track;
}
