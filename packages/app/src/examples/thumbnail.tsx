import type { Point } from "@baywright/geometry";
import type { BayPlan, Severity } from "@baywright/setout";
import { shapeWalls } from "../canvas/wall-shape.ts";
import { pathData } from "../drawing/path-data.ts";

const WIDTH = 240;
const HEIGHT = 132;
const MARGIN = 22;
/** Drawing units: the wall is drawn thicker than it is, or nobody would see it. */
const WALL = 7;
const BRACKET = 5;

interface Props {
	readonly plan: BayPlan;
	/** Corners as drawn, for a plan that has no walls because they make no bay. */
	readonly drawn?: readonly Point[];
	/** A place to point at, in the colour of this severity. */
	readonly mark?: { readonly at: Point; readonly severity: Severity } | null;
}

/** A bay in the small: walls, track and brackets; the walls alone where no track fits. */
export function Thumbnail({ plan, drawn = [], mark = null }: Props) {
	const corners = plan.chain?.corners ?? drawn;
	if (corners.length === 0) return <svg className="thumbnail" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true" />;
	const rises = plan.chain?.walls.map(({ bow }) => bow?.rise ?? 0) ?? [];
	const shaped = plan.chain === null ? [] : shapeWalls(corners, rises).flatMap((shape) => shape?.face ?? []);
	const faces = shaped.length > 0 ? shaped : corners;
	const [left, right] = [Math.min(...faces.map(({ x }) => x)), Math.max(...faces.map(({ x }) => x))];
	const [low, high] = [Math.min(...faces.map(({ y }) => y)), Math.max(...faces.map(({ y }) => y))];
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
	const bodies = (plan.chain === null ? [] : shapeWalls(corners, rises, WALL / scale)).flatMap((shape) => {
		if (shape === null) return [];
		const body = `M${line([...shape.face, ...[...shape.outer].reverse()])}Z`;
		return [shape.bevel === null ? body : `${body}M${line(shape.bevel)}Z`];
	});

	return (
		<svg className="thumbnail" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
			<path d={bodies.join("")} fill="var(--line)" />
			<path d={`M${line(faces)}`} fill="none" stroke="var(--wall)" strokeWidth="1.6" />
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
			{mark === null ? null : (
				<circle
					className={`severity-${mark.severity}`}
					cx={at(mark.at)[0]}
					cy={at(mark.at)[1]}
					r="7"
					fill="none"
					stroke="currentColor"
					strokeWidth="2.4"
				/>
			)}
		</svg>
	);
}
