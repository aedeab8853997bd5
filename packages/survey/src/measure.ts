import { wrapHeading } from "@baywright/geometry";
import { armTilt, placeByBow, tangentTilt } from "./bow.ts";
import type {
	Angle,
	Bowed,
	Distance,
	Observation,
	Observed,
	Offset,
	Place,
	Span,
	Stand,
	Sum,
	Tilt,
} from "./observation.ts";

/**
 * Where everything is: x and y of every point in turn, then the parameters. Slopes and gradients run over the same columns.
 */
export interface State {
	readonly values: Float64Array;
	/** Column of the first parameter: twice the number of points. */
	readonly firstParameter: number;
}

/** What would be observed in this state, its slopes added to `slopes` (all 0 beforehand). Not a number where points coincide. */
export function measure(observed: Observed, state: State, slopes: Float64Array): number {
	switch (observed.kind) {
		case "distance":
			return measureDistance(observed, state, slopes);
		case "angle":
			return measureAngle(observed, state, slopes);
		case "offset":
			return measureOffset(observed, state, slopes);
		case "stand":
			return measureStand(observed, state, slopes);
		case "span":
			return measureSpan(observed, state, slopes);
		case "sum":
			return measureSum(observed, state, slopes);
	}
}

/** Adjusted less taken; angles the short way round. */
export const misfit = ({ kind, value }: Observation, measured: number): number =>
	kind === "angle" ? wrapHeading(measured - value) : measured - value;

function measureDistance({ from, to, zero }: Distance, state: State, slopes: Float64Array): number {
	const { length, ux, uy } = lineOf(state, from, to);
	addPoint(slopes, to, ux, uy);
	addPoint(slopes, from, -ux, -uy);
	return zero === undefined ? length : length + addParameter(state, slopes, zero, 1);
}

function measureAngle({ at, from, to, tilts = [] }: Angle, state: State, slopes: Float64Array): number {
	let angle = addHeading(state, slopes, at, from, 1) + addHeading(state, slopes, at, to, -1);
	for (const tilt of tilts) angle += addTilt(state, slopes, tilt);
	return angle - 2 * Math.PI * Math.floor(angle / (2 * Math.PI));
}

/** The heading from one point to another, its slopes times `factor`. */
function addHeading(state: State, slopes: Float64Array, from: number, to: number, factor: number): number {
	const { length, ux, uy } = lineOf(state, from, to);
	const share = factor / length;
	addPoint(slopes, to, -uy * share, ux * share);
	addPoint(slopes, from, uy * share, -ux * share);
	return factor * Math.atan2(uy, ux);
}

function addTilt(state: State, slopes: Float64Array, { from, to, rise, arm }: Tilt): number {
	const { length, ux, uy } = lineOf(state, from, to);
	const high = parameter(state, rise);
	const { value, byChord, byRise } = arm === null ? tangentTilt(length, high) : armTilt(length, high, arm);
	addPoint(slopes, to, ux * byChord, uy * byChord);
	addPoint(slopes, from, -ux * byChord, -uy * byChord);
	addParameter(state, slopes, rise, byRise);
	return value;
}

/** f = (p − a)·r with r to the right of the line; its ends move it as they turn the line about the foot of the point. */
function measureOffset({ point, from, to }: Offset, state: State, slopes: Float64Array): number {
	const { length, ux, uy } = lineOf(state, from, to);
	const { values } = state;
	const dx = (values[2 * point] as number) - (values[2 * from] as number);
	const dy = (values[2 * point + 1] as number) - (values[2 * from + 1] as number);
	const share = (dx * ux + dy * uy) / length;
	addPoint(slopes, point, uy, -ux);
	addPoint(slopes, from, -uy * (1 - share), ux * (1 - share));
	addPoint(slopes, to, -uy * share, ux * share);
	return dx * uy - dy * ux;
}

function measureStand({ from, to, rise, at }: Stand, state: State, slopes: Float64Array): number {
	const { length, ux, uy } = lineOf(state, from, to);
	const { left } = placeByBow(length, parameter(state, rise), at, 0);
	addPoint(slopes, to, ux * left.byChord, uy * left.byChord);
	addPoint(slopes, from, -ux * left.byChord, -uy * left.byChord);
	addParameter(state, slopes, rise, left.byRise);
	return left.value;
}

function measureSpan({ first, second }: Span, state: State, slopes: Float64Array): number {
	const here = placed(state, first);
	const there = placed(state, second);
	const dx = there.x - here.x;
	const dy = there.y - here.y;
	const length = Math.hypot(dx, dy);
	there.add(slopes, dx / length, dy / length);
	here.add(slopes, -dx / length, -dy / length);
	return length;
}

/** A place beside a wall, and how to add the slopes of its movement in a direction (gx, gy). */
function placed(state: State, { from, to, rise, at, off }: Place) {
	const line = lineOf(state, from, to);
	const { length, ux, uy } = line;
	const { along, left } = placeByBow(length, parameter(state, rise), at, off);
	const dx = along.value * ux - left.value * uy;
	const dy = along.value * uy + left.value * ux;
	const add = (slopes: Float64Array, gx: number, gy: number) => {
		const gAlong = gx * ux + gy * uy;
		const gLeft = gy * ux - gx * uy;
		const byChord = gAlong * along.byChord + gLeft * left.byChord;
		// Turning the wall about its first end moves the place crosswise.
		const byTurn = (gy * dx - gx * dy) / length;
		const tx = ux * byChord - uy * byTurn;
		const ty = uy * byChord + ux * byTurn;
		addPoint(slopes, to, tx, ty);
		addPoint(slopes, from, gx - tx, gy - ty);
		addParameter(state, slopes, rise, gAlong * along.byRise + gLeft * left.byRise);
	};
	return { x: (state.values[2 * from] as number) + dx, y: (state.values[2 * from + 1] as number) + dy, add };
}

function measureSum({ terms }: Sum, state: State, slopes: Float64Array): number {
	let sum = 0;
	for (const { parameter: index, factor } of terms) sum += factor * addParameter(state, slopes, index, factor);
	return sum;
}

function lineOf({ values }: State, from: number, to: number): { length: number; ux: number; uy: number } {
	const dx = (values[2 * to] as number) - (values[2 * from] as number);
	const dy = (values[2 * to + 1] as number) - (values[2 * from + 1] as number);
	const length = Math.sqrt(dx * dx + dy * dy);
	return { length, ux: dx / length, uy: dy / length };
}

const parameter = ({ values, firstParameter }: State, index: number): number =>
	values[firstParameter + index] as number;

function addPoint(slopes: Float64Array, index: number, x: number, y: number): void {
	slopes[2 * index] = (slopes[2 * index] as number) + x;
	slopes[2 * index + 1] = (slopes[2 * index + 1] as number) + y;
}

/** Adds to a parameter's slope; returns the parameter. */
function addParameter(state: State, slopes: Float64Array, index: number, slope: number): number {
	const column = state.firstParameter + index;
	slopes[column] = (slopes[column] as number) + slope;
	return state.values[column] as number;
}

/** The pairs of points that an observation needs apart. */
export function linesOf(observed: Observed): readonly (readonly [number, number])[] {
	const wall = ({ from, to }: Bowed) => [from, to] as const;
	switch (observed.kind) {
		case "distance":
		case "offset":
		case "stand":
			return [[observed.from, observed.to]];
		case "angle":
			return [[observed.at, observed.from], [observed.at, observed.to], ...(observed.tilts ?? []).map(wall)];
		case "span":
			return [wall(observed.first), wall(observed.second)];
		case "sum":
			return [];
	}
}
