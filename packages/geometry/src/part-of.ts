import { radians } from "./angle.ts";
import type { Segment } from "./path.ts";
import { pointAt } from "./station.ts";

/** What of a segment lies between two stations, mm; the segment itself where all of it does, null where nothing does. */
export function partOf(segment: Segment, from: number, to: number): Segment | null {
	const start = Math.max(from, segment.start);
	const end = Math.min(to, segment.start + segment.length);
	if (!(end > start)) return null;
	if (start === segment.start && end === segment.start + segment.length) return segment;
	const path = { segments: [segment], length: segment.length };
	const left = pointAt(path, start);
	const right = pointAt(path, end);
	if (left === null || right === null) return null;
	const part = { from: left.at, to: right.at, start, length: end - start, heading: left.heading };
	if (segment.kind === "straight") return { ...segment, ...part };
	return { ...segment, ...part, turn: radians((segment.turn * (end - start)) / segment.length) };
}
