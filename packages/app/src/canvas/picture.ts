import type { Desk, Size, Viewport } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import type { Box } from "./labels/box.ts";
import { type Layout, layOut } from "./labels/layout.ts";
import type { Habits } from "./labels/place.ts";
import type { Palette } from "./palette.ts";
import { type Scene, type Subject, subjectOf } from "./scene.ts";
import type { Measure } from "./text.ts";

/** What is on screen now, worked out at most once a frame. */
export interface Picture {
	readonly view: Viewport;
	readonly size: Size;
	scene(): Scene;
	layout(): Layout;
	look(view: Viewport): void;
	resize(size: Size, over: readonly Box[]): void;
	dress(palette: Palette): void;
	/** The next layout is made afresh: fonts have come in, or a drag is over and labels may go back to their best places. */
	relabel(): void;
}

export function createPicture(
	desk: () => Desk,
	first: Palette,
	measure: Measure,
	/** Whether the survey is at hand. */
	isSurveying: () => boolean,
): Picture {
	let view: Viewport = { scale: 0.2, left: 0, top: 0 };
	let size: Size = { width: 1, height: 1 };
	let over: readonly Box[] = [];
	let palette = first;
	let subject: Subject | null = null;
	let scene: Scene | null = null;
	let layout: Layout | null = null;
	const habits: Habits = new Map();

	function subjectNow(): Subject {
		const { shown, plans, bay: index } = desk();
		const bay = shown.bays[index] as Bay;
		const plan = plans[index] as BayPlan;
		const unit = shown.display.length;
		const surveying = isSurveying();
		if (subject === null || subject.bay !== bay || subject.plan !== plan || subject.unit !== unit)
			subject = subjectOf(bay, plan, unit, surveying);
		else if (subject.surveying !== surveying) subject = { ...subject, surveying };
		return subject;
	}

	function sceneNow(): Scene {
		const now = subjectNow();
		const same =
			scene !== null &&
			scene.bay === now.bay &&
			scene.plan === now.plan &&
			scene.unit === now.unit &&
			scene.surveying === now.surveying &&
			scene.view === view &&
			scene.size === size &&
			scene.palette === palette;
		if (scene === null || !same) {
			scene = { ...now, view, size, palette, measure };
			layout = null;
		}
		return scene;
	}

	return {
		get view() {
			return view;
		},
		get size() {
			return size;
		},
		scene: sceneNow,
		layout() {
			const now = sceneNow();
			layout ??= layOut(now, over, habits);
			return layout;
		},
		look(next) {
			if (next.scale !== view.scale) habits.clear();
			view = next;
		},
		resize(next, covered) {
			size = next;
			over = covered;
			habits.clear();
			layout = null;
		},
		dress(next) {
			palette = next;
		},
		relabel() {
			habits.clear();
			layout = null;
		},
	};
}
