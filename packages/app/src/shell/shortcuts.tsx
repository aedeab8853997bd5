import { useEffect } from "react";

/** The keys that hold everywhere. They come after the first load: nobody presses one before there is something to see. */
export function Shortcuts() {
	useEffect(() => {
		let stop: (() => void) | null = null;
		let gone = false;
		import("../commands/shortcuts.ts").then(
			({ listen }) => {
				if (!gone) stop = listen();
			},
			() => undefined,
		);
		return () => {
			gone = true;
			stop?.();
		};
	}, []);
	return null;
}
