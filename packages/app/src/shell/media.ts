import { useSyncExternalStore } from "react";

/** A screen too narrow for two columns, or a phone on its side. */
export const NARROW = "(max-width: 719px), (max-height: 479px) and (pointer: coarse)";

/** True on a phone, however it is held. */
export const useNarrow = (): boolean => useMedia(narrow);

/** True where the header has no room for everything: a phone or a tablet. */
export const useCompact = (): boolean => useMedia(compact);

const narrow = matchMedia(NARROW);
const compact = matchMedia("(max-width: 1199px)");

function useMedia(query: MediaQueryList): boolean {
	return useSyncExternalStore(
		(tell) => {
			query.addEventListener("change", tell);
			return () => query.removeEventListener("change", tell);
		},
		() => query.matches,
	);
}
