import svgpath from "svgpath";
import type { Stroke, StrokePoint } from "./stroke.ts";
import { arcBulge } from "./svg-arc.ts";

interface Strokes {
	readonly strokes: readonly Stroke[];
	readonly leftOut: readonly string[];
}

/** The strokes of path data under a list of transforms, outermost first. A part with a curve in it is left out whole. */
export function strokesOf(data: string, transform: string, place: string): Strokes {
	const path = svgpath(data);
	// Its types leave out what it says of data that it cannot read.
	const { err } = path as unknown as { readonly err: string };
	if (err !== "") return { strokes: [], leftOut: ["path data that cannot be read: allowed is that of SVG"] };
	const strokes: Stroke[] = [];
	const leftOut: string[] = [];
	let points: StrokePoint[] = [];
	let bad = "";
	const finish = (closed: boolean) => {
		const shut = closed && points.length > 2 && meets(points[0] as StrokePoint, points.at(-1) as StrokePoint);
		const kept = shut ? points.slice(0, -1) : points;
		if (bad !== "") leftOut.push(bad);
		else if (kept.length > 1) strokes.push({ points: kept, closed: closed && kept.length > 1, place });
		points = [];
		bad = "";
	};
	const go = (x: number, y: number, bulge: number, from: { readonly x: number; readonly y: number }) => {
		// After a Z the next part begins where the last one did.
		const last = points.pop() ?? { x: from.x, y: -from.y, bulge: 0 };
		// The plan's y goes up: what ran clockwise as seen runs so still, and that is a negative bulge.
		points.push({ ...last, bulge: -bulge + 0 }, { x, y: -y, bulge: 0 });
	};
	path
		.abs()
		.transform(transform)
		.iterate((segment, _, x, y) => {
			const from = { x, y };
			switch (segment[0]) {
				case "M":
					finish(false);
					points = [{ x: segment[1], y: -segment[2], bulge: 0 }];
					break;
				case "L":
					go(segment[1], segment[2], 0, from);
					break;
				case "H":
					go(segment[1], y, 0, from);
					break;
				case "V":
					go(x, segment[1], 0, from);
					break;
				case "A": {
					const [, rx, ry, , large, sweep, toX, toY] = segment;
					// Flags may come as text.
					const flags = { large: Number(large) === 1, sweep: Number(sweep) === 1 };
					const bulge = arcBulge({ rx, ry, ...flags, from, to: { x: toX, y: toY } });
					if (bulge === null) bad = `an arc of an ellipse: ${ALLOWED}`;
					go(toX, toY, bulge ?? 0, from);
					break;
				}
				case "Z":
				case "z":
					finish(true);
					break;
				default: {
					const [toX, toY] = segment.slice(-2) as [number, number];
					bad = `a curve (Bézier): ${ALLOWED}`;
					go(toX, toY, 0, from);
				}
			}
		});
	finish(false);
	return { strokes, leftOut };
}

const ALLOWED = "allowed are straight lines and arcs of circles";

const meets = (a: StrokePoint, b: StrokePoint): boolean => a.x === b.x && a.y === b.y;
