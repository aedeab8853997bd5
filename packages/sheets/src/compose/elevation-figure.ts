import { footOnFace, type Segment, type TrackPath, type WallChain } from "@baywright/geometry";
import type { Opening } from "@baywright/setout";
import { SIZES, textWidth } from "../lettering/measure.ts";
import { dimension } from "../paper/dimension.ts";
import type { Mark } from "../paper/drawing.ts";
import { circle, line, rectangle, text } from "../paper/marks.ts";
import { at, type Box, boxAt } from "../paper/place.ts";
import { scaleFor } from "../paper/scales.ts";
import type { SheetOf } from "./sheet-of.ts";

/** The walls unrolled, seen from the room, to scale. */
export interface ElevationFigure {
	/** mm of the room for each mm drawn. */
	readonly scale: number;
	readonly items: readonly Mark[];
	readonly height: number;
	/** Whether any curtain is drawn. */
	readonly hasCurtains: boolean;
}

/** At the left and the right for heights, over it for the names of the walls, mm of the paper. */
const SIDE = 18;
const ABOVE = 5;
/** Shown over the highest thing there is where no ceiling is given, mm of the room. */
const OVER = 150;

/** Drawn no higher than `tallest` mm: openings, what is in the way, track, brackets, and the curtains drawn back where their drop is known. */
export function elevationFigure(of: SheetOf, chain: WallChain, width: number, tallest: number): ElevationFigure {
	const { bay, plan, about } = of;
	const starts = wallStarts(chain);
	const long = starts.at(-1) as number;
	const top = bay.ceiling ?? highest(of) + OVER;
	const scale = scaleFor({ width: long, height: top }, { width: width - 2 * SIDE, height: tallest - ABOVE });
	const left = (width - long / scale) / 2;
	const floor = ABOVE + top / scale;
	const x = (along: number) => left + along / scale;
	const y = (height: number) => floor - height / scale;
	const face = (wall: number, from: number, to: number, bottom: number, upTo: number): Box => {
		const start = starts[wall] ?? 0;
		return { left: x(start + from), right: x(start + to), top: y(upTo), bottom: y(bottom) };
	};
	const heights = [
		...(bay.ceiling === null ? [] : [{ height: bay.ceiling, side: "right" as const }]),
		...(plan.height === null ? [] : [{ height: plan.height, side: "left" as const }]),
	];
	return {
		scale,
		height: floor + 2,
		hasCurtains: plan.height !== null && plan.curtains.some(isDrawn),
		items: [
			...wallItems(of, chain, starts, { x, top: y(top), floor }),
			...bay.obstacles.flatMap(({ wall, from, to, bottom, top: upTo }): Mark[] =>
				chain.walls[wall] === undefined || !(to > from)
					? []
					: [
							rectangle("OPENINGS", face(wall, from, to, bottom ?? 0, upTo ?? top), {
								stroke: { pen: "narrow", ink: "grey" },
								fill: "tint",
							}),
						],
			),
			...bay.openings.flatMap((opening) =>
				chain.walls[opening.wall] === undefined ? [] : openingItems(of, opening, face, top),
			),
			...trackItems(of, chain, starts, x, y),
			...heights.flatMap(({ height, side }) => {
				const edge = side === "left" ? x(0) : x(long);
				const [from, to] =
					side === "left" ? [at(edge, floor), at(edge, y(height))] : [at(edge, y(height)), at(edge, floor)];
				const placed = dimension(
					{ from, to, side: "left", text: about(height), offsets: [6] },
					[],
					boxAt(-50, -50, width + 100, floor + 100),
				);
				return placed?.items ?? [];
			}),
		],
	};
}

/** Where each wall begins along the unrolled faces, and where the last one ends, mm. */
function wallStarts({ walls }: WallChain): number[] {
	const starts = [0];
	for (const { faceLength } of walls) starts.push((starts.at(-1) as number) + faceLength);
	return starts;
}

const highest = ({ bay, plan }: SheetOf): number =>
	Math.max(
		plan.height ?? 0,
		2000,
		...bay.openings.map(({ head }) => head ?? 0),
		...bay.obstacles.map(({ top }) => top ?? 0),
	);

