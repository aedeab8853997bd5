import { type ScreenPoint, toScreen } from "@baywright/editor";
import { type FindingMark, findingMarks } from "../finding-place.ts";
import type { Scene } from "../scene.ts";
import { type SurveyLayer, surveyLayer, surveyNotes, surveyStrokes } from "../survey-layer.ts";
import type { Box } from "./box.ts";
import type { BadgeLabel, Label } from "./label.ts";
import { besideAnchor, noteWish, turned } from "./notes.ts";
import { type Habits, placeLabels, type Wish } from "./place.ts";
import { runWishes } from "./runs.ts";
import { takenBy } from "./taken.ts";
import { trackNotes } from "./track-notes.ts";

/** All writing of one frame, placed. */
export interface Layout {
	readonly labels: readonly Label[];
	/** The same by what they are about: "run 1", "corner 2". */
	readonly byKey: ReadonlyMap<string, Label>;
	readonly marks: readonly FindingMark[];
	/** Null where the survey has nothing to show. */
	readonly survey: SurveyLayer | null;
}

/** Half the size of a finding's mark, px. */
export const BADGE = 12;

/** Radius of the hatched ring at the place of a refusal, px. */
export const TROUBLE = 22;

/** px round a clearance that fails, where its arrows are. */
const ARROWS = 12;

/** px further off its place, nearest first; round about it, radians from straight up. */
const BADGE_DISTANCES = [0, 14, 32, 58] as const;
const BADGE_TURNS = [0, 0.6, -0.6, 1.2, -1.2, 2, -2, 2.8] as const;

/** Places every label of a frame. `over`: what stands over the drawing. */
export function layOut(scene: Scene, over: readonly Box[], habits: Habits): Layout {
	const marks = findingMarks(scene);
	const survey = surveyLayer(scene, over);
	const wishes: Wish<Label>[] = [
		...marks.map((mark, i) => badgeWish(scene, mark, i)),
		...runWishes(scene),
		...[...surveyNotes(survey), ...trackNotes(scene)].map((note) => noteWish(note, scene.measure)),
	];
	const key = survey?.key ? [survey.key.box] : [];
	const taken = takenBy(scene, [...over, ...key, ...ringsOf(scene, marks)], surveyStrokes(survey));
	const placed = placeLabels(wishes, taken, scene.size, habits);
	marks.forEach((mark, i) => {
		// A finding is never left out: where nothing is free its mark stands on its place.
		if (!placed.has(badgeKey(i))) placed.set(badgeKey(i), badgeAt(toScreen(scene.view, mark.at), i));
	});
	return { labels: [...placed.values()], byKey: placed, marks, survey };
}

/** Where hatched rings stand. */
function ringsOf({ view }: Scene, marks: readonly FindingMark[]): Box[] {
	return marks.flatMap((mark) => {
		if (mark.severity !== "refusal" || mark.wall !== null) return [];
		if (mark.clearance) return [{ ...toScreen(view, mark.at), halfWidth: ARROWS, halfHeight: ARROWS, turn: 0 }];
		return [{ ...toScreen(view, mark.at), halfWidth: TROUBLE, halfHeight: TROUBLE, turn: 0 }];
	});
}

function badgeWish(scene: Scene, mark: FindingMark, index: number): Wish<BadgeLabel> {
	const at = toScreen(scene.view, mark.at);
	return {
		key: badgeKey(index),
		importance: mark.severity === "note" ? 100 : 110,
		spot(choice) {
			const far = BADGE_DISTANCES[Math.floor(choice / BADGE_TURNS.length)];
			if (far === undefined) return null;
			const away = turned({ left: 0, top: -1 }, BADGE_TURNS[choice % BADGE_TURNS.length] as number);
			const clear = mark.severity === "refusal" && mark.wall === null ? TROUBLE + 2 : 14;
			const { box } = besideAnchor({ at, away, clear }, away, far, BADGE, BADGE);
			return { ...badgeAt(box, index), leader: { from: at, to: box } };
		},
	};
}

const badgeKey = (index: number): string => `finding ${index}`;

const badgeAt = ({ left, top }: ScreenPoint, mark: number): BadgeLabel => ({
	kind: "badge",
	mark,
	box: { left, top, halfWidth: BADGE, halfHeight: BADGE, turn: 0 },
	strokes: [],
	leader: null,
});
