/** A figure and what it is called, in a list of them. */
export function Item({ term, text }: { readonly term: string; readonly text: string }) {
	return (
		<div>
			<dt>{term}</dt>
			<dd>{text}</dd>
		</div>
	);
}
