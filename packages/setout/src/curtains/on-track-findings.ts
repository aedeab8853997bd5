import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import { MEETS } from "./hangings.ts";

/** Curtains that reach past the track, and such as overlap one another; or that none hangs, where the draw is none. */
export function onTrackFindings({ curtains, track }: Bay, length: number): Finding[] {
	if (track.draw === "none")
		return [
			{ code: "curtains-not-hung", where: { field: "track.draw" }, figures: { count: curtains.length }, remedies: [] },
		];
	const stretches = curtains.map((made, curtain) => ({
		curtain,
		from: made.from ?? 0,
		to: made.to ?? Math.max(length, made.from ?? 0),
	}));
	const offTrack = stretches
		.filter(({ from, to }) => to > length + MEETS || from > length - MEETS)
		.map(
			({ curtain, from, to }): Finding => ({
				code: "curtain-off-track",
				where: { curtain, station: length },
				figures: { from, to, length },
				remedies: [],
			}),
		);
	return [...offTrack, ...overlaps(stretches.filter(({ from }) => from < length - MEETS))];
}

/** Each curtain with the one that reaches furthest before it. */
function overlaps(
	stretches: readonly { readonly curtain: number; readonly from: number; readonly to: number }[],
): Finding[] {
	const found: Finding[] = [];
	const [first, ...rest] = stretches.toSorted((a, b) => a.from - b.from || a.to - b.to);
	let furthest = first;
	for (const each of rest) {
		if (furthest === undefined) break;
		const by = Math.min(furthest.to, each.to) - each.from;
		if (by > MEETS)
			found.push({
				code: "curtains-overlap",
				where: { curtain: each.curtain, station: each.from },
				figures: { other: furthest.curtain, by, from: each.from, to: each.from + by },
				remedies: [],
			});
		if (each.to > furthest.to) furthest = each;
	}
	return found;
}
