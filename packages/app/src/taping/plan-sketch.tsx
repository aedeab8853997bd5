import { distance, type Point, step } from "@baywright/geometry";
import { cornerName } from "@baywright/setout";
import { shapeWalls } from "../canvas/wall-shape.ts";
import { useBay, useLength, usePlanPart } from "../desk/on-table.ts";
import { Word } from "../panels/corner-card/dimension.tsx";
import { Arrowed, type Spot, spot, through } from "./arrowed.tsx";
import { type PlanMarks, planMarks } from "./plan-marks.ts";
import type { Untaken } from "./usual-readings.ts";

const WIDTH = 360;
/** A low bay needs less of a phone. */
const LEAST_HEIGHT = 118;
const MOST_HEIGHT = 168;
const MARGIN_X = 60;
const MARGIN_Y = 31;
/** Drawing units: how thick a wall is drawn, how far into the room a run's line stands, how far outside a corner its name. */
const WALL = 7;
const ASIDE = 24;
const NAME_OFF = 20;
const ARC = 26;
/** Arms drawn shorter than this are gone nearer to. */
const LEAST_ARM = 80;

interface Props {
	readonly reading: Untaken;
	/** What stands on the arrowed line. */
	readonly text: string;
	readonly label: string;
}

/** The bay from above, true to its shape, with one reading picked out. */
export function PlanSketch({ reading, text, label }: Props) {
	const corners = useBay((bay) => bay.corners).map(([x, y]) => ({ x, y }));
	const rises = useBay((bay) => bay.walls).map(({ rise }) => rise);
	const turns = usePlanPart((plan) => plan.chain?.turns ?? []);
	const show = useLength();
	const faces = shapeWalls(corners, rises);
	if (faces.some((shape) => shape === null)) return null;
	const marks = planMarks(reading, corners, faces, turns);
	const frame = frameOf(
		reading,
		faces.flatMap((shape) => shape?.face ?? []),
		marks,
	);
	const { at, scale, height } = frame;
	const shapes = shapeWalls(corners, rises, WALL / scale);
	const walls = corners.length - 1;
	const line = (points: readonly Point[]) => through(points.map(at));
	const bodies = shapes.flatMap((shape) => {
		if (shape === null) return [];
		const body = `${line([...shape.face, ...[...shape.outer].reverse()])}Z`;
		return [shape.bevel === null ? body : `${body}${line(shape.bevel)}Z`];
	});
	return (
		<svg className="sketch" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={label}>
			<path d={bodies.join("")} className="sketch-wall" />
			<path d={shapes.map((shape) => line(shape?.face ?? [])).join("")} className="sketch-face" />
			{marks.laid.length === 0 ? null : <path d={marks.laid.map(line).join("")} className="sketch-laid" />}
			{marks.faces.length === 0 ? null : <path d={marks.faces.map(line).join("")} className="sketch-hot" />}
			{marks.corners.map((corner) => (
				<Word
					key={corner}
					spot={nameSpot(corners, corner, (turns[corner] ?? 0) < 0, frame)}
					text={cornerName(corner, walls).replace("the ", "")}
					fill="var(--soft)"
					cleared
				/>
			))}
			{marks.arms.map(([from, to], arm) => (
				<Word
					key={arm === 0 ? "left" : "right"}
					spot={armSpot(at(from), at(to), marks, frame)}
					text={show(distance(from, to))}
					fill="var(--track)"
					cleared
				/>
			))}
			{marks.dots.map((dot, i) => (
				<circle key={i === 0 ? "first" : "last"} cx={at(dot)[0]} cy={at(dot)[1]} r="4.5" className="sketch-dot" />
			))}
			{marks.angle === null ? null : <Angle angle={marks.angle} frame={frame} text={text} />}
			{marks.tape === null ? null : <Tape tape={marks.tape} aside={marks.aside} at={at} scale={scale} text={text} />}
		</svg>
	);
}

type At = (point: Point) => Spot;

interface Frame {
	readonly at: At;
	/** Drawing units per mm. */
	readonly scale: number;
	readonly height: number;
}

/** The whole bay; where arms would be too short to see, no more than what is round their corner. */
function frameOf(reading: Untaken, faces: readonly Point[], marks: PlanMarks): Frame {
	const whole = framed([...faces, ...marks.laid.flat(), ...marks.dots]);
	if (reading.kind !== "chord" && reading.kind !== "angle") return whole;
	const [left, right] = [marks.faces[0]?.[0], marks.faces[1]?.[1]];
	const corner = marks.faces[0]?.[1];
	if (!left || !right || !corner) return whole;
	const arm = Math.max(distance(left, corner), distance(corner, right));
	if (arm * whole.scale >= LEAST_ARM) return whole;
	return framed([left, corner, right, ...marks.laid.flat(), ...marks.dots]);
}

