import type { Bracket, BracketLoad, CurtainSetOut } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import type { TrackSystem } from "../library/system.ts";
import { standingOf, withoutMass } from "./bay-loads.ts";

/**
 * Less lift than this (kg) is not worth a word: nearly every curtain drawn back at an end lifts the next bracket by some hundred grams, which any
 * bracket that grips the track holds (common practice, no source). The table of loads shows it all the same.
 */
const LEAST_LIFT = 1;

/** Loads (kg) that differ by less are alike: which of two brackets is told must not hang on rounding. */
const ALIKE = 1e-6;

/** Has the bracket to hold the track down by an amount that is worth telling? */
const isLifted = ({ least }: BracketLoad): boolean => least <= -LEAST_LIFT + ALIKE;

/** What is told of loads: brackets over the limit, by the worst of them; where the track lifts; and what was not, or could not be, checked. */
export function loadFindings(
	{ name, bracket: { maxLoad } }: TrackSystem,
	brackets: readonly Bracket[],
	curtains: readonly CurtainSetOut[],
	loads: readonly BracketLoad[],
): Finding[] {
	const unknown = massNotKnown(curtains);
	const lifted = liftFinding(brackets, loads.filter(isLifted));
	if (maxLoad !== null)
		return [
			...overloaded(
				brackets,
				loads.filter((load) => standingOf(load) === "over"),
				maxLoad,
				name,
			),
			...unknown,
			...lifted,
		];
	const heaviest = mostOf(loads, ({ greatest }) => greatest);
	return [...(heaviest === undefined ? [] : [notChecked(brackets, heaviest, name)]), ...unknown, ...lifted];
}

/** The bracket that is furthest over the limit, and how many more are over it: they are cured together. */
function overloaded(
	brackets: readonly Bracket[],
	over: readonly BracketLoad[],
	limit: number,
	system: string,
): Finding[] {
	const worst = mostOf(over, ({ greatest }) => greatest);
	if (worst === undefined) return [];
	const figures = { load: worst.greatest, limit, others: over.length - 1, system };
	return [{ code: "bracket-overloaded", where: placeOf(brackets, worst), figures, remedies: [] }];
}

function liftFinding(brackets: readonly Bracket[], lifted: readonly BracketLoad[]): Finding[] {
	const worst = mostOf(lifted, ({ least }) => -least);
	if (worst === undefined) return [];
	const figures = { lift: -worst.least, others: lifted.length - 1 };
	return [{ code: "bracket-lifts", where: placeOf(brackets, worst), figures, remedies: [] }];
}

const notChecked = (brackets: readonly Bracket[], heaviest: BracketLoad, system: string): Finding => ({
	code: "load-not-checked",
	where: placeOf(brackets, heaviest),
	figures: { load: heaviest.greatest, system },
	remedies: [],
});

/** Of how many of the job's curtains the mass is not known, and of how many of these for want of what. A pair is one. */
function massNotKnown(curtains: readonly CurtainSetOut[]): Finding[] {
	const unknown = ofEach(withoutMass(curtains));
	if (unknown.length === 0) return [];
	const want = { cloth: 0, drop: 0, mass: 0 };
	for (const { cloth, cutting } of unknown)
		want[cloth === null ? "cloth" : (cutting?.finishedDrop ?? null) === null ? "drop" : "mass"]++;
	const of = ofEach(curtains).length;
	const figures = { count: unknown.length, of, ...want };
	return [{ code: "mass-not-known", where: { field: "curtains" }, figures, remedies: [] }];
}

/** One hanging of each curtain that the job gives. */
const ofEach = (curtains: readonly CurtainSetOut[]): CurtainSetOut[] =>
	curtains.filter(
		({ curtain }, i) => curtain !== null && curtains.findIndex((other) => other.curtain === curtain) === i,
	);

function placeOf(brackets: readonly Bracket[], load: BracketLoad): Finding["where"] {
	const { station, wall } = brackets[load.bracket] as Bracket;
	return { bracket: load.bracket, station, wall };
}

/** The first of those with the most of something. */
function mostOf(loads: readonly BracketLoad[], amount: (load: BracketLoad) => number): BracketLoad | undefined {
	return loads.reduce<BracketLoad | undefined>(
		(most, load) => (most === undefined || amount(load) > amount(most) + ALIKE ? load : most),
		undefined,
	);
}
