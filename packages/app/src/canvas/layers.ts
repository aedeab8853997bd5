import type { Desk, Toolbox } from "@baywright/editor";
import { hangingNow, opened, shareOpened } from "../desk/opened.ts";
import type { LayerPlan } from "./easel.ts";
import type { EdgeHandle } from "./edge-hand.ts";
import { stackKey } from "./labels/track-notes.ts";
import { paintBends } from "./paint/bends.ts";
import { paintBrackets } from "./paint/brackets.ts";
import { paintFindings, paintTrouble } from "./paint/findings.ts";
import { paintHandles } from "./paint/handles.ts";
import { paintHighlight } from "./paint/highlight.ts";
import { paintJoints } from "./paint/joints.ts";
import { type Labelled, paintLabels } from "./paint/labels.ts";
import { paintLeadingEdges } from "./paint/leading-edges.ts";
import { type Loupe, paintLoupe } from "./paint/loupe.ts";
import { paintNoDrill } from "./paint/no-drill.ts";
import { paintObstacles } from "./paint/obstacles.ts";
import { paintOpenings } from "./paint/openings.ts";
import { paintSheet } from "./paint/sheet.ts";
import { paintSketch } from "./paint/sketch.ts";
import { paintStackBack } from "./paint/stack-back.ts";
import { paintSurvey } from "./paint/survey.ts";
import { paintTip, type Tip } from "./paint/tip.ts";
import { paintCuts, paintTrack } from "./paint/track.ts";
import { paintWalls } from "./paint/walls.ts";
import type { Picture } from "./picture.ts";
import type { Painter } from "./scene.ts";

/** The labels, without those of stacks whose curtains are not drawn back; the others keep their places, and folds may run across them. */
function asOpened(picture: Picture): Pick<Labelled, "layout" | "overFolds"> {
	const layout = picture.layout();
	const now = opened.getState();
	const drawn = picture.scene().plan.curtains.flatMap((_, curtain) => (shareOpened(now, curtain) < 1 ? [curtain] : []));
	if (drawn.length === 0) return { layout };
	const notBack = drawn.map((curtain) => layout.byKey.get(stackKey(curtain)));
	return { layout: { labels: layout.labels.filter((label) => !notBack.includes(label)) }, overFolds: true };
}

/** Bottom to top. */
export const PLAN_LAYERS = ["sheet", "drawing", "live"] as const;

/** The plan's layers: the sheet moves only with the view, the drawing with the bay, what is live with the pointer. */
export function planLayers(
	picture: Picture,
	desk: () => Desk,
	toolbox: () => Toolbox,
	tip: () => Tip | null,
	loupe: () => Loupe | null,
	head: () => number,
	edges: () => readonly EdgeHandle[],
): readonly LayerPlan[] {
	const drawn = (name: string, painter: Painter) => ({
		name,
		paint: (pen: CanvasRenderingContext2D) => painter(pen, picture.scene()),
	});
	/** What is live, seen once for each drawing of the layer: its first painter looks, the others take what it saw. */
	let seen: Live | null = null;
	const live = (): Live => {
		seen ??= look();
		return seen;
	};
	const look = () => {
		const { selection, hover } = desk();
		return {
			...picture.scene(),
			layout: picture.layout(),
			selection,
			hover,
			chosen: selection?.kind === "finding" ? selection.index : null,
			tip: tip(),
			sketch: toolbox().sketch,
			loupe: loupe(),
			head: head(),
		};
	};
	type Live = ReturnType<typeof look>;
	return [
		{ name: "sheet", painters: [drawn("dots", paintSheet)] },
		{
			name: "drawing",
			painters: [
				drawn("walls", paintWalls),
				drawn("openings", paintOpenings),
				drawn("no-drill", paintNoDrill),
				drawn("obstacles", paintObstacles),
				{
					name: "stack-back",
					paint: (pen) => {
						const scene = picture.scene();
						paintStackBack(pen, { ...scene, hanging: hangingNow(scene.plan, opened.getState()) });
					},
				},
				drawn("track", paintTrack),
				drawn("bends", paintBends),
				drawn("brackets", paintBrackets),
				drawn("joints", paintJoints),
				drawn("cuts", paintCuts),
				{
					name: "survey",
					paint: (pen) => paintSurvey(pen, { ...picture.scene(), layout: picture.layout() }),
				},
				{
					name: "labels",
					paint: (pen) => paintLabels(pen, { ...asOpened(picture), palette: picture.scene().palette }),
				},
			],
		},
		{
			name: "live",
			painters: [
				{
					name: "highlight",
					paint: (pen) => {
						seen = null;
						paintHighlight(pen, live());
					},
				},
				{ name: "trouble", paint: (pen) => paintTrouble(pen, live()) },
				{ name: "handles", paint: (pen) => paintHandles(pen, live()) },
				{
					name: "leading-edges",
					paint: (pen) => paintLeadingEdges(pen, { ...live(), edges: edges(), held: opened.getState().held }),
				},
				{ name: "findings", paint: (pen) => paintFindings(pen, live()) },
				{ name: "sketch", paint: (pen) => paintSketch(pen, live()) },
				{ name: "loupe", paint: (pen) => paintLoupe(pen, live()) },
				{ name: "tip", paint: (pen) => paintTip(pen, live()) },
			],
		},
	];
}
