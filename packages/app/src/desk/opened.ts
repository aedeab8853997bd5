import { type BayPlan, type CurtainPosition, clearOf, positionOf } from "@baywright/setout";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { desk } from "./desk.ts";

/** How far the curtains of the bay on the table are opened, as they are looked at: 0 = drawn, 1 = drawn back. Never stored in the job. */
export interface Opened {
	/** Every curtain that is not opened otherwise. */
	readonly all: number;
	/** By their place among the plan's curtains. */
	readonly each: Readonly<Record<number, number>>;
	/** The one whose leading edge is in hand. */
	readonly held: number | null;
}

/** Another bay is first seen with its curtains open. */
const OPEN: Opened = { all: 1, each: {}, held: null };

export const opened = createStore<Opened>()(() => OPEN);

export function useOpened<Part>(select: (opened: Opened) => Part): Part {
	return useStore(opened, select);
}

export const shareOpened = ({ all, each }: Opened, curtain: number): number => each[curtain] ?? all;

export function openCurtain(curtain: number, share: number): void {
	opened.setState(({ each }) => ({ each: { ...each, [curtain]: share } }));
}

export function openAll(share: number): void {
	opened.setState({ all: share, each: {} });
}

export function holdEdge(curtain: number | null): void {
	if (opened.getState().held !== curtain) opened.setState({ held: curtain });
}

/** Where every curtain of a plan hangs as they are opened now. */
export const hangingNow = ({ curtains }: Pick<BayPlan, "curtains">, now: Opened): CurtainPosition[] =>
	curtains.map((curtain, i) => positionOf(curtain, shareOpened(now, i)));

/** Width of one opening, or of all, that the curtains leave clear as they are opened now, mm. */
export function clearNow(
	{ glass, curtains }: Pick<BayPlan, "glass" | "curtains">,
	now: Opened,
	opening?: number,
): number {
	const hanging = hangingNow({ curtains }, now);
	const asked = opening === undefined ? glass.openings : glass.openings.filter((one) => one.opening === opening);
	return asked.reduce((sum, one) => sum + clearOf(one, hanging), 0);
}

/** All of so many curtains open, all drawn, or something between. */
export function openedState(now: Opened, count: number): "open" | "closed" | "between" {
	const shares = count === 0 ? [now.all] : Array.from({ length: count }, (_, curtain) => shareOpened(now, curtain));
	if (shares.every((share) => share === 1)) return "open";
	return shares.every((share) => share === 0) ? "closed" : "between";
}

desk.subscribe((state, before) => {
	if (state.opened !== before.opened || state.bay !== before.bay) opened.setState(OPEN);
});
