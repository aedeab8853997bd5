import { type BracketMeasured, setFittedBracket } from "@baywright/editor";
import { type Bay, bendRecordText, type Fitted, readBendRecord, toTenth, type WallPlace } from "@baywright/setout";
import type { BracketMark, SiteMark } from "./marks.ts";

export type FittedBracket = Fitted["brackets"][number];

/**
 * Where a mark stands in the work. One that the plan has moved since it was ticked is still to be done: `was` is where, or as
 * what, it was done.
 */
export type Tick =
	| { readonly state: "open" }
	| { readonly state: "done" }
	| { readonly state: "moved"; readonly was: WallPlace }
	| { readonly state: "reshaped"; readonly was: { readonly radius: number; readonly sweep: number } };

export interface Ticks {
	/** By the mark's name. */
	readonly of: ReadonlyMap<string, Tick>;
	/** What is kept of each ticked bracket, by the mark's name. */
	readonly fitted: ReadonlyMap<string, FittedBracket>;
	/** Holes that no bracket of the plan uses any more: indexes of `fitted.brackets`. */
	readonly spare: readonly number[];
}

/** mm. Less than this nothing is drilled or bent anew, and an inch tape (sixteenths) hardly shows it. */
const SAME = 1.6;

/** What has been done of a list of marks. */
export function ticksOf({ fitted }: Bay, marks: readonly SiteMark[]): Ticks {
	const holes = holesOf(fitted, marks);
	const used = new Set([...holes.values()].filter((hole) => hole !== null));
	return {
		of: new Map(marks.map((mark) => [mark.name, tickOf(mark, fitted, holes)])),
		fitted: new Map(
			[...holes].flatMap(([name, hole]) => {
				const bracket = hole === null ? undefined : fitted.brackets[hole];
				return bracket === undefined ? [] : [[name, bracket] as const];
			}),
		),
		spare: fitted.brackets.flatMap((_, i) => (used.has(i) ? [] : [i])),
	};
}

/** Where a bracket is: its hole where that is drilled, else where the plan has it. */
export function tickedAt({ of }: Ticks, { name, place }: SiteMark & BracketMark): WallPlace {
	const tick = of.get(name);
	return tick?.state === "moved" ? tick.was : { wall: place.wall, at: toTenth(place.at) };
}

/** A mark ticked where the plan has it now. */
export function tick(bay: Bay, marks: readonly SiteMark[], mark: SiteMark): Bay {
	if (mark.kind !== "bracket") return withDone(bay, [...doneBut(bay.fitted, mark.name), mark.name, recordOf(mark)]);
	const holes = holesOf(bay.fitted, marks);
	const { wall, at } = mark.place;
	const old = holes.get(mark.name) ?? null;
	// What a bracket stands off was measured on the bracket: it goes with it to another hole of the wall.
	const before = old === null ? undefined : bay.fitted.brackets[old];
	const projection = before?.wall === wall ? before.projection : null;
	const hole = { wall, planned: toTenth(at), at: toTenth(at), projection };
	const brackets = [...bay.fitted.brackets.filter((_, i) => i !== old), hole];
	return withHoles(bay, marks, new Set([...holes.keys(), mark.name]), brackets);
}

/** What was measured of a bracket, mm: whatever is measured is there, so it is ticked; once nothing is left of it, no longer. */
export function measure(
	bay: Bay,
	marks: readonly SiteMark[],
	{ name, place }: SiteMark & BracketMark,
	measured: BracketMeasured,
): Bay {
	const holes = holesOf(bay.fitted, marks);
	const planned = { wall: place.wall, at: toTenth(place.at) };
	const changed = setFittedBracket(bay, holes.get(name) ?? null, planned, measured);
	const { brackets } = changed.fitted;
	if (brackets.length < bay.fitted.brackets.length) holes.delete(name);
	else holes.set(name, null);
	return withHoles(changed, marks, new Set(holes.keys()), brackets);
}

/** A mark ticked by mistake: what was measured there goes with it. */
export function untick(bay: Bay, marks: readonly SiteMark[], mark: SiteMark): Bay {
	if (mark.kind !== "bracket") return withDone(bay, doneBut(bay.fitted, mark.name));
	const holes = holesOf(bay.fitted, marks);
	const old = holes.get(mark.name) ?? null;
	holes.delete(mark.name);
	const hole = old === null ? undefined : bay.fitted.brackets[old];
	if (hole === undefined) return withHoles(bay, marks, new Set(holes.keys()), bay.fitted.brackets);
	const planned = { wall: hole.wall, at: hole.planned ?? hole.at };
	const without = setFittedBracket(bay, old, planned, { at: null, projection: null });
	return withHoles(without, marks, new Set(holes.keys()), without.fitted.brackets);
}

/** Forgets a hole that no bracket uses any more: it has been filled. */
export function forgetHole(bay: Bay, hole: number): Bay {
	return { ...bay, fitted: { ...bay.fitted, brackets: bay.fitted.brackets.filter((_, i) => i !== hole) } };
}

