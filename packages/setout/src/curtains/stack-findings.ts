import type { TrackPath } from "@baywright/geometry";
import type { CurtainSetOut } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import { bentPlace, bentWithin } from "./bent-stretch.ts";
import { MEETS } from "./hangings.ts";
import { partOfCurtain } from "./part-of-curtain.ts";

/** Stacks that lie on a bend, meet one another, or are longer than the track that they have. */
export function stackFindings(path: TrackPath, curtains: readonly CurtainSetOut[]): Finding[] {
	const meeting = curtains.flatMap((left, i) => {
		const right = curtains[i + 1];
		return right === undefined ? [] : meets(left, right, curtains);
	});
	const told = new Set(meeting.flatMap(({ where, figures }) => [where.curtain, figures.other]));
	return [
		...curtains.flatMap((one) => onBend(path, one, curtains)),
		...meeting,
		...curtains.filter(({ curtain }) => !told.has(curtain ?? -1)).flatMap((one) => overhangs(one, curtains)),
	];
}

function onBend(path: TrackPath, curtain: CurtainSetOut, curtains: readonly CurtainSetOut[]): Finding[] {
	const { stack, side } = curtain;
	const [nearest] = bentWithin(path, stack, side === "left" ? stack.from : stack.to);
	if (nearest === undefined) return [];
	const { where, figures } = bentPlace(nearest);
	return [
		{
			code: "stack-on-bend",
			where: { ...placeOf(curtain), station: (stack.from + stack.to) / 2, ...where },
			figures: { ...partOfCurtain(curtain, curtains), takes: stack.to - stack.from, ...stack, ...figures },
			remedies: [],
		},
	];
}

/** Two stacks that come together as the curtains open, or that stand side by side. */
function meets(left: CurtainSetOut, right: CurtainSetOut, curtains: readonly CurtainSetOut[]): Finding[] {
	const face = left.side === "left" && right.side === "right";
	const back = left.side === "right" && right.side === "left";
	const clear = face
		? right.to - right.stackWanted - (left.from + left.stackWanted)
		: back
			? right.from - left.to
			: Number.POSITIVE_INFINITY;
	if (clear > MEETS) return [];
	const takes = left.stackWanted + right.stackWanted;
	const station = face ? (left.to + right.from) / 2 : left.to;
	return [
		{
			code: "stacks-meet",
			where: { curtain: left.curtain ?? 0, station },
			figures: {
				...partOfCurtain(left, curtains),
				other: right.curtain ?? 0,
				takes,
				at: station,
				...(face ? { has: right.to - left.from } : {}),
			},
			remedies: [],
		},
	];
}

function overhangs(curtain: CurtainSetOut, curtains: readonly CurtainSetOut[]): Finding[] {
	const { from, to, stackWanted } = curtain;
	const by = stackWanted - (to - from);
	if (by <= MEETS) return [];
	return [
		{
			code: "stack-overhangs",
			where: { ...placeOf(curtain), station: (from + to) / 2 },
			figures: { ...partOfCurtain(curtain, curtains), takes: stackWanted, has: to - from, by },
			remedies: [],
		},
	];
}

const placeOf = ({ curtain, side }: CurtainSetOut) => ({ curtain: curtain ?? 0, end: side });
