import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

export type LowerView = "strip" | "elevation";

/** What the lower part of the desk shows, and how high it stands for each, px. Kept from visit to visit; no part of the job. */
export interface Lower {
	readonly view: LowerView;
	readonly heights: Readonly<Record<LowerView, number>>;
}

const KEY = "baywright-lower";

/** px. */
export const USUAL: Lower["heights"] = { strip: 190, elevation: 330 };
export const LEAST_LOWER = 150;

const lower = createStore<Lower>()(() => stored());

export const useLower = <Part>(select: (lower: Lower) => Part): Part => useStore(lower, select);

export function showLower(view: LowerView): void {
	lower.setState({ view });
	keep();
}

/** Sets how high the lower part stands with what it shows now, px. */
export function setLowerHeight(height: number): void {
	const { view, heights } = lower.getState();
	lower.setState({ heights: { ...heights, [view]: Math.max(LEAST_LOWER, Math.round(height)) } });
	keep();
}

function keep(): void {
	try {
		localStorage.setItem(KEY, JSON.stringify(lower.getState()));
	} catch {
		// A browser that keeps nothing still shows it for this visit.
	}
}

function stored(): Lower {
	try {
		const { view, heights } = JSON.parse(localStorage.getItem(KEY) ?? "{}");
		const height = (of: LowerView) => (heights?.[of] >= LEAST_LOWER ? Math.round(heights[of]) : USUAL[of]);
		return {
			view: view === "elevation" ? view : "strip",
			heights: { strip: height("strip"), elevation: height("elevation") },
		};
	} catch {
		return { view: "strip", heights: USUAL };
	}
}
