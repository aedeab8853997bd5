import type { Surface } from "../fixings/fixing.ts";
import type { Bay } from "../job/bay-schema.ts";
import { type Counted, piece, type ToCount } from "./counted.ts";
import type { PartKind, PartSource } from "./part.ts";

/** Screws of a tensioner (common practice, no source). */
const TENSIONER_SCREWS = 2;

/** What goes into one hole of each surface: board fixings have their own screw, and of an unknown wall only a trial hole tells. */
const IN_EACH_HOLE: Readonly<Record<Surface, readonly PartKind[]>> = {
	batten: ["screw"],
	timber: ["screw"],
	joists: ["screw"],
	masonry: ["screw", "plug"],
	concrete: ["screw", "plug"],
	plasterboard: ["board-fixing"],
	unknown: ["fixing-by-trial"],
};

interface Tally {
	holes: number;
	readonly brackets: number[];
	tensioner: number;
}

/** Screws, plugs and other fixings: as many a bracket as the system says, and the tensioner's. */
export function fixingParts(bay: Bay, { system, fixings, cords }: ToCount): Counted[] {
	const tallies = new Map<PartKind, Tally>();
	const add = (into: Surface, holes: number, bracket: number | null) => {
		if (holes === 0) return;
		for (const kind of IN_EACH_HOLE[into]) {
			const tally = tallies.get(kind) ?? { holes: 0, brackets: [], tensioner: 0 };
			tally.holes += holes;
			if (bracket === null) tally.tensioner += holes;
			else tally.brackets.push(bracket);
			tallies.set(kind, tally);
		}
	};
	fixings.forEach(({ into }, index) => {
		add(into, system.bracket.screws, index);
	});
	if (cords !== null) add(bay.walls[cords.at.wall]?.surface ?? "unknown", TENSIONER_SCREWS, null);
	return KINDS.flatMap((kind): Counted[] => {
		const tally = tallies.get(kind);
		if (tally === undefined) return [];
		const { holes, brackets, tensioner } = tally;
		const from: PartSource[] = [
			...(brackets.length > 0 ? [{ of: "brackets", indexes: brackets } as const] : []),
			...(tensioner > 0 ? [{ of: "cord" } as const] : []),
		];
		return [piece(kind, null, holes, from, { each: system.bracket.screws, tensioner })];
	});
}

const KINDS: readonly PartKind[] = ["screw", "plug", "board-fixing", "fixing-by-trial"];
