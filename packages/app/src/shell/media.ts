import { useSyncExternalStore } from "react";

/** True on a screen too narrow for two columns: a phone. */
export const useNarrow = (): boolean => useMedia(narrow);

/** True where the header has no room for everything: a phone, or a tablet held upright. */
export const useCompact = (): boolean => useMedia(compact);

const narrow = matchMedia("(max-width: 719px)");
const compact = matchMedia("(max-width: 899px)");

function useMedia(query: MediaQueryList): boolean {
	return useSyncExternalStore(
		(tell) => {
			query.addEventListener("change", tell);
			return () => query.removeEventListener("change", tell);
		},
		() => query.matches,
	);
}
