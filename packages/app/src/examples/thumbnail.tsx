import type { Point } from "@baywright/geometry";
import type { BayPlan } from "@baywright/setout";
import { pathData } from "../drawing/path-data.ts";

const WIDTH = 240;
const HEIGHT = 132;
const MARGIN = 22;
/** Drawing units: the wall is drawn thicker than it is, or nobody would see it. */
const WALL = 7;
const BRACKET = 5;

/** A bay in the small: walls, track and brackets; the walls alone where no track fits. */
export function Thumbnail({ plan }: { readonly plan: BayPlan }) {
	const { chain } = plan;
	if (chain === null) return <svg className="thumbnail" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" />;
	const { corners, walls } = chain;
	const [left, right] = [Math.min(...corners.map(({ x }) => x)), Math.max(...corners.map(({ x }) => x))];
	const [low, high] = [Math.min(...corners.map(({ y }) => y)), Math.max(...corners.map(({ y }) => y))];
	const scale = Math.min(
		(WIDTH - 2 * MARGIN) / Math.max(right - left, 1),
		(HEIGHT - 2 * MARGIN) / Math.max(high - low, 1),
	);
	const at = ({ x, y }: Point): readonly [number, number] => [
		WIDTH / 2 + (x - (left + right) / 2) * scale,
		HEIGHT / 2 - (y - (low + high) / 2) * scale,
	];
	const line = (points: readonly Point[]) =>
		points
			.map(at)
			.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`)
			.join("L");
	const outer = corners.map((corner, i) => outside(corner, walls[i - 1], walls[i], WALL / scale)).reverse();

	return (
		<svg className="thumbnail" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
			<path d={`M${line(corners)}L${line(outer)}Z`} fill="var(--line)" />
			<path d={`M${line(corners)}`} fill="none" stroke="var(--wall)" strokeWidth="1.6" />
			{plan.path === null ? null : (
				<path d={pathData(plan.path, at, scale)} fill="none" stroke="var(--track)" strokeWidth="1.8" />
			)}
			{plan.brackets.map(({ station, at: place }) => {
				const [x, y] = at(place);
				return (
					<rect
						key={station}
						x={x - BRACKET / 2}
						y={y - BRACKET / 2}
						width={BRACKET}
						height={BRACKET}
						fill="var(--ink)"
					/>
				);
			})}
		</svg>
	);
}

interface Face {
	readonly ux: number;
	readonly uy: number;
}

/** The corner moved `off` mm out of the room, along the mitre where two walls meet. */
function outside(corner: Point, before: Face | undefined, after: Face | undefined, off: number): Point {
	const [a, b] = [before ?? after, after ?? before];
	if (!a || !b) return corner;
	const [nx, ny] = [-a.uy - b.uy, a.ux + b.ux];
	const stretch = off / Math.max((nx * nx + ny * ny) / 2, SHARPEST);
	return { x: corner.x + nx * stretch, y: corner.y + ny * stretch };
}

/** Keeps the mitre of a very sharp corner within the drawing. */
const SHARPEST = 0.2;
