import { USUAL_WINDOW } from "@baywright/editor";
import type { Bay } from "@baywright/setout";

/** A height above the floor, mm, and whence it is known: given by somebody, following from what is given, or only assumed so that it can be drawn. */
export interface Level {
	readonly mm: number;
	readonly known: "given" | "derived" | "assumed";
}

export interface Span {
	readonly bottom: Level;
	readonly top: Level;
}

export interface Heights {
	readonly ceiling: Level;
	readonly track: Level;
	/** Lower edge of the curtains; none where the track has none. */
	readonly hem: Level;
	/** Sill and head, as bottom and top. */
	readonly openings: readonly Span[];
	readonly obstacles: readonly Span[];
}

/** Of the track above the head of an ordinary window, where nobody says either, mm (common practice, no source). */
const ABOVE_HEAD = 100;

/** An ordinary room where nobody says how high it is, mm (common practice, no source), and what it leaves above the highest thing that is known. */
const USUAL_CEILING = 2400;
const ABOVE_ALL = 150;

/** A track is not drawn nearer to a ceiling that is given than this, mm. */
const UNDER_CEILING = 40;

/** Curtains whose drop nobody says hang to just above the floor, mm (common practice, no source). */
const OFF_FLOOR = 12;

/** Every height of a bay as it is drawn. `planned`: the track's height as planned, null while nothing says it. */
export function heightsOf(bay: Bay, planned: number | null): Heights {
	const track = trackLevel(bay, planned);
	const openings = bay.openings.map(({ sill, head }): Span => {
		const top = head ?? Math.max(USUAL_WINDOW.head, (sill ?? 0) + LEAST_GLASS);
		const bottom = sill ?? Math.min(USUAL_WINDOW.sill, top - LEAST_GLASS);
		return { bottom: level(bottom, sill), top: level(top, head) };
	});
	const known = [track.mm, ...openings.map(({ top }) => top.mm), ...bay.obstacles.map(({ top }) => top ?? 0)];
	const ceiling = level(bay.ceiling ?? Math.max(USUAL_CEILING, Math.max(...known) + ABOVE_ALL), bay.ceiling);
	return {
		ceiling,
		track,
		hem: hemLevel(bay, track),
		openings,
		obstacles: bay.obstacles.map(({ bottom, top }) => ({
			bottom: { mm: bottom ?? 0, known: "given" },
			top: { mm: top ?? ceiling.mm, known: top === null ? ceiling.known : "given" },
		})),
	};
}

/** mm of glass that an opening of unknown height is drawn with at least. */
const LEAST_GLASS = 300;

function trackLevel({ track, ceiling }: Bay, planned: number | null): Level {
	if (track.height !== null) return { mm: track.height, known: "given" };
	if (planned !== null) return { mm: planned, known: "derived" };
	const usual = USUAL_WINDOW.head + ABOVE_HEAD;
	const mm = ceiling === null ? usual : Math.max(0, Math.min(usual, ceiling - UNDER_CEILING));
	return { mm, known: "assumed" };
}

function hemLevel({ curtains }: Bay, track: Level): Level {
	const drops = curtains.flatMap(({ drop }) => (drop === null ? [] : [drop]));
	if (drops.length > 0) return { mm: Math.max(0, track.mm - Math.max(...drops)), known: "given" };
	return { mm: Math.min(OFF_FLOOR, track.mm), known: "assumed" };
}

const level = (mm: number, said: number | null): Level => ({ mm, known: said === null ? "assumed" : "given" });
