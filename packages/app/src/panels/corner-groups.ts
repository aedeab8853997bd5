import type { BayPlan } from "@baywright/setout";

/** Neighbouring corners that are read together. */
export interface CornerGroup {
	readonly kind: "bend" | "bridge" | "reverse";
	readonly corners: readonly number[];
}

/** The inner corners 1 to `count` in order: those of one bridging bend and the two of a reverse bend together, each other one alone. */
export function cornerGroups({ corners }: Pick<BayPlan, "corners">, count: number): CornerGroup[] {
	const at = new Map(corners.map((set) => [set.corner, set]));
	const groups: CornerGroup[] = [];
	for (let corner = 1; corner <= count; corner++) {
		const set = at.get(corner);
		if (set?.kind === "bridge" && set.corners[0] === corner) {
			groups.push({ kind: "bridge", corners: set.corners });
			corner = set.corners.at(-1) as number;
			// The first half of a reverse bend has no set-back on its right.
		} else if (set?.kind === "reverse" && set.setBack[1] === null && at.get(corner + 1)?.kind === "reverse") {
			groups.push({ kind: "reverse", corners: [corner, corner + 1] });
			corner++;
		} else groups.push({ kind: "bend", corners: [corner] });
	}
	return groups;
}

/** What a group of several corners is called. */
export function groupTitle({ kind, corners }: CornerGroup): string {
	const range = `corners ${corners[0]}–${corners.at(-1)}`;
	return kind === "bridge" ? `one bend, ${range}` : `reverse bend, ${range}`;
}
