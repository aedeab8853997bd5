import { useCallback, useEffect, useReducer, useRef } from "react";
import { type Answer, type Asked, type Progress, stepped } from "./progress.ts";

export interface Simulating {
	readonly progress: Progress;
	start(asked: Asked): void;
	cancel(): void;
}

/** Measures bays over and over in a worker of its own; it stops when whoever asked goes away. */
export function useSimulation(): Simulating {
	const [progress, step] = useReducer(stepped, { state: "idle" });
	const worker = useRef<Worker | null>(null);
	const stop = useCallback(() => {
		worker.current?.terminate();
		worker.current = null;
	}, []);
	useEffect(() => stop, [stop]);
	return {
		progress,
		start: (asked) => {
			stop();
			const started = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
			worker.current = started;
			started.onmessage = ({ data }: MessageEvent<Answer>) => {
				if (worker.current !== started) return;
				step(data);
				if (data.kind !== "measured") stop();
			};
			started.onerror = () => {
				if (worker.current !== started) return;
				step({ kind: "failed" });
				stop();
			};
			step({ kind: "started", asked });
			started.postMessage(asked);
		},
		cancel: () => {
			stop();
			step({ kind: "cancelled" });
		},
	};
}
