import type { SiteMark } from "./marks.ts";

/** The plan's own marks, so that no one needs the colour: a bar across the track, a band round a bend, a diamond. */
export function MarkSign({ kind }: { readonly kind: SiteMark["kind"] }) {
	return (
		<svg className={`mark-sign mark-sign-${kind}`} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
			{SIGNS[kind]}
		</svg>
	);
}

const track = <path d="M0 8h20M0 12h20" stroke="var(--track)" strokeWidth="1.5" />;

const SIGNS = {
	bracket: (
		<>
			{track}
			<path d="M10 3v14" stroke="currentColor" strokeWidth="5" />
		</>
	),
	bend: <path d="M3 18V14A11 11 0 0 1 14 3h4" fill="none" stroke="currentColor" strokeWidth="3.5" />,
	bow: <path d="M1.5 14.5A12 12 0 0 1 18.5 14.5" fill="none" stroke="currentColor" strokeWidth="3.5" />,
	joint: (
		<>
			{track}
			<path d="m10 3.5 6 6.5-6 6.5-6-6.5z" fill="var(--paper)" stroke="currentColor" strokeWidth="2.2" />
		</>
	),
} as const;
