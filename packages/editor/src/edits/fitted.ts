import type { Bay, WallPlace } from "@baywright/setout";

type Span = Bay["fitted"]["spans"][number];

/** What a piece was cut to, mm; null = not cut yet. */
export function setCut(bay: Bay, piece: string, length: number | null): Bay {
	const others = bay.fitted.cut.filter((each) => each.piece !== piece);
	const cut = length === null ? others : [...others, { piece, length }];
	return { ...bay, fitted: { ...bay.fitted, cut } };
}

/** The span taped from one wall to another, wherever its brackets were then; undefined where none was. */
export const spanAcross = ({ fitted }: Bay, from: number, to: number): Span | undefined =>
	fitted.spans.find((span) => span.from.wall === from && span.to.wall === to);

/** A span taped between two brackets, mm, in place of the one taped before; null takes it away. */
export function setSpan(bay: Bay, from: WallPlace, to: WallPlace, value: number | null): Bay {
	const others = bay.fitted.spans.filter((span) => span !== spanAcross(bay, from.wall, to.wall));
	const spans = value === null ? others : [...others, { from, to, value }];
	return { ...bay, fitted: { ...bay.fitted, spans } };
}
