import type { Severity } from "@baywright/setout";

/** The shapes of the plan's own marks, so that no one needs the colour: an eight-sided plate, a triangle, a disc. */
export function SeverityMark({ severity }: { readonly severity: Severity }) {
	return (
		<svg className={`severity severity-${severity}`} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
			{SHAPES[severity]}
		</svg>
	);
}

const SHAPES = {
	refusal: (
		<>
			<path d="M6.3 1h7.4L19 6.3v7.4L13.7 19H6.3L1 13.7V6.3z" fill="currentColor" />
			<path d="m6.5 6.5 7 7m0-7-7 7" stroke="var(--sheet)" strokeWidth="2.2" strokeLinecap="round" />
		</>
	),
	warning: (
		<>
			<path d="M10 2 19 18H1z" fill="currentColor" stroke="currentColor" strokeWidth="1.6" strokeLinejoin="round" />
			<path d="M10 7.5v5M10 14.4v1.8" stroke="var(--sheet)" strokeWidth="2.2" />
		</>
	),
	note: (
		<>
			<circle cx="10" cy="10" r="8.5" fill="currentColor" />
			<path d="M10 9v5.5M10 5.2v2" stroke="var(--sheet)" strokeWidth="2.2" />
		</>
	),
} as const;
