import "../styles/print.css";
import type { Desk } from "@baywright/editor";
import { useRef } from "react";
import { createPortal } from "react-dom";
import { useDesk } from "../desk/desk.ts";
import { planText } from "./plan-text.ts";

/** The plan in words: on paper whenever the stage is printed, on screen where it is asked for. */
export function PrintedPlan({ shown }: { readonly shown: boolean }) {
	const text = useSettledText();
	return (
		<>
			{shown ? (
				<pre
					className="plan-text"
					// biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by key
					tabIndex={0}
				>
					{text}
				</pre>
			) : null}
			{createPortal(<pre className="print-sheet">{text}</pre>, document.body)}
		</>
	);
}

/** Nobody reads or prints in the middle of a drag: until it is let go the words stay as they were. */
function useSettledText(): string {
	const known = useRef<{ readonly plans: Desk["plans"]; readonly bay: number; readonly text: string }>(null);
	return useDesk(({ shown, job, plans, bay }) => {
		const stale = known.current?.plans !== plans || known.current.bay !== bay;
		if (known.current === null || (shown === job && stale))
			known.current = { plans, bay, text: planText(shown, bay, plans) };
		return known.current.text;
	});
}
