import type { ToolName } from "@baywright/editor";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

export type Theme = "light" | "dark" | "system";

/** The stages of a job, in the order of the work. */
export const STAGES = ["survey", "track", "curtains", "order", "sheets"] as const;
export type Stage = (typeof STAGES)[number];

/** What stands open over the desk. */
export type Sheet =
	| { readonly kind: "examples" }
	| { readonly kind: "bays" }
	| { readonly kind: "new-bay" }
	| { readonly kind: "commands" }
	| { readonly kind: "keys" }
	| { readonly kind: "systems" }
	/** For one curtain, or for all of them. */
	| { readonly kind: "cloths"; readonly curtain: number | null }
	| { readonly kind: "job" }
	| { readonly kind: "findings-help" }
	| { readonly kind: "simulate" }
	| { readonly kind: "taping" }
	| { readonly kind: "corner-card"; readonly corner: number | null }
	/** A drawing that walls are to be taken from. */
	| { readonly kind: "from-drawing"; readonly file: string; readonly bytes: Uint8Array }
	| { readonly kind: "problems"; readonly file: string; readonly lines: readonly string[] };

/** What the screen shows besides the job: never saved with it, never undone. */
export interface Screen {
	readonly theme: Theme;
	readonly sheet: Sheet | null;
	/** The stage at hand: its controls stand in the side column. */
	readonly stage: Stage;
	/** A tool that is wanted in hand as soon as the plan stands. */
	readonly wanted: ToolName | null;
	/** False while there is no job yet: the opening page stands instead of the desk. */
	readonly started: boolean;
	/** A passing word about what just happened. */
	readonly word: string;
	/** The job is open in another tab too. */
	readonly elsewhere: boolean;
	/** Another tab has stored a later job. */
	readonly overtaken: boolean;
	/** Why the job could not be stored; "" while it can. */
	readonly storageTrouble: string;
	set(part: Partial<Screen>): void;
	show(sheet: Sheet): void;
	close(): void;
	say(word: string): void;
}

// Read when the store is made, so they stand before it.
const STAGE_KEY = "baywright-stage";
const THEME_KEY = "baywright-theme";

export const screen = createStore<Screen>()((set) => ({
	theme: storedTheme(),
	sheet: null,
	stage: storedStage(),
	wanted: null,
	started: true,
	word: "",
	elsewhere: false,
	overtaken: false,
	storageTrouble: "",
	set: (part) => set(part),
	show: (sheet) => set({ sheet }),
	close: () => set({ sheet: null }),
	say: (word) => set({ word }),
}));

export function useScreen<Part>(select: (screen: Screen) => Part): Part {
	return useStore(screen, select);
}

/** Another bay on the table is seen from its top, however far down the page the one before was read. */
export function toTop(): void {
	window.scrollTo(0, 0);
}

/** Goes to a stage. It is remembered for this visit: a reload comes back to it, another tab has its own. */
export function setStage(stage: Stage): void {
	screen.setState({ stage });
	try {
		sessionStorage.setItem(STAGE_KEY, stage);
	} catch {
		// A browser that keeps nothing starts at the survey again.
	}
}

function storedStage(): Stage {
	try {
		const stored = sessionStorage.getItem(STAGE_KEY);
		return STAGES.find((stage) => stage === stored) ?? "survey";
	} catch {
		return "survey";
	}
}

/** Puts the theme on the page and remembers it. */
export function setTheme(theme: Theme): void {
	screen.setState({ theme });
	if (theme === "system") delete document.documentElement.dataset.theme;
	else document.documentElement.dataset.theme = theme;
	try {
		localStorage.setItem(THEME_KEY, theme);
	} catch {
		// A browser that keeps nothing still shows the theme for this visit.
	}
}

function storedTheme(): Theme {
	try {
		const stored = localStorage.getItem(THEME_KEY);
		if (stored === "light" || stored === "dark") return stored;
	} catch {
		// As above.
	}
	return "system";
}
