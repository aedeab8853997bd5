import { type RefObject, useLayoutEffect } from "react";

/** px: less than this hidden is nothing. */
const SLACK = 2;

/** Marks a box that scrolls with data-above and data-below while something is hidden there, for its style to show. */
export function useScrollSigns(box: RefObject<HTMLElement | null>): void {
	useLayoutEffect(() => {
		const element = box.current;
		if (!element) return;
		const mark = () => {
			const { scrollTop, scrollHeight, clientHeight } = element;
			element.toggleAttribute("data-above", scrollTop > SLACK);
			element.toggleAttribute("data-below", scrollTop + clientHeight < scrollHeight - SLACK);
		};
		const sized = new ResizeObserver(mark);
		sized.observe(element);
		for (const child of element.children) sized.observe(child);
		element.addEventListener("scroll", mark, { passive: true });
		mark();
		return () => {
			sized.disconnect();
			element.removeEventListener("scroll", mark);
		};
	});
}
