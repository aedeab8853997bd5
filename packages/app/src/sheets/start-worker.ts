import type { Answer } from "./making.ts";

/** Starts the worker that makes sheets; it comes with its letters only now. */
export function startWorker(receive: (answer: Answer) => void, onBroken: () => void): Worker {
	const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
	worker.onmessage = ({ data }: MessageEvent<Answer>) => receive(data);
	worker.onerror = (event) => {
		event.preventDefault();
		onBroken();
	};
	return worker;
}
