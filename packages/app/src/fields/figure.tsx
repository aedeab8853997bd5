import type { Desk } from "@baywright/editor";
import { formatLength, type LengthUnit } from "@baywright/setout";
import { useLayoutEffect, useRef } from "react";
import { desk } from "../desk/desk.ts";

interface Props {
	/** The figure, in mm unless `format` says otherwise; null for none. */
	readonly of: (desk: Desk) => number | null | undefined;
	readonly format?: (figure: number, unit: LengthUnit) => string;
	/** Written where there is no figure. */
	readonly none?: string;
	readonly className?: string;
}

/**
 * One figure that follows the drawing. There may be a hundred on screen, so a change goes from the store straight into the
 * page, in the same frame as the drawing, without a render.
 */
export function Figure({ of, format = formatLength, none = "–", className }: Props) {
	const span = useRef<HTMLSpanElement>(null);
	useLayoutEffect(() => {
		let shown: number | null | undefined;
		let unit: LengthUnit | null = null;
		const write = (state: Desk) => {
			const figure = of(state);
			if (figure === shown && state.shown.display.length === unit) return;
			shown = figure;
			unit = state.shown.display.length;
			const text = figure === null || figure === undefined ? none : format(figure, unit);
			if (span.current !== null && span.current.textContent !== text) span.current.textContent = text;
		};
		write(desk.getState());
		return desk.subscribe(write);
	});
	return <span ref={span} className={className === undefined ? "figure" : `figure ${className}`} />;
}
