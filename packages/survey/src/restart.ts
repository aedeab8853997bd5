import { type Outcome, type Point, step } from "@baywright/geometry";
import { type Adjusted, adjust } from "./adjust.ts";
import type { Network, NetworkFault } from "./network.ts";

/** The bay opened or closed, by a factor on all its turns: places to start from besides the drawing. */
const FACTORS = [0.8, 1.2, 0.5];

/**
 * A sum of squares so many times the greatest that closes is a wrong reading, or a bay at rest in the wrong place; both are told apart by
 * looking elsewhere, which takes no harm from a wrong reading but time.
 */
const OUT_OF_ALL_REASON = 5;

/**
 * A rest elsewhere is taken only for so much less of a sum: where it is as good but for rounding, what nobody has read lies as it was bent to start
 * from, and the bay would lie otherwise each time it is settled.
 */
const WORTH_MOVING = 0.99;

/**
 * Settles a bay's network. One that is out of all reason may only have come to rest in the wrong place, with a corner folded over because the
 * bay was drawn too open or too closed; so it is settled again from there, and the best is kept.
 */
export function adjustBay(network: Network, frameWall: number): Outcome<Adjusted, NetworkFault> {
	let best = adjust(network);
	for (const factor of FACTORS) {
		if (best.ok ? isLikely(best.value) : !isRestless(best.faults)) return best;
		const next = adjust(bent(network, frameWall, factor));
		if (next.ok && (!best.ok || next.value.sumOfSquares < WORTH_MOVING * best.value.sumOfSquares)) best = next;
	}
	return best;
}

const isLikely = ({ sumOfSquares, greatestSum }: Adjusted): boolean =>
	sumOfSquares <= OUT_OF_ALL_REASON * (greatestSum ?? 1);

const isRestless = (faults: readonly NetworkFault[]): boolean => faults.some(({ kind }) => kind === "restless");

/** The chain with all its turns times a factor, the frame wall where it was. */
function bent(network: Network, frameWall: number, factor: number): Network {
	const { points } = network;
	const places: Point[] = points.map(({ x, y }) => ({ x, y }));
	const swing = (corner: number, onwards: 1 | -1) => {
		const at = points[corner] as Point;
		const [before, after] = [points[corner - onwards] as Point, points[corner + onwards] as Point];
		const into = { x: at.x - before.x, y: at.y - before.y };
		const out = { x: after.x - at.x, y: after.y - at.y };
		const turn = Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y) * factor;
		const here = places[corner] as Point;
		const last = places[corner - onwards] as Point;
		const heading = Math.atan2(here.y - last.y, here.x - last.x) + turn;
		places[corner + onwards] = step(here, Math.cos(heading), Math.sin(heading), Math.hypot(out.x, out.y));
	};
	for (let corner = frameWall + 1; corner < points.length - 1; corner++) swing(corner, 1);
	for (let corner = frameWall; corner > 0; corner--) swing(corner, -1);
	return { ...network, points: points.map(({ goes }, i) => ({ ...(places[i] as Point), goes })) };
}
