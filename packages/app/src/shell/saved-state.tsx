import { useEffect } from "react";
import { useDesk } from "../desk/desk.ts";
import { screen, useScreen } from "../desk/screen.ts";

/** A passing word stays this long, ms. */
const WORD_MS = 3500;

/** Whether the job is safely kept; for a moment, what was just done. */
export function SavedState() {
	const saved = useDesk((state) => state.saved);
	const word = useScreen((state) => state.word);
	useEffect(() => {
		if (word === "") return;
		const timer = setTimeout(() => screen.getState().say(""), WORD_MS);
		return () => clearTimeout(timer);
	}, [word]);
	return (
		<p className={`saved saved-${saved}`} role="status">
			{word === "" ? SAVED[saved] : word}
		</p>
	);
}

const SAVED = { saved: "Saved", saving: "Saving…", failed: "Not saved" } as const;
