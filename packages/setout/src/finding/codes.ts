import type { Severity } from "./finding.ts";

/** Every finding there is, with how grave it is. */
export const severities = {
	"too-few-corners": "refusal",
	"coordinate-out-of-range": "refusal",
	"wall-too-short": "refusal",
	"corner-folded": "refusal",
	"walls-cross": "refusal",
	"bow-too-deep": "refusal",
	"bow-too-tight": "refusal",
	"legs-do-not-meet": "refusal",
	"no-room-round-corner": "refusal",
	"projection-out-of-range": "refusal",
	"projection-change-at-slight-turn": "refusal",
	"end-off-wall": "refusal",
	"ends-reversed": "refusal",
	"radius-below-least": "refusal",
	"radius-too-large": "refusal",
	"leg-too-short": "refusal",
	"track-too-near-wall": "refusal",
	"track-crosses-itself": "refusal",
	"obstacle-in-the-way": "refusal",
	"piece-longer-than-stock": "refusal",
	"piece-too-short": "refusal",
	"cannot-be-joined": "refusal",
	"radius-not-used": "warning",
	"joint-off-track": "warning",
	"joint-badly-placed": "warning",
	"pin-off-track": "warning",
	"pin-where-no-bracket-goes": "warning",
	"no-place-for-bracket": "warning",
	"brackets-too-far-across-bend": "warning",
	"bracket-out-of-reach": "warning",
	"bracket-gap-too-wide": "warning",
	"bow-to-be-bent": "note",
	"no-smoother-track": "note",
	"stock-not-proved-best": "note",
	"kept-for-later": "note",
} as const satisfies Record<string, Severity>;

export type FindingCode = keyof typeof severities;

export const severityOf = (code: FindingCode): Severity => severities[code];
