import type { BayPlan, Mark } from "./bay-plan.ts";

/** What a bend mark belongs to. */
export interface Bent {
	/** On the centre line, mm. */
	readonly radius: number;
	/** The corners that the bend goes round; none on a bow. */
	readonly corners: readonly number[];
	/** The bowed wall that the bow runs along; null at a bend. */
	readonly wall: number | null;
}

/** The bend or bow that a mark belongs to; null for brackets and joints. */
export function bentAt(
	{ kind, of, bow }: Pick<Mark, "kind" | "of" | "bow">,
	plan: Pick<BayPlan, "corners" | "bows">,
): Bent | null {
	if (kind === "bracket" || kind === "joint") return null;
	if (bow) return { radius: plan.bows.find(({ wall }) => wall === of)?.radius ?? 0, corners: [], wall: of };
	const set = plan.corners.find(({ corner }) => corner === of);
	return { radius: set?.radius ?? 0, corners: set?.corners ?? [of], wall: null };
}
