import type { Point, TrackPath } from "@baywright/geometry";

/**
 * A track's centre line as SVG path data, arcs as true arcs. `at` takes a plan point (mm, y up) to the drawing (y down),
 * `scale` is drawing units per mm.
 */
export function pathData(path: TrackPath, at: (point: Point) => readonly [number, number], scale: number): string {
	const first = path.segments[0];
	if (first === undefined) return "";
	const spot = (point: Point) =>
		at(point)
			.map((value) => value.toFixed(2))
			.join(" ");
	const parts = path.segments.map((segment) => {
		if (segment.kind === "straight") return `L${spot(segment.to)}`;
		const radius = (segment.radius * scale).toFixed(2);
		const large = Math.abs(segment.turn) > Math.PI ? 1 : 0;
		// A turn to the right runs clockwise on screen, which SVG calls the positive sweep.
		return `A${radius} ${radius} 0 ${large} ${segment.turn > 0 ? 1 : 0} ${spot(segment.to)}`;
	});
	return `M${spot(first.from)}${parts.join("")}`;
}
