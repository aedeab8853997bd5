import { KIND_NAMES, type ScreenPoint } from "@baywright/editor";
import { formatLength } from "@baywright/setout";
import { angleFigure } from "../canvas/labels/figures.ts";
import type { Label, NoteLine } from "../canvas/labels/label.ts";
import { type Anchor, type Note, noteWish } from "../canvas/labels/notes.ts";
import type { Wish } from "../canvas/labels/place.ts";
import { lineHeight, type Measure } from "../canvas/text.ts";
import { CORNER, cornerPlace, cornerRadius } from "./reach.ts";
import { type ElevationScene, halfTrackHeight, onScreen, type ScreenBox, screenBox } from "./scene.ts";
import { stationAlong } from "./track-run.ts";

/** What corners, things on the walls, pieces and curtains have to say. */
export function noteWishes(scene: ElevationScene): Wish<Label>[] {
	const notes = [...openingNotes(scene), ...pieceNotes(scene), ...curtainNotes(scene)];
	return [
		...cornerWishes(scene),
		...obstacleWishes(scene),
		...cableWishes(scene),
		...notes.map((note) => noteWish(note, scene.measure)),
	];
}

const LEFT: ScreenPoint = { left: -1, top: 0 };
const RIGHT: ScreenPoint = { left: 1, top: 0 };
const UP: ScreenPoint = { left: 0, top: -1 };
const DOWN: ScreenPoint = { left: 0, top: 1 };

/** The room angle beside the corner's number, and that a corner is external, for that turns everything. */
function cornerWishes(scene: ElevationScene): Wish<Label>[] {
	return scene.unrolled.corners.flatMap((corner, index): Wish<Label>[] => {
		if (corner.kind === "end") return [];
		const at = cornerPlace(scene, corner.at);
		const radius = cornerRadius(scene, index);
		const figure = angleFigure(scene, index, corner.angle);
		const anchors = [RIGHT, LEFT].map((away): Anchor => ({ at, away, clear: radius + 3 }));
		// A ring too small for its number leaves it to the note.
		const number = radius < CORNER.numbered ? `${index}: ` : "";
		const wish = (text: string) => {
			const line: NoteLine = { text, face: figure.taped ? "taped" : "small", colour: "soft" };
			const note: Note = { key: `corner ${index}`, importance: 60, lines: [line], anchors, colour: "soft", near: true };
			return noteWish(note, scene.measure);
		};
		const angle = wish(`${number}${figure.text}`);
		return [corner.kind === "external" ? either(wish(`${number}external ${figure.text}`), angle) : angle];
	});
}

/** Breadth and height in the middle of the glass. */
function openingNotes(scene: ElevationScene): Note[] {
	const { bay, unit } = scene;
	return scene.openings.flatMap((box, index): Note[] => {
		const opening = bay.openings[index];
		if (box === null || opening === undefined) return [];
		const show = (mm: number) => formatLength(mm, unit);
		const wide = show(opening.to - opening.from);
		const said = opening.sill !== null && opening.head !== null;
		const text = said ? `${wide} × ${show(opening.head - opening.sill)}` : `${wide} wide`;
		const screen = screenBox(scene, box);
		const anchors = insideOf(screen);
		const room = screen.right - screen.left - 10;
		const lines: NoteLine[] =
			scene.measure(text, "small") <= room
				? [{ text, face: "small", colour: "soft" }]
				: scene.measure(wide, "small") <= room
					? [{ text: wide, face: "small", colour: "soft" }]
					: [];
		if (lines.length === 0) return [];
		return [{ key: `opening ${index}`, importance: 30, lines, anchors, colour: "soft", near: true }];
	});
}

/** In the middle of a box, a little above or below it. */
function insideOf({ left, right, top, bottom }: ScreenBox): Anchor[] {
	const middle = { left: (left + right) / 2, top: (top + bottom) / 2 };
	const half = lineHeight("small") / 2;
	const aside = Math.min(12, (right - left) * 0.1);
	const quarter = (right - left) * 0.24;
	return [0, -0.2, 0.2, 0.34, -0.34].flatMap((share) =>
		[0, aside, -aside, -quarter, quarter].map((by) => ({
			at: { left: middle.left + by, top: middle.top + share * (bottom - top) },
			away: UP,
			clear: -half,
		})),
	);
}

/** What an obstacle is and from where to where it reaches; where that has no room, what it is. */
function obstacleWishes(scene: ElevationScene): Wish<Label>[] {
	const { bay, unit, measure } = scene;
	return scene.obstacles.flatMap((box, index): Wish<Label>[] => {
		const obstacle = bay.obstacles[index];
		if (box === null || obstacle === undefined) return [];
		const show = (mm: number | null, none: string) => (mm === null ? none : formatLength(mm, unit));
		const name: NoteLine = { text: KIND_NAMES[obstacle.kind], face: "small", colour: "ink" };
		const reaches = `${show(obstacle.bottom, "floor")} to ${show(obstacle.top, "ceiling")}`;
		const screen = screenBox(scene, box);
		const note = (lines: readonly NoteLine[]): Note => ({
			key: `obstacle ${index}`,
			importance: 50,
			lines,
			anchors: [...within(screen, lines, measure), ...beside(screen)],
			colour: "soft",
			near: true,
		});
		const whole = note([name, { text: reaches, face: "small", colour: "soft" }]);
		return [either(noteWish(whole, measure), noteWish(note([name]), measure))];
	});
}

