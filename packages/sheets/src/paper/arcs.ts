import type { PathVertex } from "./drawing.ts";
import { at, type PaperPoint } from "./place.ts";

/** An arc of a path. Angles in radians, counter-clockwise as seen on the paper. */
export interface PaperArc {
	readonly centre: PaperPoint;
	/** mm. */
	readonly radius: number;
	/** Direction from the centre to where it begins. */
	readonly from: number;
	/** Counter-clockwise positive. */
	readonly sweep: number;
}

/** The arc that a bulge makes of two vertices; the bulge must not be 0. */
function arcOf(from: PaperPoint, to: PaperPoint, bulge: number): PaperArc {
	const sweep = 4 * Math.atan(bulge);
	const chord = Math.hypot(to.x - from.x, to.y - from.y);
	const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
	// From mid-chord to the centre, along the normal on the left of the way as seen on the paper.
	const off = (chord * (1 - bulge * bulge)) / (4 * bulge);
	const [ux, uy] = [(to.x - from.x) / chord, (to.y - from.y) / chord];
	const centre = at((from.x + to.x) / 2 + uy * off, (from.y + to.y) / 2 - ux * off);
	return { centre, radius, from: Math.atan2(centre.y - from.y, from.x - centre.x), sweep };
}

export const onArc = ({ centre, radius, from }: PaperArc, swung: number): PaperPoint =>
	at(centre.x + radius * Math.cos(from + swung), centre.y - radius * Math.sin(from + swung));

export type PathStep =
	| { readonly kind: "line"; readonly to: PaperPoint }
	| { readonly kind: "arc"; readonly to: PaperPoint; readonly arc: PaperArc };

/** The stretches of a path one after the other, from its first vertex. */
export function stepsOf(vertices: readonly PathVertex[], closed: boolean): PathStep[] {
	const ends = closed ? [...vertices.slice(1), ...vertices.slice(0, 1)] : vertices.slice(1);
	return ends.map(({ at: to }, i) => {
		const { at: from, bulge } = vertices[i] as PathVertex;
		return bulge === 0 ? { kind: "line", to } : { kind: "arc", to, arc: arcOf(from, to, bulge) };
	});
}

/** Places along a path, near enough to it that no arc is further off than `error` mm. */
export function sampled(vertices: readonly PathVertex[], closed: boolean, error: number): PaperPoint[] {
	const first = vertices[0];
	if (first === undefined) return [];
	return [
		first.at,
		...stepsOf(vertices, closed).flatMap((step) => {
			if (step.kind === "line") return [step.to];
			const most = 2 * Math.acos(Math.max(1 - error / step.arc.radius, -1));
			const parts = Math.max(1, Math.ceil(Math.abs(step.arc.sweep) / most));
			const between = Array.from({ length: parts - 1 }, (_, i) => onArc(step.arc, (step.arc.sweep * (i + 1)) / parts));
			return [...between, step.to];
		}),
	];
}
