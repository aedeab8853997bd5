import type { Piece, StockPlan } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { buyStock, type StockAnswer } from "./stock.ts";

export const NO_STOCK: StockPlan = { buy: [], cuts: [], waste: 0, exact: true };

/**
 * What to buy so that the pieces can be cut, and what stands in the way: pieces longer than any stock, or too short to hang.
 * `joinedAnew` gives the pieces that there would be with joints left to the plan.
 */
export function planStock(
	bay: Bay,
	{ stock, kerf, joint, bracket }: TrackSystem,
	pieces: readonly Piece[],
	budget: number | undefined,
	joinedAnew: () => readonly Piece[],
): { readonly stock: StockPlan; readonly findings: readonly Finding[] } {
	const longest = Math.max(...stock.map(({ length }) => length));
	const tooShort = pieces.filter(({ cutLength }) => cutLength < bracket.width);
	const faulty = tooShort.length > 0 || pieces.some(({ cutLength }) => cutLength > longest);
	const curable =
		faulty &&
		joint !== null &&
		bay.track.joints !== "auto" &&
		joinedAnew().every(({ cutLength }) => cutLength >= bracket.width && cutLength <= longest);
	const remedies = curable ? [placeJointsAnew] : [];
	const cuts = pieces
		.filter((piece) => !tooShort.includes(piece))
		.map(({ name, cutLength }) => ({ piece: name, length: cutLength }));
	const answer = buyStock({ cuts, stock, kerf, ...(budget === undefined ? {} : { budget }) });
	const findings = [
		...tooShort.map(
			({ name, cutLength: length }): Finding => ({
				code: "piece-too-short",
				where: { piece: name },
				figures: { length, least: bracket.width },
				remedies,
			}),
		),
		...answerFindings(answer, remedies),
	];
	return { stock: answer.ok ? answer.plan : NO_STOCK, findings };
}

const placeJointsAnew: Remedy = {
	action: "joints-auto",
	figures: {},
	change: [{ op: "replace", path: "/track/joints", value: "auto" }],
};

function answerFindings(answer: StockAnswer, remedies: readonly Remedy[]): Finding[] {
	if (!answer.ok)
		return answer.tooLong.map(({ piece, length }) => ({
			code: "piece-longer-than-stock",
			where: { piece },
			figures: { length, longest: answer.longest, short: length - answer.longest },
			remedies,
		}));
	if (answer.plan.exact) return [];
	return [{ code: "stock-not-proved-best", where: {}, figures: { waste: answer.plan.waste }, remedies: [] }];
}
