import type { ScreenPoint } from "@baywright/editor";
import type { Palette } from "../palette.ts";
import { lineHeight, type Measure } from "../text.ts";
import type { Box, Stroke } from "./box.ts";
import type { Line } from "./clip.ts";
import type { Dimension, NoteLabel, NoteLine } from "./label.ts";
import type { Wish } from "./place.ts";

/** A place beside which a note may stand, and which way. */
export interface Anchor {
	readonly at: ScreenPoint;
	/** Unit direction away from what the note is about. */
	readonly away: ScreenPoint;
	/** px that the note keeps from `at`. */
	readonly clear: number;
}

export interface Note {
	readonly key: string;
	readonly importance: number;
	readonly lines: readonly NoteLine[];
	/** Best first. */
	readonly anchors: readonly Anchor[];
	readonly colour: keyof Palette;
	readonly dimension?: Dimension;
	/** Only right beside an anchor: further off it would seem to be about something else. */
	readonly near?: true;
}

/** px further off, nearest first; from LEADER_FROM on a leader leads back. */
const DISTANCES = [0, 14, 32, 56] as const;
const LEADER_FROM = 32;

/** Radians by which a note may stand to one side. */
const SIDES = [0, -0.5, 0.5, -1, 1] as const;

const PAD = 3;

/** Wants a note near one of its anchors: every side at each distance before going further off. */
export function noteWish(note: Note, measure: Measure): Wish<NoteLabel> {
	const halfWidth = Math.max(...note.lines.map(({ text, face }) => measure(text, face))) / 2 + PAD;
	const halfHeight = note.lines.reduce((sum, { face }) => sum + lineHeight(face), 0) / 2;
	const perDistance = note.anchors.length * SIDES.length;
	return {
		key: note.key,
		importance: note.importance,
		spot(choice) {
			const far = DISTANCES[Math.floor(choice / perDistance)];
			if (far === undefined || (note.near && far > 0)) return null;
			const within = choice % perDistance;
			const anchor = note.anchors[Math.floor(within / SIDES.length)] as Anchor;
			const away = turned(anchor.away, SIDES[within % SIDES.length] as number);
			const { box, leader } = besideAnchor(anchor, away, far, halfWidth, halfHeight);
			return {
				kind: "note",
				lines: note.lines,
				colour: note.colour,
				box,
				leader,
				dimension: note.dimension ?? null,
				under: dimensionStrokes(note.dimension),
				strokes: leader === null ? [] : [{ ...leader, half: 1, leader: true }],
			};
		},
	};
}

function dimensionStrokes(dimension: Dimension | undefined): Stroke[] {
	if (dimension === undefined) return [];
	return [dimension.line, ...dimension.from].map((line) => ({ ...line, half: 1, leader: false }));
}

/** A box `far` px further from its anchor than it must be, and the leader that leads back from it. */
export function besideAnchor(
	{ at, clear }: Anchor,
	away: ScreenPoint,
	far: number,
	halfWidth: number,
	halfHeight: number,
): { readonly box: Box; readonly leader: Line | null } {
	const support = Math.abs(away.left) * halfWidth + Math.abs(away.top) * halfHeight;
	const out = clear + far + support;
	const box = { left: at.left + away.left * out, top: at.top + away.top * out, halfWidth, halfHeight, turn: 0 };
	if (far < LEADER_FROM) return { box, leader: null };
	const edge = Math.min(
		halfWidth / Math.max(Math.abs(away.left), 1e-9),
		halfHeight / Math.max(Math.abs(away.top), 1e-9),
	);
	const end = out - edge - 2;
	const from = { left: at.left + away.left * clear, top: at.top + away.top * clear };
	return { box, leader: { from, to: { left: at.left + away.left * end, top: at.top + away.top * end } } };
}

export function turned({ left, top }: ScreenPoint, by: number): ScreenPoint {
	const cos = Math.cos(by);
	const sin = Math.sin(by);
	return { left: left * cos - top * sin, top: left * sin + top * cos };
}
