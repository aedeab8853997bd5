/** The mark: a bay's walls with the track inside them, a bracket on either side. */
export function Mark() {
	return (
		<svg className="mark" viewBox="0 0 36 30" width="36" height="30" aria-hidden="true">
			<path d="M2.5 26 8.5 5h19l6 21" fill="none" stroke="var(--ink)" strokeWidth="3.2" />
			<path
				d="M9.2 26 12.3 15q1.1-3.7 5-3.7h1.4q3.9 0 5 3.7L26.8 26"
				fill="none"
				stroke="var(--track)"
				strokeWidth="2.4"
			/>
		</svg>
	);
}
