import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/** What a phone shows, in the order of its tabs. */
export const VIEWS = ["tape", "marks", "strip", "plan", "corner"] as const;
export type View = (typeof VIEWS)[number];

interface Phone {
	readonly view: View;
	/** The sheet of cautions stands open. */
	readonly cautions: boolean;
	/** The mark to go to and show; `asked` counts, so that asking again goes there again. */
	readonly next: { readonly name: string; readonly asked: number } | null;
	/** The mark whose row stands open, for what was measured there. */
	readonly opened: string | null;
}

const KEY = "baywright-phone";

export const phone = createStore<Phone>()(() => ({ view: storedView(), cautions: false, next: null, opened: null }));

export function usePhone<Part>(select: (phone: Phone) => Part): Part {
	return useStore(phone, select);
}

/** Goes to a view. It is remembered for this visit. */
export function showView(view: View): void {
	phone.setState({ view, next: null, opened: null });
	try {
		sessionStorage.setItem(KEY, view);
	} catch {
		// A browser that keeps nothing starts at the marks again.
	}
}

/** Goes to a mark of the list. */
export function goToMark(name: string): void {
	const asked = (phone.getState().next?.asked ?? 0) + 1;
	showView("marks");
	phone.setState({ next: { name, asked } });
}

function storedView(): View {
	try {
		const stored = sessionStorage.getItem(KEY);
		return VIEWS.find((view) => view === stored) ?? "marks";
	} catch {
		return "marks";
	}
}
