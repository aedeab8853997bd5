import type { WallChain, WallFace } from "./chain.ts";
import { footOfVirtualCorner } from "./corner.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import type { BendRow } from "./share.ts";
import { NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** The bends of a track before their radii are shared out: one per corner between its ends, left to right. Lengths mm. */
export interface BendPlan extends BendRow {
	/** Wall on which the track starts; bend i is at corner first + 1 + i, leg i along wall first + i. */
	readonly first: number;
	/** From each corner back along its left, and on along its right wall face to the foot of the track's virtual corner. */
	readonly footLeft: readonly number[];
	readonly footRight: readonly number[];
	/** Each leg between its virtual corners or the track's end. */
	readonly length: readonly number[];
	/** The least radius the track allows here, whatever the user set. */
	readonly floor: readonly number[];
	readonly set: readonly boolean[];
	readonly sprung: readonly boolean[];
	readonly anySet: boolean;
	readonly anySprung: boolean;
}

/** Lays out legs and bends; where the user set a radius, least and goal are both that radius. */
export function planBends(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
): BendPlan {
	const first = start.wall;
	const slope: number[] = [];
	const footLeft: number[] = [];
	const footRight: number[] = [];
	const least: number[] = [];
	const goal: number[] = [];
	const floor: number[] = [];
	const set: boolean[] = [];
	const sprung: boolean[] = [];
	const length: number[] = [];
	const room: number[] = [];
	let anySet = false;
	let anySprung = false;

	let from = start.at;
	let straight = rule.endStraight;
	for (let corner = first + 1; corner <= end.wall; corner++) {
		const turn = chain.turns[corner] as number;
		const left = projections[corner - 1] as number;
		const right = projections[corner] as number;
		const bend = Math.abs(turn) >= NO_TURN;
		const isSprung = Math.abs(turn) < SLIGHT_TURN;
		const wanted = isSprung ? undefined : rule.setRadii.get(corner);
		const tightest = bend ? (turn > 0 ? rule.leastRadius.internal : rule.leastRadius.external) : 0;
		const backLeft = bend ? footOfVirtualCorner(turn, left, right) : 0;
		const onRight = bend ? footOfVirtualCorner(turn, right, left) : 0;
		const beside = isSprung ? 0 : rule.straightBesideBend;

		slope.push(Math.tan(Math.abs(turn) / 2));
		footLeft.push(backLeft);
		footRight.push(onRight);
		floor.push(tightest);
		least.push(wanted ?? tightest);
		goal.push(wanted ?? (isSprung ? tightest : Math.max(tightest, rule.preferredRadius)));
		set.push(wanted !== undefined);
		sprung.push(isSprung);
		anySet ||= wanted !== undefined;
		anySprung ||= isSprung;

		const span = (chain.walls[corner - 1] as WallFace).length - from - backLeft;
		length.push(span);
		room.push(span - straight - beside);
		from = onRight;
		straight = beside;
	}
	const span = end.at - from;
	length.push(span);
	room.push(span - straight - rule.endStraight);
	return { first, slope, footLeft, footRight, least, goal, floor, set, sprung, anySet, anySprung, length, room };
}
