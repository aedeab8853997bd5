/** px kept free above and below what is brought into view. */
const ROOM = 28;

/** Scrolls the side column alone, and only as far as needed: the page stays where it is read. */
export function bringIntoView(element: HTMLElement): void {
	const column = element.closest<HTMLElement>(".side-scroll");
	if (column === null) return;
	const [inside, outside] = [element.getBoundingClientRect(), column.getBoundingClientRect()];
	const above = outside.top + ROOM - inside.top;
	const below = inside.bottom + ROOM - outside.bottom;
	if (above > 0) column.scrollTop -= above;
	else if (below > 0) column.scrollTop += Math.min(below, -above);
}
