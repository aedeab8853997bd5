import type { TrackPath } from "@baywright/geometry";
import type { Piece } from "../bay-plan.ts";
import type { Fitted } from "../job/fitted-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { readBendRecord } from "./bend-record.ts";
import { bendsToMake, bowsToMake, onPiece } from "./bends-to-make.ts";

/** A bend of a piece. Lengths mm from the piece's left cut end. */
export interface BendOfPiece {
	/** "bend-1", "bow-1". */
	readonly name: string;
	/** Where the plan has its middle now. */
	readonly middle: number;
	/** Ticked as made. */
	readonly made: boolean;
	/** Where its middle was made; null where that is not known. */
	readonly madeAt: number | null;
}

/** How a piece that is bent already stands to the plan: what it has more than is needed, less under 0. Lengths mm. */
export interface BentPiece {
	/** From its left cut end to the first bend made, and from the last one to its right cut end. */
	readonly left: number;
	readonly right: number;
	/** The two bends next to each other that are furthest from their distance; null where only one is made. */
	readonly between: { readonly first: string; readonly last: string; readonly by: number } | null;
}

/** The bends of one piece, from its left end. */
export function bendsOfPiece(
	{ name: piece }: Piece,
	pieces: readonly Piece[],
	path: TrackPath,
	system: TrackSystem,
	{ done }: Fitted,
): BendOfPiece[] {
	const records = done.flatMap((each) => readBendRecord(each) ?? []);
	const all = [
		...bendsToMake(path).map((segment, i) => ({ segment, name: `bend-${i + 1}` })),
		...bowsToMake(path).map((segment, i) => ({ segment, name: `bow-${i + 1}` })),
	];
	return all
		.flatMap(({ segment, name }): BendOfPiece[] => {
			const on = onPiece(segment, pieces, system);
			if (on?.piece !== piece) return [];
			const made = done.includes(name);
			const record = made ? records.find((each) => each.name === name) : undefined;
			return [{ name, middle: on.middle, made, madeAt: record?.on?.piece === piece ? record.on.middle : null }];
		})
		.sort((a, b) => a.middle - b.middle);
}

/** Null where nothing of it is bent, or not known where. */
export function bentPiece(bends: readonly BendOfPiece[], cut: number, needed: number): BentPiece | null {
	const made = bends.flatMap(({ name, middle, made, madeAt }) => (made ? [{ name, middle, madeAt }] : []));
	const known = made.flatMap(({ madeAt, ...bend }) => (madeAt === null ? [] : [{ ...bend, madeAt }]));
	const [first, last] = [known[0], known.at(-1)];
	if (first === undefined || last === undefined || known.length < made.length) return null;
	const gaps = known.slice(1).map((bend, i) => {
		const before = known[i] as typeof bend;
		return {
			first: before.name,
			last: bend.name,
			by: bend.madeAt - before.madeAt - (bend.middle - before.middle),
		};
	});
	const [worst] = gaps.sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
	return {
		left: first.madeAt - first.middle,
		right: cut - last.madeAt - (needed - last.middle),
		between: worst ?? null,
	};
}
