import { formatLength } from "@baywright/setout";
import { type Desk, useDesk } from "../desk/desk.ts";

interface Props {
	/** The figure in mm, or null for none. */
	readonly of: (desk: Desk) => number | null | undefined;
	readonly className?: string;
}

/** One length that follows the drawing: only this span is drawn again when it changes. */
export function Figure({ of, className }: Props) {
	const text = useDesk((desk) => {
		const mm = of(desk);
		return mm === null || mm === undefined ? "–" : formatLength(mm, desk.shown.display.length);
	});
	return <span className={className === undefined ? "figure" : `figure ${className}`}>{text}</span>;
}