function tickOf(mark: SiteMark, fitted: Fitted, holes: ReadonlyMap<string, number | null>): Tick {
	if (mark.kind === "bracket") {
		const hole = holes.get(mark.name);
		if (hole === undefined) return { state: "open" };
		const was = hole === null ? undefined : fitted.brackets[hole];
		return was === undefined || isThere(was, mark.place)
			? { state: "done" }
			: { state: "moved", was: { wall: was.wall, at: was.at } };
	}
	if (!fitted.done.includes(mark.name)) return { state: "open" };
	if (mark.kind === "joint") {
		const was = jointRecord(fitted, mark.name);
		return was === null || isThere(was, mark.place) ? { state: "done" } : { state: "moved", was };
	}
	const was = fitted.done.map(readBendRecord).find((record) => record?.name === mark.name);
	if (!was) return { state: "done" };
	const { radius, sweep } = was;
	const same = Math.abs(radius - mark.radius) < SAME && Math.abs(sweep - mark.sweep) < SAME;
	return same ? { state: "done" } : { state: "reshaped", was: { radius, sweep } };
}

const isThere = (was: WallPlace, { wall, at }: WallPlace): boolean => was.wall === wall && Math.abs(was.at - at) < SAME;

/**
 * The hole of each ticked bracket: an index of `fitted.brackets`, or null where only the name says that it is done. A hole
 * belongs to the bracket that stands at it, whatever its number is by now; one at which none stands any more to the nearest
 * bracket that was ticked by name.
 */
function holesOf({ brackets: holes, done }: Fitted, marks: readonly SiteMark[]): Map<string, number | null> {
	const of = new Map<string, number | null>();
	const left = new Set(holes.keys());
	const brackets = marks.filter((mark) => mark.kind === "bracket");
	const take = (name: string, hole: number) => {
		of.set(name, hole);
		left.delete(hole);
	};
	for (const { name, place } of brackets) {
		const hole = [...left].find((i) => isThere(holes[i] as WallPlace, place));
		if (hole !== undefined) take(name, hole);
	}
	let bare = done.filter(isBracketName).length - holes.length;
	for (const { name, place } of brackets) {
		if (of.has(name) || !done.includes(name)) continue;
		const hole = nearest([...left], holes, place);
		if (hole !== null) take(name, hole);
		else if (bare-- > 0) of.set(name, null);
	}
	return of;
}

/** The hole nearest to a place: on the same wall if there is one. */
function nearest(left: readonly number[], holes: readonly WallPlace[], { wall, at }: WallPlace): number | null {
	const distance = (i: number) => {
		const hole = holes[i] as WallPlace;
		return [Math.abs(hole.wall - wall), Math.abs(hole.at - at)] as const;
	};
	const [first] = [...left].sort((a, b) => {
		const [walls, along] = distance(a);
		const [otherWalls, otherAlong] = distance(b);
		return walls - otherWalls || along - otherAlong;
	});
	return first ?? null;
}

/** Holes and the names of the brackets they belong to are written together, so that neither is ever without the other. */
function withHoles(
	bay: Bay,
	marks: readonly SiteMark[],
	ticked: ReadonlySet<string>,
	brackets: Fitted["brackets"],
): Bay {
	const names = marks.filter(({ name }) => ticked.has(name)).map(({ name }) => name);
	const done = [...names, ...bay.fitted.done.filter((name) => !isBracketName(name))];
	return { ...bay, fitted: { ...bay.fitted, brackets, done } };
}

const isBracketName = (name: string): boolean => /^bracket-\d+$/.test(name);

const withDone = (bay: Bay, done: readonly string[]): Bay => ({ ...bay, fitted: { ...bay.fitted, done } });

/** How a bend or a joint was when it was ticked, kept beside its name: "joint-1 wall 1 at 900". */
function recordOf(mark: Exclude<SiteMark, { kind: "bracket" }>): string {
	const { name } = mark;
	if (mark.kind === "joint") return `${name} wall ${mark.place.wall} at ${toTenth(mark.place.at)}`;
	return bendRecordText({ name, radius: mark.radius, sweep: mark.sweep, on: mark.on });
}

const JOINT_RECORD = /^(\S+) wall (\d+) at (-?\d+(?:\.\d+)?)$/;

function jointRecord({ done }: Fitted, name: string): WallPlace | null {
	for (const each of done) {
		const [, of, wall, at] = JOINT_RECORD.exec(each) ?? [];
		if (of === name) return { wall: Number(wall), at: Number(at) };
	}
	return null;
}

const isRecordOf = (text: string, name: string): boolean =>
	(readBendRecord(text)?.name ?? JOINT_RECORD.exec(text)?.[1]) === name;

/** What is done without one mark and its record. */
const doneBut = ({ done }: Fitted, name: string): string[] =>
	done.filter((each) => each !== name && !isRecordOf(each, name));