/** In the middle of a box that has room for the lines. */
function within({ left, right, top, bottom }: ScreenBox, lines: readonly NoteLine[], measure: Measure): Anchor[] {
	const height = lines.reduce((sum, { face }) => sum + lineHeight(face), 0);
	const width = Math.max(...lines.map(({ text, face }) => measure(text, face)));
	if (right - left < width + 12 || bottom - top < height + 6) return [];
	return [{ at: { left: (left + right) / 2, top: (top + bottom) / 2 }, away: UP, clear: -height / 2 }];
}

/** Over a box, beside it at several heights, under it. */
function beside({ left, right, top, bottom }: ScreenBox): Anchor[] {
	const across = (left + right) / 2;
	const heights = [0.5, 0.75, 0.25, 0.9].map((share) => top + (bottom - top) * share);
	return [
		{ at: { left: across, top }, away: UP, clear: 5 },
		...heights.flatMap((height): Anchor[] => [
			{ at: { left: right, top: height }, away: RIGHT, clear: 5 },
			{ at: { left, top: height }, away: LEFT, clear: 5 },
		]),
		{ at: { left: across, top: bottom }, away: DOWN, clear: 5 },
	];
}

/** Every way of the first, then every way of the second. */
function either(first: Wish<Label>, second: Wish<Label>): Wish<Label> {
	let ways = Number.POSITIVE_INFINITY;
	return {
		...first,
		spot(choice) {
			const spot = choice < ways ? first.spot(choice) : null;
			if (spot !== null) return spot;
			ways = Math.min(ways, choice);
			return second.spot(choice - ways);
		},
	};
}

/** Each of several pieces under its stretch of track. */
function pieceNotes(scene: ElevationScene): Note[] {
	const { run, plan, heights, unit } = scene;
	if (run === null || plan.pieces.length < 2) return [];
	return plan.pieces.map(({ name, from, to, cutLength }, index): Note => {
		const [left, right] = [stationAlong(run, from), stationAlong(run, to)];
		const anchors = [0.5, 0.35, 0.65, 0.2, 0.8].map((share): Anchor => {
			const at = onScreen(scene, left + (right - left) * share, heights.track.mm);
			return { at, away: DOWN, clear: halfTrackHeight(scene) + 10 };
		});
		const text = `${name}, cut ${formatLength(cutLength, unit)}`;
		const lines: NoteLine[] = [{ text, face: "small", colour: "ink" }];
		return { key: `piece ${index}`, importance: 40, lines, anchors, colour: "ink", near: true };
	});
}

/** How much of the track each stack takes up; that nobody has said how far curtains hang. */
function curtainNotes(scene: ElevationScene): Note[] {
	const { hanging, heights, plan, unit } = scene;
	return hanging.flatMap(({ from, to, opened }, index): Note[] => {
		const top = onScreen(scene, 0, heights.track.mm).top;
		const foot = onScreen(scene, 0, heights.hem.mm).top;
		const [left, right] = [onScreen(scene, from, 0).left, onScreen(scene, to, 0).left];
		const beside = (share: number): Anchor[] => [
			{ at: { left: right, top: top + (foot - top) * share }, away: RIGHT, clear: 6 },
			{ at: { left, top: top + (foot - top) * share }, away: LEFT, clear: 6 },
		];
		const stack = plan.stackBack[index];
		if (opened === 1 && stack !== undefined) {
			const text = `stack-back ${formatLength(stack.to - stack.from, unit)}`;
			const lines: NoteLine[] = [{ text, face: "small", colour: "stack" }];
			const anchors = [0.82, 0.9, 0.5].flatMap(beside);
			return [{ key: `stack ${index}`, importance: 35, lines, anchors, colour: "stack", near: true }];
		}
		if (heights.hem.known !== "assumed" || index > 0) return [];
		const lines: NoteLine[] = [{ text: "drop not given", face: "drawn", colour: "stack" }];
		const anchors = [0.86, 0.75].flatMap((down) =>
			[0.5, 0.7, 0.3].map((share): Anchor => {
				const at = { left: left + (right - left) * share, top: top + (foot - top) * down };
				return { at, away: UP, clear: 0 };
			}),
		);
		return [{ key: "drop", importance: 34, lines, anchors, colour: "stack", near: true }];
	});
}

/** Once, in or beside a band: what the dots are, and whose figures. */
function cableWishes(scene: ElevationScene): Wish<Label>[] {
	const { cables } = scene;
	if (cables.length === 0) return [];
	const inOrder = cables.toSorted((a, b) => b.to - b.from - (a.to - a.from));
	const anchors = inOrder.flatMap((band): Anchor[] => {
		const wide = band.to - band.from > band.top - band.bottom;
		const shares = [0.5, 0.3, 0.7, 0.15, 0.85];
		return shares.map((share) => {
			const along = wide ? share : 1;
			const up = wide ? 0.5 : share;
			const at = onScreen(
				scene,
				band.from + (band.to - band.from) * along,
				band.bottom + (band.top - band.bottom) * up,
			);
			return wide ? { at, away: UP, clear: -lineHeight("small") / 2 } : { at, away: RIGHT, clear: 5 };
		});
	});
	const note = (...texts: string[]): Note => ({
		key: "cables",
		importance: 25,
		lines: texts.map((text) => ({ text, face: "small", colour: "soft" })),
		anchors,
		colour: "soft",
		near: true,
	});
	const long = noteWish(note("cables may run here (GB figures)"), scene.measure);
	return [either(long, noteWish(note("cables may", "run here", "(GB figures)"), scene.measure))];
}
