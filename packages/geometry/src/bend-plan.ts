import type { WallChain, WallFace } from "./chain.ts";
import { footOfVirtualCorner } from "./corner.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import type { BendRow } from "./share.ts";
import { NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** The bends of a track before their radii are shared out: one per corner between its ends, left to right. Lengths mm. */
export interface BendPlan extends BendRow {
	/** Wall on which the track starts; bend i is at corner first + 1 + i, leg i along wall first + i. */
	readonly first: number;
	/** From each corner on along its right wall face to the foot of the track's virtual corner. */
	readonly footRight: readonly number[];
	/** Each leg between its virtual corners or the track's end. */
	readonly length: readonly number[];
	/** The least radius the track allows here, whatever the user set. */
	readonly floor: readonly number[];
	/** Where the user set the radius; empty where none is set. */
	readonly set: ReadonlySet<number>;
	/** Bends that only spring round a slight turn; empty where there are none. */
	readonly sprung: ReadonlySet<number>;
}

const NONE: ReadonlySet<number> = new Set();

/** Lays out legs and bends; where the user set a radius, least and goal are both that radius. */
export function planBends(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
): BendPlan {
	const first = start.wall;
	const bends = end.wall - first;
	const slope = new Array<number>(bends);
	const footRight = new Array<number>(bends);
	const least = new Array<number>(bends);
	const goal = new Array<number>(bends);
	const length = new Array<number>(bends + 1);
	const room = new Array<number>(bends + 1);
	let sprung: Set<number> | null = null;

	let from = start.at;
	let straight = rule.endStraight;
	for (let i = 0; i < bends; i++) {
		const corner = first + 1 + i;
		const turn = chain.turns[corner] as number;
		const halfTangent = chain.halfTangents[corner] as number;
		const left = projections[corner - 1] as number;
		const right = projections[corner] as number;
		const isBend = Math.abs(turn) >= NO_TURN;
		const isSprung = Math.abs(turn) < SLIGHT_TURN;
		const tightest = isBend ? (turn > 0 ? rule.leastRadius.internal : rule.leastRadius.external) : 0;
		const beside = isSprung ? 0 : rule.straightBesideBend;
		if (isSprung) {
			sprung ??= new Set();
			sprung.add(i);
		}

		slope[i] = Math.abs(halfTangent);
		least[i] = tightest;
		goal[i] = isSprung ? tightest : Math.max(tightest, rule.preferredRadius);
		const footLeft = isBend ? footOfVirtualCorner(turn, left, right, halfTangent) : 0;
		const span = (chain.walls[corner - 1] as WallFace).length - from - footLeft;
		length[i] = span;
		room[i] = span - straight - beside;
		from = isBend ? footOfVirtualCorner(turn, right, left, halfTangent) : 0;
		footRight[i] = from;
		straight = beside;
	}
	const span = end.at - from;
	length[bends] = span;
	room[bends] = span - straight - rule.endStraight;
	const plan = { first, slope, footRight, least, goal, floor: least, set: NONE, sprung: sprung ?? NONE, length, room };
	return rule.setRadii.size === 0 ? plan : withSetRadii(plan, rule.setRadii);
}

function withSetRadii(plan: BendPlan, radii: ReadonlyMap<number, number>): BendPlan {
	const set = new Set<number>();
	const least = plan.least.slice();
	const goal = plan.goal.slice();
	for (const [corner, radius] of radii) {
		const bend = corner - plan.first - 1;
		if (bend < 0 || bend >= least.length || plan.sprung.has(bend)) continue;
		set.add(bend);
		least[bend] = radius;
		goal[bend] = radius;
	}
	return { ...plan, least, goal, set };
}
