import { applyPatch, type Operation } from "rfc6902";
import { severityOf } from "../finding/codes.ts";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";

/** Tries changes to a bay on its plan before they are offered as remedies. */
export interface Trial {
	/** Does the bay, so changed, plan without this finding and without any refusal that it does not have now? */
	readonly cures: (finding: Finding, change: readonly Operation[]) => boolean;
	/** Does the bay, so changed, plan without any refusal at all? */
	readonly clears: (change: readonly Operation[]) => boolean;
	/** How many warnings the plan of the bay so changed has. */
	readonly warnings: (change: readonly Operation[]) => number;
	/** Takes work off what is left, in walls planned, for a search that reckons before it tries; false where none is left. */
	readonly spend: (walls: number) => boolean;
}

/**
 * Work that all trials of one plan may take, in walls planned, so that a plan refused at a hundred places is no slower under the hand than
 * one refused at three. What is not tried is not offered.
 */
const USUAL_WORK = 1500;

/** What a trial takes besides its walls, and how many times as much on the smoothest line, which is a search of its own. */
const EACH_TRIAL = 2;
const TIMES_SMOOTHEST = 6;

/** What a trial takes besides where it has the bay settled anew. */
const TO_SETTLE = 200;

/** `findings` are those of the bay as it is; `plan` gives the findings of a changed one, without remedies. */
export function trialOn(
	bay: Bay,
	findings: readonly Finding[],
	plan: (bay: Bay) => readonly Finding[],
	work = USUAL_WORK,
): Trial {
	const now = new Set(findings.filter(isRefusal).map(nameOf));
	const known = new Map<string, readonly Finding[] | null>();
	let left = work;
	const after = (change: readonly Operation[]): readonly Finding[] | null => {
		const key = JSON.stringify(change);
		const before = known.get(key);
		if (before !== undefined) return before;
		if (left <= 0) return null;
		const changed = changedBay(bay, change);
		left -= changed === null ? EACH_TRIAL : workOf(changed) + (isSettledAnew(bay, change) ? TO_SETTLE : 0);
		const found = changed === null ? null : plan(changed).map((one) => asNumberedBefore(one, change));
		known.set(key, found);
		return found;
	};
	return {
		cures: (finding, change) => {
			const found = after(change);
			const cured = nameOf(finding);
			const isBad = (one: Finding) => nameOf(one) === cured || (isRefusal(one) && !now.has(nameOf(one)));
			return found !== null && !found.some(isBad);
		},
		clears: (change) => after(change)?.some(isRefusal) === false,
		warnings: (change) => after(change)?.filter(isWarning).length ?? 0,
		spend: (walls) => {
			left -= walls;
			return left > 0;
		},
	};
}

const workOf = ({ walls, track }: Bay): number =>
	(walls.length + EACH_TRIAL) * (track.follow === "smoothest" ? TIMES_SMOOTHEST : 1);

/** Spans between brackets reach as far as the brackets stand off their walls. */
function isSettledAnew({ fitted }: Bay, change: readonly Operation[]): boolean {
	const parts =
		fitted.spans.length > 0 ? ["/readings", "/fitted", "/track/projection", "/track/system", "/walls"] : ["/readings"];
	return change.some(({ path }) => parts.some((part) => path.startsWith(part)));
}

export const isRefusal = ({ code }: Finding): boolean => severityOf(code) === "refusal";
export const isWarning = ({ code }: Finding): boolean => severityOf(code) === "warning";

/** A finding with its curtain as it was numbered before a change took one out: what is told of the next one is not the trouble of the one removed. */
function asNumberedBefore(finding: Finding, change: readonly Operation[]): Finding {
	const { curtain } = finding.where;
	const removed = change.flatMap(({ op, path }) => (op === "remove" ? (CURTAIN_PATH.exec(path)?.slice(1) ?? []) : []));
	if (curtain === undefined || removed.length === 0) return finding;
	return { ...finding, where: { ...finding.where, curtain: removed.map(Number).reduceRight(past, curtain) } };
}

const CURTAIN_PATH = /^\/curtains\/(\d+)$/;

const past = (curtain: number, removed: number): number => (curtain >= removed ? curtain + 1 : curtain);

/** The same trouble at the same place has the same name, whatever its figures; pieces are all one, for they are lettered afresh. */
function nameOf({ code, where, figures }: Finding): string {
	const { wall, corner, end, obstacle, curtain, opening, field } = where;
	// Told once, by the worst.
	if (code === "bracket-overloaded") return code;
	// Told once for all curtains and walls.
	if (code === "curtain-touches-behind") return `${code} ${figures.what} ${obstacle} ${figures.own}`;
	// A curtain's trouble is the same on another bend or at another wall.
	if (curtain !== undefined) return `${code} ${end} ${obstacle} ${opening} ${field} of ${curtain}`;
	return `${code} ${wall} ${corner} ${end} ${obstacle}`;
}

/** The bay with edits made to a copy of what remedies change: its track, walls and curtains, and what was taped. Null where one cannot be made. */
function changedBay(bay: Bay, change: readonly Operation[]): Bay | null {
	const { track, walls, curtains, readings, fitted } = bay;
	const touches = (part: string) => change.some(({ path }) => path.startsWith(part));
	const copy = {
		...bay,
		track: {
			...track,
			bends: track.bends.map((bend) => ({ ...bend })),
			brackets: track.brackets.map((bracket) => ({ ...bracket })),
			joints: typeof track.joints === "string" ? track.joints : [...track.joints],
		},
		walls: touches("/walls") ? walls.map((wall) => ({ ...wall })) : walls,
		curtains: touches("/curtains") ? curtains.map((curtain) => ({ ...curtain })) : curtains,
		// What is not changed keeps its identity: the survey is known by it.
		readings: touches("/readings") ? [...readings] : readings,
		fitted: touches("/fitted") ? { ...fitted, spans: [...fitted.spans], cut: [...fitted.cut] } : fitted,
	};
	return applyPatch(copy, [...change]).every((fault) => fault === null) ? copy : null;
}
