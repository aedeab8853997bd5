import { takenAgain, withReading } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, planOnTable, useBay, usePlanPart } from "../desk/on-table.ts";
import { heightName, isUnsaid, MEASURES, measuresOfObstacles, withHeight } from "./heights-to-take.ts";
import { before, type Taking, type ToTake, toTake } from "./next-to-take.ts";

/** How far one bay has been gone through; kept for this visit, never with the job. */
interface Progress {
	/** Keys that are left as they are. */
	readonly skipped: ReadonlySet<string>;
	/** The key that was gone to out of turn. */
	readonly at: string | null;
	/** What is typed and not yet taken; null while nothing is. */
	readonly draft: string | null;
	/** The list of all that was taped is looked at. */
	readonly listed: boolean;
}

const NONE: Progress = { skipped: new Set(), at: null, draft: null, listed: false };

/** By the bay, in the job as it was put on the desk. */
const progress = createStore<Readonly<Record<string, Progress>>>()(() => ({}));

type Desk = ReturnType<typeof desk.getState>;

const keyOf = (state: Desk): string => `${state.opened} ${bayOnTable(state).id}`;

const progressNow = (): Progress => progress.getState()[keyOf(desk.getState())] ?? NONE;

function go(part: Partial<Progress>): void {
	progress.setState({ [keyOf(desk.getState())]: { ...progressNow(), ...part } });
}

/** What is to be taped of the bay on the table, and how far it has come. */
export function useTaking(): Taking & Pick<Progress, "draft" | "listed"> {
	const key = useDesk(keyOf);
	const { skipped, at, draft, listed } = useStore(progress, (all) => all[key] ?? NONE);
	const bay = useBay((each) => each);
	const known = usePlanPart(({ survey, pieces }) => ({ survey, pieces }));
	return { ...toTake(bay, known, skipped, at), draft, listed };
}

function takingNow(): Taking {
	const state = desk.getState();
	const { skipped, at } = progressNow();
	return toTake(bayOnTable(state), planOnTable(state), skipped, at);
}

export const type = (draft: string | null): void => go({ draft });

/** Puts a value in its place as one step, and goes on. */
export function take({ key, name, what }: ToTake, value: number): void {
	if (what.kind === "reading") {
		const { reading, index } = what;
		if (index === null) editBay(`take the ${name}`, (bay) => withReading(bay, { ...reading, value }));
		else editBay(`take the ${name} again`, (bay) => takenAgain(bay, index, value));
	} else if (what.kind === "height") {
		editBay(`take the ${name}`, (bay) => withHeight(bay, what.of, value));
		// Taped, and still what it usually is: no need to ask twice.
		if (isUnsaid(bayOnTable(desk.getState()), what.of)) skip(key);
	}
	goOn(key);
}

/** Leaves it as it is, and goes on. */
export function leave(key: string): void {
	skip(key);
	goOn(key);
}

/** It is not asked for any more. */
export const skip = (key: string): void => go({ skipped: new Set([...progressNow().skipped, key]) });

/** Goes on to what is open after an entry; with nothing open there, to what is open before it. */
export function goOn(key: string): void {
	go({ at: null, draft: null, listed: false });
	const { list } = takingNow();
	const index = list.findIndex((each) => each.key === key);
	go({ at: list.slice(index + 1).find(({ state }) => state === "open")?.key ?? null });
}

export const goTo = (key: string): void => go({ at: key, draft: null, listed: false });

export const goBackTo = (taking: Taking): void => {
	const to = before(taking);
	if (to !== null) goTo(to.key);
};

/** Shows the list of all that was taped, or goes on. */
export const showList = (listed: boolean): void => go({ listed, draft: null });

/** Puts a thing on a wall and asks for its measures next, though they were left before; false where it has no room there. */
export function putOnWall(label: string, change: (bay: Bay) => Bay): boolean {
	const was = desk.getState().job;
	editBay(label, change);
	const state = desk.getState();
	if (state.job === was) return false;
	const bay = bayOnTable(state);
	const own = measuresOfObstacles(bay)
		.slice(-MEASURES)
		.map((of) => heightName(bay, of));
	const skipped = new Set([...progressNow().skipped].filter((key) => !own.includes(key)));
	go({ skipped, at: own[0] ?? null, draft: null });
	return true;
}
