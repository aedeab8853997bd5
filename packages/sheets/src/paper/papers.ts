import type { PaperSize } from "./drawing.ts";

/** Papers that sheets are made for, mm, in the way that they are held. Source: ISO 216; ANSI/ASME Y14.1 for the inch sizes. */
export const PAPERS = {
	A4: { width: 210, height: 297 },
	A3: { width: 420, height: 297 },
	A2: { width: 594, height: 420 },
	A1: { width: 841, height: 594 },
	A0: { width: 1189, height: 841 },
	Letter: { width: 215.9, height: 279.4 },
	Tabloid: { width: 431.8, height: 279.4 },
} as const satisfies Readonly<Record<string, PaperSize>>;

export type PaperName = keyof typeof PAPERS;
