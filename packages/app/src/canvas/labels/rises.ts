import { type ScreenPoint, toScreen } from "@baywright/editor";
import { midpoint, type Point } from "@baywright/geometry";
import type { Scene } from "../scene.ts";
import { halfTrack } from "../track-shape.ts";
import { onFace, type WallShape } from "../wall-shape.ts";
import { riseFigure } from "./figures.ts";
import type { Note } from "./notes.ts";

/** px: flatter bows, and bows over shorter chords, have no dimension for their rise. */
const LEAST_RISE = 4;
const SHORTEST = 70;

/** px between the track, or the chord, and the figure in the room. */
const OFF = 12;

/** The rise of every bowed wall: from the middle of its chord to its face. */
export function riseNotes(scene: Scene): Note[] {
	return scene.walls.flatMap((shape) =>
		shape === null || shape.arc === null ? [] : riseNote(scene, shape, shape.arc.rise),
	);
}

function riseNote(scene: Scene, shape: WallShape, rise: number): Note[] {
	const { plan, view } = scene;
	if (Math.abs(rise) * view.scale < LEAST_RISE || shape.chord.length * view.scale < SHORTEST) return [];
	const [left, right] = [shape.face[0], shape.face.at(-1)] as [Point, Point];
	const crown = toScreen(view, onFace(shape, shape.length / 2).at);
	const chord = toScreen(view, midpoint(left, right));
	const figure = riseFigure(scene, shape.wall, rise);
	const colour = figure.taped ? "ink" : "soft";
	const room: ScreenPoint = { left: shape.chord.uy, top: shape.chord.ux };
	const pastTrack = plan.path === null ? 0 : (plan.projections[shape.wall] ?? 0) * view.scale + halfTrack(plan, view);
	const below = { at: chord, away: room, clear: OFF };
	const within = { at: crown, away: room, clear: Math.max(pastTrack, rise * view.scale) + OFF };
	return [
		{
			key: `rise ${shape.wall}`,
			importance: 58 + (figure.taped ? 10 : 0),
			lines: [{ text: `rise ${figure.text}`, face: figure.face, colour }],
			anchors: rise > 0 ? [below, within] : [within],
			colour,
			dimension: {
				line: { from: chord, to: crown },
				from: [{ from: toScreen(view, left), to: toScreen(view, right) }],
			},
		},
	];
}