function wallItems(
	{ bay }: SheetOf,
	{ walls }: WallChain,
	starts: readonly number[],
	{ x, top, floor }: { readonly x: (along: number) => number; readonly top: number; readonly floor: number },
): Mark[] {
	const [from, to] = [x(0), x(starts.at(-1) as number)];
	const ceiling =
		bay.ceiling === null ? ({ pen: "narrow", ink: "light", dash: "dashed" } as const) : ({ pen: "medium" } as const);
	return [
		...walls.flatMap((_, wall): Mark[] => {
			const [start, end] = [x(starts[wall] as number), x(starts[wall + 1] as number)];
			const name = String(wall + 1);
			return [
				...(wall === 0
					? []
					: [line("WALLS", at(start, top), at(start, floor), { pen: "narrow", ink: "grey", dash: "chain" } as const)]),
				...(textWidth(name, SIZES.small) + 1 > end - start
					? []
					: [text(at((start + end) / 2, top - 1.6), name, { height: SIZES.small, align: "centre", ink: "grey" })]),
			];
		}),
		line("WALLS", at(from, top), at(from, floor), { pen: "medium" }),
		line("WALLS", at(to, top), at(to, floor), { pen: "medium" }),
		line("WALLS", at(from, top), at(to, top), ceiling),
		line("WALLS", at(from - 3, floor), at(to + 3, floor), { pen: "heavy" }),
	];
}

type FaceBox = (wall: number, from: number, to: number, bottom: number, upTo: number) => Box;

/** An opening; where its sill or head is not given it is left open there. */
function openingItems({ about }: SheetOf, { wall, from, to, sill, head }: Opening, face: FaceBox, top: number): Mark[] {
	if (!(to > from)) return [];
	const box = face(wall, from, to, sill ?? 0, head ?? top);
	const stroke = { pen: "medium" } as const;
	const open = { pen: "narrow", dash: "dashed", ink: "grey" } as const;
	const words = [
		head === null ? "head not given" : `head ${about(head)}`,
		sill === null ? "sill not given" : `sill ${about(sill)}`,
	];
	const fits =
		box.bottom - box.top > 12 && words.every((each) => textWidth(each, SIZES.small) + 2 < box.right - box.left);
	const middle = (box.left + box.right) / 2;
	return [
		rectangle("OPENINGS", box, { fill: "white" }),
		line("OPENINGS", at(box.left, box.top), at(box.left, box.bottom), stroke),
		line("OPENINGS", at(box.right, box.top), at(box.right, box.bottom), stroke),
		line("OPENINGS", at(box.left, box.top), at(box.right, box.top), head === null ? open : stroke),
		line("OPENINGS", at(box.left, box.bottom), at(box.right, box.bottom), sill === null ? open : stroke),
		...(fits
			? [
					text(at(middle, box.top + 6), words[0] as string, { height: SIZES.small, align: "centre", ink: "grey" }),
					text(at(middle, box.bottom - 1.8), words[1] as string, { height: SIZES.small, align: "centre", ink: "grey" }),
				]
			: []),
	];
}

/** Track and brackets at their height, and each curtain whose drop is known where it lies drawn back. */
function trackItems(
	{ plan }: SheetOf,
	chain: WallChain,
	starts: readonly number[],
	x: (along: number) => number,
	y: (height: number) => number,
): Mark[] {
	const { path, height } = plan;
	if (path === null || height === null) return [];
	const along = unrolled(path, chain, starts);
	const curtains = plan.curtains.filter(isDrawn).map(({ stack, drop }) =>
		rectangle(
			"STACK",
			{
				left: x(along(stack.from)),
				right: x(along(stack.to)),
				top: y(height),
				bottom: y(Math.max(0, height - (drop ?? 0))),
			},
			{ stroke: { pen: "narrow", ink: "grey" }, fill: "tint" },
		),
	);
	return [
		...curtains,
		line("TRACK", at(x(along(0)), y(height)), at(x(along(path.length)), y(height)), { pen: "heavy" }),
		...plan.brackets.map(({ wall, fromLeftCorner }) =>
			circle("BRACKETS", at(x((starts[wall] as number) + fromLeftCorner), y(height)), 0.9, { fill: "black" }),
		),
	];
}

const isDrawn = ({ stack, drop }: SheetOf["plan"]["curtains"][number]): boolean =>
	drop !== null && stack.to > stack.from;

/** From stations to places along the unrolled faces: at the foot of the track where it follows a wall, evenly across each bend. */
function unrolled(path: TrackPath, chain: WallChain, starts: readonly number[]): (station: number) => number {
	const knots = path.segments.flatMap((segment: Segment): (readonly [station: number, along: number])[] => {
		if (segment.kind === "bend" || (segment.kind === "straight" && segment.crosses)) return [];
		const foot = (p: Segment["from"]) => (starts[segment.wall] as number) + footOnFace(chain, segment.wall, p).at;
		return [
			[segment.start, foot(segment.from)],
			[segment.start + segment.length, foot(segment.to)],
		];
	});
	return (station) => {
		const after = knots.findIndex(([at]) => at >= station);
		const right = knots[after < 0 ? knots.length - 1 : after];
		const left = knots[(after < 0 ? knots.length : after) - 1] ?? right;
		if (right === undefined || left === undefined) return station;
		const [from, to] = [left[0], right[0]];
		return to - from < 1e-9
			? right[1]
			: left[1] + ((right[1] - left[1]) * (Math.min(Math.max(station, from), to) - from)) / (to - from);
	};
}
