import type { ScreenPoint } from "@baywright/editor";
import { type Doubt, doubtsOf, middleOf } from "./doubts.ts";
import { type Ellipses, ellipsesOf, onEllipse } from "./ellipses.ts";
import { type Box, boxesOverlap, type Stroke } from "./labels/box.ts";
import type { Anchor, Note } from "./labels/notes.ts";
import type { Scene } from "./scene.ts";
import { lineHeight } from "./text.ts";

/** What the survey knows, as it is drawn on the plan. */
export interface SurveyLayer {
	readonly ellipses: Ellipses | null;
	readonly key: EllipseKey | null;
	readonly doubts: readonly Doubt[];
}

/** Says to which scale the ellipses are drawn. */
export interface EllipseKey {
	readonly text: string;
	readonly box: Box;
}

/** px: from the edges of the drawing, round its writing, and what its own little ellipse takes before it. */
const FROM_EDGE = 10;
const PAD = 7;
export const KEY_SIGN = 30;

/** px by which the key keeps clear of what stands over the drawing. */
const APART = 4;

/** Null where there is nothing to show, or another stage is at hand and all readings agree. */
export function surveyLayer(scene: Scene, over: readonly Box[]): SurveyLayer | null {
	const { plan, surveying } = scene;
	if (plan.survey === null || (plan.survey.closes && !surveying)) return null;
	const ellipses = ellipsesOf(scene);
	return { ellipses, key: ellipses && keyOf(scene, ellipses, over), doubts: doubtsOf(scene) };
}

/** At the lower left, above whatever stands there already. */
function keyOf({ size, measure }: Scene, { times }: Ellipses, over: readonly Box[]): EllipseKey {
	const text = `ellipses × ${times}, 95 %`;
	const halfWidth = (KEY_SIGN + measure(text, "small")) / 2 + PAD;
	const halfHeight = lineHeight("small") / 2 + PAD - 2;
	const at = (top: number): Box => ({ left: FROM_EDGE + halfWidth, top, halfWidth, halfHeight, turn: 0 });
	const lowest = at(size.height - FROM_EDGE - halfHeight);
	const under = over.filter((each) => boxesOverlap(each, lowest));
	const top = Math.min(lowest.top, ...under.map((each) => each.top - each.halfHeight - APART - halfHeight));
	return { text, box: at(top) };
}

/** Points of an ellipse's outline that stand for it where labels keep off it. */
const STOPS = 20;

/** px to either side of a line. */
const HALF = 2;

/** What labels keep off: the ellipses' outlines and the reading that is suspected. The faint lines of others may run under writing. */
export function surveyStrokes(layer: SurveyLayer | null): Stroke[] {
	if (layer === null) return [];
	const outlines = (layer.ellipses?.each ?? []).map((ellipse) =>
		Array.from({ length: STOPS + 1 }, (_, i) => onEllipse(ellipse, i / STOPS)),
	);
	return [...outlines, ...layer.doubts.filter(({ degree }) => degree === "suspect").map(({ line }) => line)].flatMap(
		(points) => points.slice(1).map((to, i) => ({ from: points[i] as ScreenPoint, to, half: HALF, leader: false })),
	);
}

/** px from a line to its note. */
const OFF_LINE = 5;

/** By how much each reading in doubt is out, beside the middle of its line or further along it. */
export function surveyNotes(layer: SurveyLayer | null): Note[] {
	return (layer?.doubts ?? []).map(({ reading, degree, line, text }) => ({
		key: `doubt ${reading}`,
		importance: degree === "suspect" ? 105 : 30,
		lines: [{ text, face: degree === "suspect" ? "name" : "small", colour: "warn" }],
		anchors: anchorsAlong(line),
		colour: "warn",
	}));
}

function anchorsAlong(line: readonly ScreenPoint[]): Anchor[] {
	const { at, along } = middleOf(line);
	const [from, to] = [line[0] as ScreenPoint, line.at(-1) as ScreenPoint];
	const straight = line.length === 2;
	const places = straight ? [0, 0.12, -0.12, 0.25, -0.25] : [0];
	return places.flatMap((share) => {
		const place = { left: at.left + (to.left - from.left) * share, top: at.top + (to.top - from.top) * share };
		return [1, -1].map((side) => ({
			at: place,
			away: { left: -along.top * side, top: along.left * side },
			clear: OFF_LINE,
		}));
	});
}
