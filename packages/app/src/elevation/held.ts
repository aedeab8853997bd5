import { type Desk, KIND_NAMES, type Selection } from "@baywright/editor";
import { type Bay, formatLength, type LengthUnit, wallName } from "@baywright/setout";
import type { Heights, Level } from "./heights.ts";

export type BoxKind = "opening" | "obstacle";
export type BoxPart = "whole" | "left" | "right" | "bottom" | "top";

/** What can be taken hold of in the elevation. */
export type Held =
	| { readonly kind: "track" | "ceiling" }
	| { readonly kind: BoxKind; readonly index: number; readonly part: BoxPart };

export const sameHeld = (a: Held | null, b: Held | null): boolean =>
	a === b ||
	(a !== null &&
		b !== null &&
		a.kind === b.kind &&
		(!isBox(a) || (isBox(b) && a.index === b.index && a.part === b.part)));

export const isBox = (held: Held | null): held is Held & { readonly kind: BoxKind } =>
	held !== null && (held.kind === "opening" || held.kind === "obstacle");

/** What the tables and the plan know of what is held; the track's height and the ceiling are no things of theirs. */
export const selectionOf = (held: Held | null): Selection | null =>
	isBox(held) ? { kind: held.kind, index: held.index } : null;

/** Tab goes through all of it: the parts of each thing on the walls from left to right. */
const PARTS: readonly BoxPart[] = ["whole", "bottom", "top", "left", "right"];

/** Everything that can be held, in the order in which Tab walks it. */
export function stopsOfElevation(bay: Bay): Held[] {
	const boxes = [
		...bay.openings.map((it, index) => ({ kind: "opening" as const, index, wall: it.wall, from: it.from })),
		...bay.obstacles.map((it, index) => ({ kind: "obstacle" as const, index, wall: it.wall, from: it.from })),
	].sort((a, b) => a.wall - b.wall || a.from - b.from);
	return [
		{ kind: "ceiling" },
		{ kind: "track" },
		...boxes.flatMap(({ kind, index }) => PARTS.map((part): Held => ({ kind, index, part }))),
	];
}

/** "the opening in the front wall", "the socket in wall 2–3". */
function boxName(bay: Bay, kind: BoxKind, index: number): string {
	const box = kind === "opening" ? bay.openings[index] : bay.obstacles[index];
	const wall = wallName(box?.wall ?? 0, bay.corners.length - 1);
	const what = kind === "opening" ? "opening" : KIND_NAMES[bay.obstacles[index]?.kind ?? "other"];
	const where = wall.startsWith("wall ") ? wall : `the ${wall}`;
	return kind === "opening" ? `the ${what} in ${where}` : `the ${what} on ${where}`;
}

/** What a history calls a move of it. */
export function moveName(bay: Bay, held: Held): string {
	if (!isBox(held)) return `height of the ${held.kind}`;
	const name = boxName(bay, held.kind, held.index);
	if (held.part === "whole") return `move ${name}`;
	if (held.part === "left" || held.part === "right") return `widen ${name}`;
	return `${edgeName(held.kind, held.part)} of ${name}`;
}

/** What it is called where it is chosen. */
export function heldName(bay: Bay, held: Held): string {
	if (!isBox(held)) return `height of the ${held.kind}`;
	const name = boxName(bay, held.kind, held.index);
	if (held.part === "whole") return name;
	return `${held.part === "left" || held.part === "right" ? `${held.part} edge` : edgeName(held.kind, held.part)} of ${name}`;
}

const edgeName = (kind: BoxKind, part: "bottom" | "top"): string =>
	kind === "obstacle" ? part : part === "bottom" ? "sill" : "head";

export interface HeldReading {
	readonly name: string;
	readonly figure: string;
}

/** The figures of what is held. `room`: length of its wall's face, mm. */
export function heldReadings(
	bay: Bay,
	heights: Heights,
	held: Held,
	unit: LengthUnit,
	room: (wall: number) => number,
): HeldReading[] {
	const show = (mm: number) => formatLength(mm, unit);
	if (!isBox(held)) {
		const level = heights[held.kind];
		const readings: HeldReading[] = [{ name: held.kind, figure: levelText(level, unit) }];
		if (held.kind === "track") readings.push({ name: "under the ceiling", figure: below(heights, level, unit) });
		return readings;
	}
	const box = held.kind === "opening" ? bay.openings[held.index] : bay.obstacles[held.index];
	const span = held.kind === "opening" ? heights.openings[held.index] : heights.obstacles[held.index];
	if (!box || !span) return [];
	const along: HeldReading[] = [
		{ name: "from the left", figure: show(box.from) },
		{ name: "width", figure: show(box.to - box.from) },
		{ name: "from the right", figure: show(room(box.wall) - box.to) },
	];
	const up: HeldReading[] = [
		{ name: edgeName(held.kind, "bottom"), figure: edgeText(bay, held, "bottom", span.bottom, unit) },
		{ name: edgeName(held.kind, "top"), figure: edgeText(bay, held, "top", span.top, unit) },
	];
	if (held.part === "left" || held.part === "right") return along;
	if (held.part === "bottom" || held.part === "top")
		return [...up, { name: "height", figure: show(span.top.mm - span.bottom.mm) }];
	return [...along, ...up];
}

function edgeText(
	bay: Bay,
	held: Held & { readonly kind: BoxKind },
	part: "bottom" | "top",
	level: Level,
	unit: LengthUnit,
): string {
	const obstacle = held.kind === "obstacle" ? bay.obstacles[held.index] : undefined;
	if (obstacle !== undefined && obstacle[part] === null) return part === "bottom" ? "floor" : "ceiling";
	return levelText(level, unit);
}

/** A height in words: "2150", or "not given". */
export const levelText = ({ mm, known }: Level, unit: LengthUnit): string =>
	known === "assumed" ? "not given" : formatLength(mm, unit);

const below = ({ ceiling }: Heights, level: Level, unit: LengthUnit): string =>
	ceiling.known === "assumed" || level.known === "assumed" ? "not given" : formatLength(ceiling.mm - level.mm, unit);

/** As on the desk: what another part of the screen has chosen is held as a whole here. */
export function heldBy(selection: Desk["selection"], before: Held | null): Held | null {
	if (selection === null) return isBox(before) ? null : before;
	if (selection.kind !== "opening" && selection.kind !== "obstacle") return null;
	if (isBox(before) && before.kind === selection.kind && before.index === selection.index) return before;
	return { kind: selection.kind, index: selection.index, part: "whole" };
}
