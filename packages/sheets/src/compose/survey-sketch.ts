import { headingOfFace, type Point, pointOffFace, type WallChain, type WallFace } from "@baywright/geometry";
import { capital, cornerName } from "@baywright/setout";
import { SIZES } from "../lettering/measure.ts";
import { sampled } from "../paper/arcs.ts";
import { boxOfAll } from "../paper/bounds.ts";
import type { Mark } from "../paper/drawing.ts";
import { type LabelWish, placeLabels } from "../paper/labels.ts";
import { circle, line, text } from "../paper/marks.ts";
import { at, type Box, boxRound, grown, heightOf, middleOf, type PaperPoint, widthOf } from "../paper/place.ts";
import { shifted } from "../paper/shifted.ts";
import { wallItems, wholeRun } from "./plan-figure.ts";
import { faceVertices } from "./plan-lines.ts";
import { onPaper } from "./plan-view.ts";
import type { SheetOf } from "./sheet-of.ts";
import { readingsToTake } from "./survey-forms.ts";
import { spaced } from "./template-drawing.ts";

/** No higher than this, and round the bay for numbers and names, mm of the paper. */
const TALLEST = 66;
const AROUND = 12;
/** A wall and the ring of its number, mm of the paper. */
const THICK = 3;
const RING = 2.6;

export interface Sketch {
	readonly items: readonly Mark[];
	readonly height: number;
}

/** The bay as it is drawn so far, with its walls numbered and its diagonals; no figures. */
export function surveySketch(of: SheetOf, chain: WallChain, width: number): Sketch {
	const flat = onPaper({ perMm: 1, turn: 0, from: { x: 0, y: 0 }, to: at(0, 0) });
	const reach = boxRound(sampled(faceVertices(chain, wholeRun(chain), flat), false, 5)) as Box;
	const perMm = Math.min(
		(width - 2 * AROUND) / Math.max(widthOf(reach), 1),
		(TALLEST - 2 * AROUND) / Math.max(heightOf(reach), 1),
		0.2,
	);
	const high = heightOf(reach) * perMm + 2 * AROUND;
	const middle = middleOf(reach);
	const put = onPaper({ perMm, turn: 0, from: { x: middle.x, y: -middle.y }, to: at(width / 2, high / 2) });
	const walls = wallItems(of, chain, THICK / perMm, put);
	const diagonals = readingsToTake(of).flatMap((reading): Mark[] =>
		reading.kind === "diagonal"
			? [
					line("DIMENSIONS", put(chain.corners[reading.from] as Point), put(chain.corners[reading.to] as Point), {
						pen: "narrow",
						dash: "dashed",
						ink: "light",
					}),
				]
			: [],
	);
	const rings = ringsOf(chain, put);
	const lines = [...walls, ...diagonals].flatMap((item) =>
		item.kind === "path" ? spaced(sampled(item.vertices, item.closed, 0.1), 1) : [],
	);
	const paper = { left: 0, top: 0, right: width, bottom: high };
	const labels = placeLabels(cornerWishes(chain, put), {
		area: paper,
		taken: rings.map(({ centre }) => grown({ left: centre.x, right: centre.x, top: centre.y, bottom: centre.y }, RING)),
		lines,
	});
	const items = [...diagonals, ...walls, ...rings.flatMap((ring) => ring.items), ...labels.items];
	const used = boxOfAll(items) ?? paper;
	return {
		items: [...items.map((item) => shifted(item, 0, -used.top)), ...caption(heightOf(used), width)],
		height: heightOf(used) + 6,
	};
}

const caption = (top: number, width: number): Mark[] => [
	text(at(width / 2, top + 4), "As drawn so far, seen from above: draw over it what is otherwise", {
		height: SIZES.small,
		align: "centre",
		ink: "grey",
	}),
];

/** The number of every wall in a ring behind it; of a short one further off, so that no two rings meet. */
function ringsOf(chain: WallChain, put: (p: Point) => PaperPoint) {
	const centres: PaperPoint[] = [];
	return chain.walls.map(({ faceLength }: WallFace, wall) => {
		const heading = headingOfFace(chain, wall, faceLength / 2);
		const face = put(pointOffFace(chain, wall, faceLength / 2, 0));
		const off = (by: number) => at(face.x - Math.sin(heading) * by, face.y - Math.cos(heading) * by);
		let by = THICK + RING + 1.6;
		while (centres.some((other) => Math.hypot(other.x - off(by).x, other.y - off(by).y) < 2 * RING + 1) && by < 60)
			by += 2;
		const centre = off(by);
		centres.push(centre);
		const height = wall < 9 ? SIZES.usual : SIZES.small;
		return {
			centre,
			items: [
				circle("TEXT", centre, RING, { stroke: { pen: "medium" }, fill: "white" }),
				text(at(centre.x, centre.y + height / 2), String(wall + 1), { height, bold: true, align: "centre" }),
			],
		};
	});
}

function cornerWishes(chain: WallChain, put: (p: Point) => PaperPoint): LabelWish[] {
	const walls = chain.walls.length;
	return chain.corners.map((corner, i) => {
		const before = chain.walls[Math.max(i - 1, 0)] as WallFace;
		const after = chain.walls[Math.min(i, walls - 1)] as WallFace;
		const words = cornerName(i, walls).replace(/^the /, "");
		return {
			anchor: put(corner),
			lines: [capital(words)],
			towards: Math.atan2(before.ux + after.ux, -(before.uy + after.uy)),
			height: 2,
		};
	});
}
