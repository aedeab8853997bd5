import type { PaperName, SheetName, SheetOptions } from "@baywright/sheets";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/** The papers that a printer at hand is likely to take. */
export const PAPERS = ["A4", "A3", "Letter"] as const satisfies readonly PaperName[];

export type Strips = NonNullable<SheetOptions["strips"]>;

/** Which sheets are wanted, and of what printer. No part of the job: paper and printer stay with this device. */
export interface Wishes {
	readonly of: "bay" | "job";
	/** Sheets that are not wanted. */
	readonly without: readonly SheetName[];
	readonly paper: (typeof PAPERS)[number];
	readonly strips: Strips;
	/** What the bars of a print measure that is made without a correction, mm. */
	readonly measured: { readonly across: number; readonly down: number };
}

/** A printer that is further out is not scaling by mistake; mm on a bar of 100. */
export const MEASURED = { least: 80, right: 100, greatest: 120 } as const;

const KEY = "baywright-printer";
const RIGHT = { across: MEASURED.right, down: MEASURED.right };

export const wishes = createStore<Wishes>()(() => ({ of: "bay", without: [], strips: "sheets", ...stored() }));

export const useWishes = <Part>(select: (wishes: Wishes) => Part): Part => useStore(wishes, select);

export const isRight = ({ across, down }: Wishes["measured"]): boolean =>
	across === MEASURED.right && down === MEASURED.right;

export function setPrinter(part: Partial<Pick<Wishes, "paper" | "measured">>): void {
	wishes.setState(part);
	const { paper, measured } = wishes.getState();
	try {
		localStorage.setItem(KEY, JSON.stringify({ paper, measured }));
	} catch {
		// A browser that keeps nothing still prints so for this visit.
	}
}

/**
 * A bar of a print that was made with the correction, and is out again, mm: what the printer does without one is then both together. Null, or why
 * that cannot be.
 */
export function measureAgain(way: "across" | "down", mm: number): string | null {
	const { measured } = wishes.getState();
	const whole = Math.round(measured[way] * mm) / MEASURED.right;
	if (whole < MEASURED.least || whole > MEASURED.greatest)
		return `${mm} on top of ${measured[way]} makes ${whole} of 100, which is out of reach: choose No correction and begin anew.`;
	setPrinter({ measured: { ...measured, [way]: whole } });
	return null;
}

export const correctNothing = (): void => setPrinter({ measured: RIGHT });

export function want(name: SheetName, wanted: boolean): void {
	const others = wishes.getState().without.filter((each) => each !== name);
	wishes.setState({ without: wanted ? others : [...others, name] });
}

function stored(): Pick<Wishes, "paper" | "measured"> {
	try {
		const { paper, measured } = JSON.parse(localStorage.getItem(KEY) ?? "{}");
		const bar = (mm: unknown) => (typeof mm === "number" && mm >= MEASURED.least && mm <= MEASURED.greatest ? mm : 100);
		return {
			paper: PAPERS.find((each) => each === paper) ?? "A4",
			measured: { across: bar(measured?.across), down: bar(measured?.down) },
		};
	} catch {
		return { paper: "A4", measured: RIGHT };
	}
}
