import type { Desk } from "@baywright/editor";
import { formatLength } from "@baywright/setout";
import { useEffect, useState } from "react";
import { desk } from "../desk/desk.ts";
import { planOnTable } from "../desk/on-table.ts";

/** A drag changes the cuts many times a second; a listener hears where they came to rest, ms. */
const REST_MS = 1200;

/** Says the cut lengths aloud, politely, when they have come to rest. */
export function Announcer() {
	const [said, say] = useState("");
	useEffect(() => {
		let timer: ReturnType<typeof setTimeout>;
		let last = cuts(desk.getState());
		const stop = desk.subscribe((state) => {
			const now = cuts(state);
			if (now === last) return;
			last = now;
			clearTimeout(timer);
			timer = setTimeout(() => say(now), REST_MS);
		});
		return () => {
			stop();
			clearTimeout(timer);
		};
	}, []);
	return (
		<p className="hidden" aria-live="polite">
			{said}
		</p>
	);
}

function cuts(state: Desk): string {
	const unit = state.shown.display.length;
	const { pieces } = planOnTable(state);
	if (pieces.length === 0) return "Nothing to cut: the track does not fit.";
	return pieces.map(({ name, cutLength }) => `Cut ${name} ${formatLength(cutLength, unit, { unit: true })}`).join(", ");
}
