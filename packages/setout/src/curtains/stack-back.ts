import type { CurtainSetOut, StackBack } from "../bay-plan.ts";

/** The stretches of track that the open curtains take up. */
export const stackBack = (curtains: readonly CurtainSetOut[]): StackBack[] =>
	curtains.map(({ side, stack }) => ({ side, ...stack }));
