/** The colours of the drawing, read from the page's tokens. */
export interface Palette {
	readonly paper: string;
	readonly sheet: string;
	readonly ink: string;
	readonly soft: string;
	readonly line: string;
	readonly wall: string;
	readonly hatch: string;
	readonly glass: string;
	readonly track: string;
	readonly bend: string;
	readonly cut: string;
	readonly stack: string;
	readonly warn: string;
}

const TOKENS = [
	"paper",
	"sheet",
	"ink",
	"soft",
	"line",
	"wall",
	"hatch",
	"glass",
	"track",
	"bend",
	"cut",
	"stack",
	"warn",
] as const satisfies readonly (keyof Palette)[];

export function readPalette(element: Element): Palette {
	const style = getComputedStyle(element);
	const colour = (token: string) => style.getPropertyValue(`--${token}`).trim() || style.color;
	return Object.fromEntries(TOKENS.map((token) => [token, colour(token)])) as unknown as Palette;
}

/** Calls `changed` whenever the colours may have: another theme chosen, or the system's. Returns what ends it. */
export function watchPalette(changed: () => void): () => void {
	const queries = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "(forced-colors: active)"].map((query) =>
		matchMedia(query),
	);
	for (const query of queries) query.addEventListener("change", changed);
	const observer = new MutationObserver(changed);
	observer.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme", "class", "style"] });
	return () => {
		for (const query of queries) query.removeEventListener("change", changed);
		observer.disconnect();
	};
}
