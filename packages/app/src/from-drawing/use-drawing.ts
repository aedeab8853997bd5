import type { ReadDrawing } from "@baywright/sheets/read";
import { useEffect, useState } from "react";

/** What a file holds, read in a worker because a large one takes seconds; null until then. It stops when whoever asked goes away. */
export function useDrawing(bytes: Uint8Array): ReadDrawing | null {
	const [known, setKnown] = useState<{ readonly of: Uint8Array; readonly read: ReadDrawing } | null>(null);
	useEffect(() => {
		const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
		worker.onmessage = ({ data }: MessageEvent<ReadDrawing>) => setKnown({ of: bytes, read: data });
		worker.onerror = (event) => {
			event.preventDefault();
			setKnown({ of: bytes, read: NOT_FETCHED });
		};
		worker.postMessage(bytes);
		return () => worker.terminate();
	}, [bytes]);
	return known?.of === bytes ? known.read : null;
}

const NOT_FETCHED: ReadDrawing = {
	ok: false,
	problem: {
		path: "this page",
		found: "that the program which reads drawings could not be fetched",
		allowed: "another try when the page has been loaded again",
	},
};
