import type { Desk } from "@baywright/editor";
import type { LayerPlan } from "../canvas/easel.ts";
import type { EdgeHandle } from "../canvas/edge-hand.ts";
import { paintLabels } from "../canvas/paint/labels.ts";
import { paintLeadingEdges } from "../canvas/paint/leading-edges.ts";
import { paintTip, type Tip } from "../canvas/paint/tip.ts";
import { opened } from "../desk/opened.ts";
import { paintNoDrill, paintObstacles, paintOpenings } from "./paint/boxes.ts";
import { paintCables } from "./paint/cables.ts";
import { paintCurtains } from "./paint/curtains.ts";
import { paintFoot, paintLadder } from "./paint/ladder.ts";
import { paintHandles, paintHighlights } from "./paint/live.ts";
import { paintTrack, paintTrackBends, paintTrackBrackets, paintTrackEnds } from "./paint/track.ts";
import {
	paintCornerLines,
	paintCornerNumbers,
	paintCornerShade,
	paintFaces,
	paintFloorAndCeiling,
} from "./paint/walls.ts";
import type { Frame, Picture } from "./picture.ts";
import type { Paint } from "./scene.ts";

export const ELEVATION_LAYERS = ["drawing", "live"] as const;

/** The painters of the elevation, bottom to top: the building, what hangs on it, what is written; then what is live. */
export function elevationLayers(
	picture: Picture,
	desk: () => Desk,
	tip: () => Tip | null,
	edges: () => readonly EdgeHandle[],
): LayerPlan[] {
	const framed = (name: string, paint: (pen: CanvasRenderingContext2D, frame: Frame) => void) => ({
		name,
		paint(pen: CanvasRenderingContext2D) {
			const frame = picture.frame();
			if (frame !== null) paint(pen, frame);
		},
	});
	const drawn = (name: string, paint: Paint) => framed(name, (pen, { scene }) => paint(pen, scene));
	const lit = () => {
		const { selection, hover } = desk();
		return { selection, hover, chosen: picture.chosen, under: picture.under, handles: picture.handles() };
	};
	return [
		{
			name: "drawing",
			painters: [
				drawn("faces", paintFaces),
				drawn("shade", paintCornerShade),
				drawn("cables", paintCables),
				drawn("openings", paintOpenings),
				drawn("obstacles", paintObstacles),
				drawn("corners", paintCornerLines),
				drawn("floor", paintFloorAndCeiling),
				drawn("curtains", paintCurtains),
				drawn("track", paintTrack),
				drawn("bends", paintTrackBends),
				drawn("no-drill", paintNoDrill),
				drawn("brackets", paintTrackBrackets),
				drawn("ends", paintTrackEnds),
				drawn("foot", paintFoot),
				framed("ladder", (pen, { scene, ladder }) => paintLadder(pen, { ...scene, ladder })),
				drawn("numbers", paintCornerNumbers),
				framed("labels", (pen, frame) => paintLabels(pen, { layout: frame, palette: picture.palette })),
			],
		},
		{
			name: "live",
			painters: [
				framed("highlight", (pen, { scene }) => paintHighlights(pen, { ...scene, ...lit() })),
				framed("handles", (pen, { scene }) => paintHandles(pen, { ...scene, ...lit() })),
				{
					name: "leading-edges",
					paint: (pen) =>
						paintLeadingEdges(pen, { edges: edges(), held: opened.getState().held, palette: picture.palette }),
				},
				framed("tip", (pen, { scene }) => paintTip(pen, { ...scene, tip: tip(), head: 0 })),
			],
		},
	];
}