function framed(points: readonly Point[]): Frame {
	const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
	const [low, high] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
	const across = (WIDTH - 2 * MARGIN_X) / Math.max(right - left, 1);
	const height = Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, (high - low) * across + 2 * MARGIN_Y));
	const scale = Math.min(across, (height - 2 * MARGIN_Y) / Math.max(high - low, 1));
	const at = ({ x, y }: Point): Spot => [
		WIDTH / 2 + (x - (left + right) / 2) * scale,
		height / 2 - (y - (low + high) / 2) * scale,
	];
	return { at, scale, height };
}

/** On the wall's side, on the line that halves the corner; beyond the end of the bay at its ends. */
function nameSpot(corners: readonly Point[], corner: number, external: boolean, { at, height }: Frame): Spot {
	const [x, y] = at(corners[corner] as Point);
	const away = ([corners[corner - 1], corners[corner + 1]] as const).flatMap((other) => {
		if (other === undefined) return [];
		const [ox, oy] = at(other);
		const length = Math.hypot(x - ox, y - oy);
		return [[(x - ox) / length, (y - oy) / length] as const];
	});
	const [ax, ay] = [away.reduce((sum, [each]) => sum + each, 0), away.reduce((sum, [, each]) => sum + each, 0)];
	const size = Math.hypot(ax, ay);
	const side = external ? -1 : 1;
	const [ux, uy] = size < 0.2 ? [0, -1] : [(ax / size) * side, (ay / size) * side];
	return held([x + ux * (NAME_OFF + Math.abs(ux) * 16), y + uy * NAME_OFF], height);
}

/** Beside the middle of an arm, away from the tape. */
function armSpot(from: Spot, to: Spot, { tape }: PlanMarks, { at, height }: Frame): Spot {
	const [mx, my] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
	const [first, last] = tape === null ? [from, to] : [at(tape[0]), at(tape[1])];
	const [tx, ty] = [(first[0] + last[0]) / 2, (first[1] + last[1]) / 2];
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
	const [nx, ny] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
	const side = nx * (tx - mx) + ny * (ty - my) > 0 ? -1 : 1;
	return held([mx + nx * side * (18 + Math.abs(nx) * 8), my + ny * side * 18], height);
}

const held = ([x, y]: Spot, height: number): Spot => [
	Math.min(Math.max(x, 34), WIDTH - 34),
	Math.min(Math.max(y, 11), height - 11),
];

interface TapeProps {
	readonly tape: readonly [Point, Point];
	readonly aside: boolean;
	readonly at: At;
	readonly scale: number;
	readonly text: string;
}

function Tape({ tape: [from, to], aside, at, scale, text }: TapeProps) {
	if (!aside) return <Arrowed from={at(from)} to={at(to)} text={text} />;
	const run = distance(from, to);
	const [ux, uy] = [(to.x - from.x) / run, (to.y - from.y) / run];
	const into = (p: Point, px: number) => at(step(p, ux, uy, 0, px / scale));
	return (
		<>
			{[from, to].map((end) => (
				<path key={`${end.x} ${end.y}`} d={through([into(end, 5), into(end, ASIDE + 5)])} className="sketch-reach" />
			))}
			<Arrowed from={into(from, ASIDE)} to={into(to, ASIDE)} text={text} />
		</>
	);
}

interface AngleProps {
	readonly angle: NonNullable<PlanMarks["angle"]>;
	readonly frame: Frame;
	readonly text: string;
}

/** The arc on the room's side, from the left wall to the right one. */
function Angle({ angle, frame: { at, height }, text }: AngleProps) {
	const [x, y] = at(angle.at);
	const towards = (p: Point): Spot => {
		const [px, py] = at(p);
		const length = Math.hypot(px - x, py - y);
		return [(px - x) / length, (py - y) / length];
	};
	const [left, right] = [towards(angle.left), towards(angle.right)];
	const end = ([ux, uy]: Spot): Spot => [x + ux * ARC, y + uy * ARC];
	// The room lies on the right of travel: from the left wall to the right one through it goes against the clock.
	const arc = `M${spot(end(left))}A${ARC} ${ARC} 0 ${angle.over180 ? 1 : 0} 0 ${spot(end(right))}`;
	const [mx, my] = [left[0] + right[0], left[1] + right[1]];
	const size = Math.hypot(mx, my);
	// Nearly straight on, the half line is across the wall instead.
	const [hx, hy] = size < 0.1 ? [-right[1], right[0]] : [mx / size, my / size];
	const side = size >= 0.1 && angle.over180 ? -1 : 1;
	return (
		<g className="sketch-dimension">
			<path d={arc} />
			<Word
				spot={held([x + hx * side * (ARC + 22), y + hy * side * (ARC + 18)], height)}
				text={text}
				fill="var(--ink)"
				bold
				cleared
			/>
		</g>
	);
}
