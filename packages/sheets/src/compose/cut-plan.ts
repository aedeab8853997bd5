import type { Cloth, CurtainSetOut } from "@baywright/setout";

/** A length along the roll (mm) and whose it is, side by side across the roll. */
export interface ClothLength {
	readonly cutDrop: number;
	/** Of it what the curtain needs, turnings and all; the rest is lost to the pattern. */
	readonly needed: number;
	/** Parts of its width, left to right: whose each is, null = left over. */
	readonly parts: readonly { readonly curtain: CurtainSetOut | null; readonly share: number }[];
}

/** A cloth and everything to cut from it, in the order of the roll. */
export interface ClothCuts {
	readonly cloth: Cloth;
	readonly lengths: readonly ClothLength[];
}

/** Widths (of cloth) nearer than this are one. */
const SAME = 1e-6;

/**
 * The lengths to cut, cloth by cloth: a curtain's widths are taken one after the other, and where one ends in the middle of a width, the
 * next of the same cloth and cut drop goes on from there. Curtains whose cut drop is not known are left out.
 */
export function cutPlan(
	curtains: readonly CurtainSetOut[],
	clothOf: (curtain: CurtainSetOut) => Cloth | null,
	turnings: number,
): ClothCuts[] {
	const cloths = new Map<string, { readonly cloth: Cloth; readonly drops: Map<number, CurtainSetOut[]> }>();
	for (const curtain of curtains) {
		const cloth = clothOf(curtain);
		const cutDrop = curtain.cutting?.cutDrop ?? null;
		if (cloth === null || cutDrop === null) continue;
		const known = cloths.get(cloth.id) ?? { cloth, drops: new Map<number, CurtainSetOut[]>() };
		cloths.set(cloth.id, known);
		known.drops.set(cutDrop, [...(known.drops.get(cutDrop) ?? []), curtain]);
	}
	return [...cloths.values()].map(({ cloth, drops }) => ({
		cloth,
		lengths: [...drops].flatMap(([cutDrop, hung]) => lengthsOf(cutDrop, hung, turnings)),
	}));
}

function lengthsOf(cutDrop: number, curtains: readonly CurtainSetOut[], turnings: number): ClothLength[] {
	let taken = 0;
	const spans = curtains.map((curtain) => {
		const from = taken;
		taken += curtain.cutting?.widths ?? 0;
		return { curtain, from, to: taken };
	});
	return Array.from({ length: Math.ceil(taken - SAME) }, (_, i) => {
		const parts = spans
			.map(({ curtain, from, to }) => ({ curtain, share: Math.min(to, i + 1) - Math.max(from, i) }))
			.filter(({ share }) => share > SAME);
		const left = 1 - parts.reduce((sum, { share }) => sum + share, 0);
		const needed = Math.max(...parts.map(({ curtain }) => (curtain.drop ?? 0) + turnings));
		return { cutDrop, needed, parts: left > SAME ? [...parts, { curtain: null, share: left }] : parts };
	});
}
