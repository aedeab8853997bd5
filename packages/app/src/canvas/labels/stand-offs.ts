import { type ScreenPoint, toScreen } from "@baywright/editor";
import { footOnFace, pointOffFace } from "@baywright/geometry";
import { formatLength, type LengthUnit } from "@baywright/setout";
import type { Scene } from "../scene.ts";
import { halfTrack, madeBends } from "../track-shape.ts";
import type { Note } from "./notes.ts";

/** mm: a bend that stands off less than this follows the facet as near as anyone can tape. */
const LEAST = 1;

/** px: nearer together the leg and the bend are one line on screen. */
const LEAST_SEEN = 3;

/** px between the track and the figure. */
const OFF = 12;

/** How far a bend that bridges facets stands off where the leg along each of them would be. */
export function standOffNotes({ plan, view, unit }: Scene): Note[] {
	const { chain, bridged, projections } = plan;
	if (chain === null || bridged.length === 0) return [];
	const bends = madeBends(plan);
	return bridged.flatMap(({ wall, standOff }): Note[] => {
		const made = bends.find(({ bend }) => bend.corners.includes(wall) && bend.corners.includes(wall + 1));
		const face = chain.walls[wall];
		if (made === undefined || !face) return [];
		if (Math.abs(standOff) < LEAST || Math.abs(standOff) * view.scale < LEAST_SEEN) return [];
		const projection = projections[wall] ?? 0;
		// Where the bend runs along the facet, it is nearest to the leg, or furthest from it.
		const { at } = footOnFace(chain, wall, made.bend.centre);
		const on = (along: number, off: number): ScreenPoint => toScreen(view, pointOffFace(chain, wall, along, off));
		const leg = on(at, projection);
		const bend = on(at, projection + standOff);
		const room: ScreenPoint = { left: face.uy, top: face.ux };
		const roomMost = standOff > 0 ? bend : leg;
		return [
			{
				key: `stand-off ${wall}`,
				importance: 57,
				lines: [{ text: `stand-off ${signed(standOff, unit)}`, face: "small", colour: "soft" }],
				anchors: [{ at: roomMost, away: room, clear: halfTrack(plan, view) + OFF }],
				colour: "soft",
				dimension: {
					line: { from: leg, to: bend },
					from: [{ from: on(0, projection), to: on(face.length, projection) }],
				},
			},
		];
	});
}

/** With its sign: it is what comes on top of the projection or off it, not the distance from the wall. */
const signed = (standOff: number, unit: LengthUnit): string =>
	`${standOff < 0 ? "−" : "+"}${formatLength(Math.abs(standOff), unit)}`;
