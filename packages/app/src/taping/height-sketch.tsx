import { useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { heightsOf } from "../elevation/heights.ts";
import { alongOf, unroll } from "../elevation/unrolled.ts";
import { Arrowed, type Spot, through } from "./arrowed.tsx";
import type { HeightOf } from "./heights-to-take.ts";

const WIDTH = 360;
const LEAST_HEIGHT = 118;
const MOST_HEIGHT = 168;
const MARGIN_X = 24;
const MARGIN_Y = 16;

interface Props {
	/** Null: all walls, with nothing picked out. */
	readonly of: HeightOf | null;
	readonly text: string;
	readonly label: string;
}

/** The walls flat beside each other as seen from the room, with one height or measure picked out; what stands on one wall with that wall alone. */
export function HeightSketch({ of, text, label }: Props) {
	const bay = useBay((each) => each);
	const chain = usePlanPart((plan) => plan.chain);
	const planned = usePlan((plan) => plan.height);
	if (chain === null) return null;
	const flat = unroll(chain);
	const heights = heightsOf(bay, planned);
	const thing =
		of === null
			? undefined
			: "opening" in of
				? bay.openings[of.opening]
				: "obstacle" in of
					? bay.obstacles[of.obstacle]
					: undefined;
	const alone = thing === undefined ? undefined : flat.walls[thing.wall];
	const [first, last] = alone === undefined ? [0, flat.length] : [alone.from, alone.to];
	const top = heights.ceiling.mm;
	const across = (WIDTH - 2 * MARGIN_X) / Math.max(1, last - first);
	const height = Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, top * across + 2 * MARGIN_Y));
	const scale = Math.min(across, (height - 2 * MARGIN_Y) / top);
	const at = (along: number, mm: number): Spot => [
		WIDTH / 2 + (along - (first + last) / 2) * scale,
		height / 2 + (top / 2 - mm) * scale,
	];
	const isShown = ({ wall }: { readonly wall: number }) => alone === undefined || wall === thing?.wall;
	const box = (
		{ wall, from, to }: { readonly wall: number; readonly from: number; readonly to: number },
		low: number,
		high: number,
	) => {
		const [left, right] = [alongOf(flat, wall, from), alongOf(flat, wall, to)];
		return `${through([at(left, low), at(left, high), at(right, high), at(right, low)])}Z`;
	};
	const openings = bay.openings.map((each, i) => ({ each, span: heights.openings[i], hot: each === thing }));
	const obstacles = bay.obstacles.map((each, i) => ({ each, span: heights.obstacles[i], hot: each === thing }));
	const things = [
		...openings.map((it) => ({ ...it, className: "sketch-opening" })),
		...obstacles.map((it) => ({ ...it, className: "sketch-obstacle" })),
	].filter(({ each }) => isShown(each));
	const middle =
		thing === undefined ? first + (last - first) / 2 : alongOf(flat, thing.wall, (thing.from + thing.to) / 2);
	const edge = (which: "from" | "to") => (thing === undefined ? first : alongOf(flat, thing.wall, thing[which]));
	const tape = of === null ? null : tapeOf(of);

	function tapeOf(which: HeightOf): readonly [Spot, Spot] | null {
		const up = (mm: number) => [at(middle, 0), at(middle, mm)] as const;
		if (which.kind === "ceiling") return up(heights.ceiling.mm);
		if (which.kind === "track") return up(heights.track.mm);
		if ("opening" in which) {
			const span = heights.openings[which.opening];
			return span === undefined ? null : up(which.kind === "sill" ? span.bottom.mm : span.top.mm);
		}
		const span = heights.obstacles[which.obstacle];
		if (span === undefined || thing === undefined) return null;
		const half = (span.bottom.mm + span.top.mm) / 2;
		if (which.kind === "from") return [at(first, half), at(edge("from"), half)];
		if (which.kind === "width") {
			const over = Math.min(top, span.top.mm + 16 / scale);
			return [at(edge("from"), over), at(edge("to"), over)];
		}
		if (which.kind === "depth") return null;
		return up(which.kind === "bottom" ? span.bottom.mm : span.top.mm);
	}

	return (
		<svg className="sketch" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={label}>
			<path d={`${through([at(first, 0), at(first, top), at(last, top), at(last, 0)])}Z`} className="sketch-room" />
			<path
				d={flat.corners
					.filter((corner) => corner.at > first && corner.at < last)
					.map((corner) => through([at(corner.at, 0), at(corner.at, top)]))
					.join("")}
				className="sketch-reach"
			/>
			{things.map(({ each, span, hot, className }, i) => (
				<path
					// biome-ignore lint/suspicious/noArrayIndexKey: a thing is known by its place
					key={i}
					d={box(each, span?.bottom.mm ?? 0, span?.top.mm ?? top)}
					className={hot ? `${className} sketch-chosen` : className}
				/>
			))}
			<path
				d={[-2, 2]
					.map((off) =>
						through([at(first, heights.track.mm), at(last, heights.track.mm)].map(([x, y]): Spot => [x, y + off])),
					)
					.join("")}
				className={of?.kind === "track" ? "sketch-track sketch-chosen" : "sketch-track"}
			/>
			<path
				d={through([at(first, 0), at(last, 0)])}
				className={of?.kind === "ceiling" ? "sketch-face" : "sketch-floor"}
			/>
			{of?.kind === "ceiling" ? <path d={through([at(first, top), at(last, top)])} className="sketch-hot" /> : null}
			{tape === null ? null : <Arrowed from={tape[0]} to={tape[1]} text={text} />}
		</svg>
	);
}
