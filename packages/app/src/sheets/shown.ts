import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import type { Made, MadeSheet } from "./making.ts";
import type { Wishes } from "./wishes.ts";

export type Zoom = "page" | "width" | "true-size";

/** What stands on the board while the stage is Sheets. */
interface Shown {
	readonly board: "pages" | "plan";
	/** `pageKey` of the page at hand; null = the first. */
	readonly page: string | null;
	readonly zoom: Zoom;
}

export const shown = createStore<Shown>()(() => ({ board: "pages", page: null, zoom: "page" }));

export const useShown = <Part>(select: (shown: Shown) => Part): Part => useStore(shown, select);

/** A page of the pack. */
export interface PackPage {
	/** Place of its sheet among all that were made, and its own in it. */
	readonly sheet: number;
	readonly page: number;
	readonly of: MadeSheet;
}

/** The pages of the sheets that are wanted, as they come in the pack. */
export function pagesOf(made: Made | null, without: Wishes["without"]): PackPage[] {
	return (made?.sheets ?? []).flatMap((of, sheet) =>
		without.includes(of.name) ? [] : of.pages.map((_, page) => ({ sheet, page, of })),
	);
}
