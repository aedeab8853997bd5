import type { Piece, StockPlan } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { buyStock } from "./stock.ts";

export const NO_STOCK: StockPlan = { buy: [], cuts: [], waste: 0, exact: true };

/** What to buy so that the pieces can be cut, and what stands in the way: pieces longer than any stock, or too short to hang. */
export function planStock(
	bay: Bay,
	{ stock, kerf, joint, bracket }: TrackSystem,
	pieces: readonly Piece[],
	budget: number | undefined,
): { readonly stock: StockPlan; readonly findings: readonly Finding[] } {
	const least = bracket.width;
	const tooShort = pieces.filter(({ cutLength }) => cutLength < least);
	if (tooShort.length > 0)
		return {
			stock: NO_STOCK,
			findings: tooShort.map(({ name, cutLength: length }) => ({
				code: "piece-too-short",
				where: { piece: name },
				figures: { length, least },
				remedies: [],
			})),
		};
	const cuts = pieces.map(({ name, cutLength }) => ({ piece: name, length: cutLength }));
	const answer = buyStock({ cuts, stock, kerf, ...(budget === undefined ? {} : { budget }) });
	if (answer.ok) {
		const findings: Finding[] = answer.plan.exact
			? []
			: [{ code: "stock-not-proved-best", where: {}, figures: { waste: answer.plan.waste }, remedies: [] }];
		return { stock: answer.plan, findings };
	}
	const mayJoin = joint !== null && bay.track.joints !== "auto";
	const remedies: Remedy[] = mayJoin
		? [
				{
					action: "joints-auto",
					figures: {},
					change: [{ op: "replace", path: "/track/joints", value: "auto" }],
				},
			]
		: [];
	return {
		stock: NO_STOCK,
		findings: answer.tooLong.map(({ piece, length }) => ({
			code: "piece-longer-than-stock",
			where: { piece },
			figures: { length, longest: answer.longest, short: length - answer.longest },
			remedies,
		})),
	};
}
