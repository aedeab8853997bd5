import { simulateBay, simulateRandomBays } from "@baywright/setout";
import type { Answer, Asked } from "./progress.ts";

/** ms between two words of progress; a word takes a tenth of the time at most. */
const EVERY = 150;
const SHARE = 10;

self.onmessage = ({ data }: MessageEvent<Asked>) => {
	const { bay, ...order } = data;
	const run = bay === null ? simulateRandomBays(order) : simulateBay(bay.bay, bay.system, order);
	if (run === null) return answer({ kind: "no-track" });
	let next = performance.now() + EVERY;
	for (let step = run.next(); ; step = run.next()) {
		if (step.done) return answer({ kind: "finished", strategies: step.value.strategies });
		const now = performance.now();
		if (now < next) continue;
		answer({ kind: "measured", done: step.value.done, strategies: step.value.soFar() });
		const after = performance.now();
		next = after + Math.max(EVERY, SHARE * (after - now));
	}
};

const answer = (message: Answer): void => self.postMessage(message);
