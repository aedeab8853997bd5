import type { Label } from "../canvas/labels/label.ts";
import { type Habits, placeLabels } from "../canvas/labels/place.ts";
import type { Held } from "./held.ts";
import type { Ladder } from "./ladder.ts";
import { noteWishes } from "./notes.ts";
import { chosenWishes, runWishes } from "./runs.ts";
import type { ElevationScene } from "./scene.ts";
import { takenBy } from "./taken.ts";

/** Every figure of one frame but the ladder's, placed so that none covers another or runs off. */
export function labelsOf(scene: ElevationScene, ladder: Ladder, chosen: Held | null, habits: Habits): Label[] {
	const wishes = [...runWishes(scene, ladder), ...chosenWishes(scene, ladder, chosen), ...noteWishes(scene)];
	return [...placeLabels<Label>(wishes, takenBy(scene, ladder), scene.size, habits).values()];
}
