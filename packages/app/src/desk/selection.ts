export type SelectionKind = "corner" | "wall" | "bow" | "bend" | "bracket" | "joint" | "piece" | "finding";

/** One thing of the bay on the table: its kind and its index in the plan or the job. */
export interface Selection {
	readonly kind: SelectionKind;
	readonly index: number;
}

export function isSelected(selection: Selection | null, kind: SelectionKind, index: number): boolean {
	return selection !== null && selection.kind === kind && selection.index === index;
}
