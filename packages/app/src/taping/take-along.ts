/** Takes whoever has the focus nowhere along to an element: what had it is gone, or a sheet has only just been laid over the desk. */
export function takeAlong(element: HTMLElement | null): void {
	const { activeElement, body } = document;
	const sheet = element?.closest("[role=dialog]") ?? null;
	const isOutside = sheet !== null && (activeElement === sheet || !sheet.contains(activeElement));
	if (activeElement === body || isOutside) element?.focus({ preventScroll: true });
}
