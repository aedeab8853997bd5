import { formatLength } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import type { Part, PartSource } from "./part.ts";

/** A line of an order in words. */
export interface DescribedPart {
	readonly what: string;
	/** Whence its quantity: what of the plan it was counted from, and by which rule. */
	readonly why: string;
}

/** A rule of the trade, marked as one. */
const PRACTICE = "(common practice, no source)";

export function describePart(part: Part, unit: LengthUnit): DescribedPart {
	const length = (mm: number) => formatLength(mm, unit, { unit: true });
	return { what: whatOf(part, length), why: whyOf(part, length) };
}

type Show = (mm: number) => string;

function whatOf({ kind, size, figures }: Part, length: Show): string {
	const reach = size === null ? "" : `, projection ${length(size)}`;
	switch (kind) {
		case "track":
			return `Track, length ${length(size ?? 0)}`;
		case "bracket":
			return `Wall bracket${reach}`;
		case "ceiling-bracket":
			return "Ceiling bracket";
		case "joint-bracket":
			return `Joint bracket${reach}`;
		case "bracket-base":
			return "Base under a bracket";
		case "joint":
			return "Joint";
		case "end-stop":
			return "End stop";
		case "end-pulley":
			return "End pulley";
		case "glider":
			return "Glider";
		case "master-carrier":
			return "Master carrier";
		case "cord":
			return "Cord";
		case "tensioner":
			return "Cord tensioner";
		case "screw":
			return "Screw";
		case "plug":
			return "Plug";
		case "board-fixing":
			return "Fixing for plasterboard";
		case "fixing-by-trial":
			return "Fixing, kind by trial hole";
		case "cloth":
			return figures.name === "" ? "Cloth, none chosen" : `Cloth: ${figures.name}`;
		case "lining":
			return `Lining: ${figures.name}`;
		case "heading-tape":
			return `Heading tape, ${figures.heading}`;
		case "hook":
			return "Hook";
	}
}

function whyOf(part: Part, length: Show): string {
	const { kind, figures } = part;
	const from = part.from.map(sourceName).join(" and ");
	switch (kind) {
		case "track":
			return `${from} cut from it`;
		case "bracket":
		case "ceiling-bracket":
			return `one each at ${from}`;
		case "joint-bracket":
			return `one each at ${from}, where pieces meet`;
		case "bracket-base":
			return `one each under ${from}`;
		case "joint":
			return `one at ${from}`;
		case "end-stop":
		case "end-pulley":
			return `one at each end of the track ${PRACTICE}`;
		case "glider":
			return figures.length === undefined
				? `${from}: one at either edge of each part, and no further apart than the hooks`
				: `along ${length(Number(figures.length))} of track, no further apart than ${length(Number(figures.spacing))}`;
		case "master-carrier":
			return `one at each leading edge of ${from} ${PRACTICE}; where two meet, one of them has the overlap arm`;
		case "cord":
			return cordWhy(figures, length);
		case "tensioner":
			return "one for the cord's loop";
		case "screw":
		case "plug":
		case "board-fixing":
			return holesWhy(part);
		case "fixing-by-trial":
			return `${holesWhy(part)}: what the wall is made of is not known`;
		case "cloth":
			if (figures.unknown === "no-cloth") return `${from}: choose a cloth`;
			return figures.unknown === undefined ? `cut drops of ${from}` : `${from}: the drop is not given`;
		case "lining":
			return figures.unknown === undefined ? `drops of ${from} with turnings` : `${from}: the drop is not given`;
		case "heading-tape":
			return `flat cloth of ${from}, side turnings too ${PRACTICE}`;
		case "hook":
			return `one for each glider of ${from}`;
	}
}

function cordWhy({ inTrack, hangs, unknown }: Part["figures"], length: Show): string {
	const track = `along the track there and back ${length(Number(inTrack))}`;
	if (unknown === "no-height") return `${track}; how far it hangs is not known while the track has no height`;
	if (unknown === "track-too-low") return `${track}; the track is too low for a loop`;
	return `${track}, down and up again ${length(Number(hangs))} each, and knots ${PRACTICE}`;
}

function holesWhy({ from, figures }: Part): string {
	const brackets = from.filter(({ of }) => of === "brackets").map(sourceName);
	return [
		...brackets.map((name) => `${figures.each} each for ${name}`),
		...(Number(figures.tensioner) > 0 ? [`${figures.tensioner} for the cord's tensioner ${PRACTICE}`] : []),
	].join(", ");
}

function sourceName(source: PartSource): string {
	switch (source.of) {
		case "track":
			return "the track";
		case "cord":
			return "the cord";
		case "draw":
			return source.count === 1 ? "the one curtain" : "the pair";
		case "pieces":
			return `${source.names.length === 1 ? "piece" : "pieces"} ${source.names.join(", ")}`;
		default: {
			const word = { brackets: "bracket", joints: "joint", curtains: "curtain" }[source.of];
			return `${word}${source.indexes.length === 1 ? "" : "s"} ${rangesOf(source.indexes)}`;
		}
	}
}

/** Places in a list as people count them, from 1: "1–4, 6". */
export function rangesOf(indexes: readonly number[]): string {
	const ranges: [number, number][] = [];
	for (const index of indexes.toSorted((a, b) => a - b)) {
		const last = ranges.at(-1);
		if (last !== undefined && index === last[1] + 1) last[1] = index;
		else ranges.push([index, index]);
	}
	return ranges.map(([from, to]) => (from === to ? `${from + 1}` : `${from + 1}–${to + 1}`)).join(", ");
}
