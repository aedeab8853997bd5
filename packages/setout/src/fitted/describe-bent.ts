import { formatLength } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import { type CutPiece, SAWN_TO } from "./as-fitted.ts";
import type { BendOfPiece, BentPiece } from "./bent-piece.ts";
import { roundedDown, roundedUp, stepsDown, stepsUp } from "./in-steps.ts";

/** What becomes of a piece that is bent, and known where, but does not fit as it is. */
export function bentAnswer({ verdict, bends, play }: CutPiece, bent: BentPiece, unit: LengthUnit): string {
	if (verdict === "bends-apart" && bent.between !== null) return bendsApartText(bent.between, unit);
	const answer = endsText(bent, play, unit);
	if (verdict !== "long") return answer;
	const sawn = [bent.left, bent.right].filter((over) => over > SAWN_TO);
	const [off] = sawn;
	if (sawn.length !== 1 || off === undefined) return `${answer} Its bends then lie as planned.`;
	const made = bendNames(bends.filter((bend) => bend.made));
	return `${answer} From there to ${made} it is then ${roundedDown(off, unit)} less, as planned.`;
}

/** What to do at either end: what one has too much is of no use at the other. */
export function endsText({ left, right }: Pick<BentPiece, "left" | "right">, play: CutPiece["play"], unit: LengthUnit) {
	const ends = [
		{ end: "left", over: left, give: play.left },
		{ end: "right", over: right, give: play.right },
	];
	const long = ends.filter(({ over }) => over > SAWN_TO);
	const short = ends.filter(({ over }) => over < -SAWN_TO);
	const lost = short.filter(({ over, give }) => stepsUp(-over, unit) > stepsDown(give, unit));
	if (lost.length > 0) {
		const why = lost.map(({ end, over, give }) => {
			const room = stepsDown(give, unit) === 0 ? "no room" : `${roundedDown(give, unit)}`;
			return `${roundedUp(-over, unit)} too short at its ${end} end, which has ${room} to give`;
		});
		return `Bent already, and ${why.join(", and ")}: cut and bend it anew.`;
	}
	const todo = [
		...short.map(({ end, over }) => `let its ${end} end stand ${roundedUp(-over, unit)} further in`),
		...long.map(({ end, over }) => `saw ${roundedDown(over, unit)} off its ${end} end`),
	];
	return `Bent already: ${todo.join(" and ")}${long.length === 1 && short.length === 0 ? " only" : ""}.`;
}

export function bendsApartText({ first, last, by }: NonNullable<BentPiece["between"]>, unit: LengthUnit): string {
	const way = by > 0 ? "further apart" : "nearer together";
	const what = `${asWords(first)} and ${asWords(last)} are ${formatLength(Math.abs(by), unit, { unit: true })} ${way} than is needed now`;
	return `Bent already: ${what}, and sawing does not help. Bring the brackets back to what it was bent for, or cut and bend it anew.`;
}

/** What to tape on a piece that is bent, but not known where: only so it shows which end has too much or too little. */
export function whereBendsLie(bends: readonly BendOfPiece[], needed: number, unit: LengthUnit): string {
	const made = bends.filter((bend) => bend.made);
	const leg = (mm: number) => formatLength(mm, unit, { unit: true });
	const legs = made.map(({ name, middle }, i) => {
		const before = made[i - 1];
		return before === undefined
			? `from its left end to the middle of ${asWords(name)} ${leg(middle)}`
			: `on to that of ${asWords(name)} ${leg(middle - before.middle)}`;
	});
	return `Needed: ${[...legs, `on to its right end ${leg(needed - (made.at(-1)?.middle ?? 0))}`].join(", ")}.`;
}

/** "bend 1, bend 2 and bow 1". */
export function bendNames(bends: readonly BendOfPiece[]): string {
	const names = bends.map(({ name }) => asWords(name));
	return names.length < 2 ? names.join() : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

const asWords = (name: string): string => name.replace("-", " ");
