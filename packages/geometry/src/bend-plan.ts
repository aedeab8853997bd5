import type { WallChain, WallFace } from "./chain.ts";
import { type Elbow, elbowBetween } from "./elbow.ts";
import { stretchOff } from "./face.ts";
import type { FitFault, FitRule, TrackEnds } from "./fit.ts";
import { radiusLimits } from "./radius-limits.ts";
import type { BendRow, Taking } from "./share.ts";
import { NEARLY_TANGENT, NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** The bends of a track before their radii are shared out, left to right. Lengths mm of track, radii on the centre line. */
export interface BendPlan extends BendRow {
	readonly elbows: readonly Elbow[];
	/** Wall of each leg: one more than there are bends. */
	readonly legs: readonly number[];
	/** Each leg between its virtual corners or the track's end. */
	readonly length: readonly number[];
	/** The least radius possible here, whatever the user set, and the greatest that keeps clear of the corner. */
	readonly floor: readonly number[];
	readonly ceiling: readonly number[];
	/** Where the user set the radius; empty where none is set. */
	readonly set: ReadonlySet<number>;
	/** Bends that only spring round a slight turn; empty where there are none. */
	readonly sprung: ReadonlySet<number>;
}

const NONE: ReadonlySet<number> = new Set();
const ALL_STRAIGHT: ReadonlyMap<number, Taking> = new Map();

/**
 * Lays out legs and bends; where the user set a radius, least and goal are both that radius. One bend a corner, or the
 * ones given. A fault where two legs do not meet, or where no bend of the least radius keeps clear of a corner.
 */
export function planBends(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	bridged: readonly Elbow[] | null,
): BendPlan | FitFault[] {
	const bends = bridged === null ? end.wall - start.wall : bridged.length;
	const elbows = new Array<Elbow>(bends);
	const legs = new Array<number>(bends + 1);
	const slope = new Array<number>(bends);
	const floor = new Array<number>(bends);
	// Apart from the floor only where a bridging has shown that there is room for more.
	const least = bridged === null ? floor : new Array<number>(bends);
	const goal = new Array<number>(bends);
	const ceiling = new Array<number>(bends);
	const length = new Array<number>(bends + 1);
	const room = new Array<number>(bends + 1);
	let sprung: Set<number> | null = null;
	let curved: Map<number, Taking> | null = null;
	let faults: FitFault[] | null = null;

	let wall = start.wall;
	let from = start.at;
	let straight = rule.endStraight;
	for (let i = 0; i < bends; i++) {
		const elbow = bridged?.[i] ?? elbowBetween(chain, projections, start.wall + 1 + i, start.wall + 1 + i);
		if (elbow === null) {
			faults ??= [];
			faults.push({ kind: "legs-do-not-meet", corner: start.wall + 1 + i });
			wall = start.wall + 1 + i;
			from = 0;
			continue;
		}
		const { first, last, turn, reverse } = elbow;
		const isBend = reverse === null && Math.abs(turn) >= NO_TURN;
		const isSprung = reverse === null && Math.abs(turn) < SLIGHT_TURN;
		const beside = isSprung ? 0 : rule.straightBesideBend;
		const tightest = isBend ? (turn > 0 ? rule.leastRadius.internal : rule.leastRadius.external) : 0;
		let low = reverse === null ? tightest : reverse.before.radius;
		let high = reverse === null ? Number.POSITIVE_INFINITY : low;
		const unseen = elbow.feet !== null && Math.abs(turn) < NEARLY_TANGENT;
		if (isBend && !unseen && (turn < 0 || first !== last || elbow.feet !== null || elbow.limits !== null)) {
			const limits = elbow.limits ?? radiusLimits(chain, projections, elbow, rule.clearance);
			low = Math.max(tightest, limits.least);
			high = limits.greatest;
			if (high < low) {
				faults ??= [];
				faults.push({
					kind: "no-room-round-corner",
					corner: first,
					last,
					radius: low,
					greatest: high,
					turn: elbow.turn,
				});
			}
		}
		if (unseen && isBend && elbow.feet?.(low) === null) {
			faults ??= [];
			faults.push({ kind: "legs-do-not-meet", corner: first });
		}
		if (isSprung) {
			sprung ??= new Set();
			sprung.add(i);
		}
		if (elbow.feet !== null && isBend) {
			curved ??= new Map();
			curved.set(i, takingOf(chain, projections, elbow));
		}

		elbows[i] = elbow;
		legs[i] = wall;
		slope[i] = elbow.slope;
		floor[i] = low;
		if (bridged !== null) least[i] = Math.max(low, elbow.limits?.sure ?? 0);
		ceiling[i] = high;
		goal[i] = isSprung ? low : goalOf(elbow, low, high, rule.preferredRadius);
		const span = (elbow.footLeft - from) * stretch(chain, projections, wall);
		length[i] = span;
		room[i] = span - straight - beside;
		wall = elbow.right;
		from = elbow.footRight;
		straight = beside;
	}
	if (faults !== null) return faults;
	const span = (end.at - from) * stretch(chain, projections, wall);
	legs[bends] = wall;
	length[bends] = span;
	room[bends] = span - straight - rule.endStraight;
	const plan: BendPlan = {
		elbows,
		legs,
		slope,
		least,
		goal,
		curved: curved ?? ALL_STRAIGHT,
		floor,
		ceiling,
		set: NONE,
		sprung: sprung ?? NONE,
		length,
		room,
	};
	return rule.setRadii.size === 0 ? plan : withSetRadii(plan, rule.setRadii);
}

/** In a corridor as wide as it lets the bend be; past facets as near to them as it may; else the preferred radius. */
function goalOf({ first, last, limits }: Elbow, low: number, high: number, preferred: number): number {
	if (limits !== null) return high;
	return first === last ? Math.max(low, Math.min(preferred, high)) : low;
}

const stretch = (chain: WallChain, projections: readonly number[], wall: number): number =>
	(chain.walls[wall] as WallFace).bow === null ? 1 : stretchOff(chain, wall, projections[wall] as number);

/** Track that a bend beside a bowed wall takes from its two legs. */
function takingOf(chain: WallChain, projections: readonly number[], elbow: Elbow): Taking {
	const left = stretch(chain, projections, elbow.left);
	const right = stretch(chain, projections, elbow.right);
	return (radius) => {
		const feet = elbow.feet?.(radius) ?? null;
		return feet === null ? null : [(elbow.footLeft - feet.left) * left, (feet.right - elbow.footRight) * right];
	};
}

function withSetRadii(plan: BendPlan, radii: ReadonlyMap<number, number>): BendPlan {
	const set = new Set<number>();
	const least = plan.least.slice();
	const goal = plan.goal.slice();
	plan.elbows.forEach(({ first, last, reverse }, bend) => {
		if (plan.sprung.has(bend) || reverse !== null) return;
		for (let corner = first; corner <= last; corner++) {
			const radius = radii.get(corner);
			if (radius === undefined) continue;
			set.add(bend);
			least[bend] = radius;
			goal[bend] = radius;
			return;
		}
	});
	return { ...plan, least, goal, set };
}
