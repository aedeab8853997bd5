import { type Bay, bendRecordText, readBendRecord, type WallPlace } from "@baywright/setout";
import { SAME_PIN } from "./on-track.ts";

type Span = Bay["fitted"]["spans"][number];
type FittedBracket = Bay["fitted"]["brackets"][number];

/** What was measured of a bracket that is up, mm; null takes a figure back, one left out stays as it was. */
export interface BracketMeasured {
	/** Along the wall face from its left corner. */
	readonly at?: number | null;
	/** Wall face to centre line. */
	readonly projection?: number | null;
}

/**
 * What a piece was cut to, mm; null = not cut yet. `sawnAtLeft` is what has come off its left end since: what is bent lies nearer to
 * it now; null where that is not known, and so no more where its bends lie.
 */
export function setCut(bay: Bay, piece: string, length: number | null, sawnAtLeft: number | null = 0): Bay {
	const others = bay.fitted.cut.filter((each) => each.piece !== piece);
	const cut = length === null ? others : [...others, { piece, length }];
	const done = sawnAtLeft === 0 ? bay.fitted.done : bay.fitted.done.map((text) => moved(text, piece, sawnAtLeft));
	return { ...bay, fitted: { ...bay.fitted, cut, done } };
}

function moved(text: string, piece: string, sawnAtLeft: number | null): string {
	const record = readBendRecord(text);
	if (record?.on?.piece !== piece) return text;
	const on = sawnAtLeft === null ? null : { piece, middle: record.on.middle - sawnAtLeft };
	return bendRecordText({ ...record, on });
}

/** The span taped from one wall to another, wherever its brackets were then; undefined where none was. */
export const spanAcross = ({ fitted }: Bay, from: number, to: number): Span | undefined =>
	fitted.spans.find((span) => span.from.wall === from && span.to.wall === to);

/** A span taped between two brackets, mm, in place of the one taped before; null takes it away. */
export function setSpan(bay: Bay, from: WallPlace, to: WallPlace, value: number | null): Bay {
	const others = bay.fitted.spans.filter((span) => span !== spanAcross(bay, from.wall, to.wall));
	const spans = value === null ? others : [...others, { from, to, value }];
	return { ...bay, fitted: { ...bay.fitted, spans } };
}

/**
 * A bracket as it was measured: in place of entry `index` of those fitted, or where that is null as one more. `planned` is where the plan
 * has it now; an entry keeps the place that it was first planned at. Once both figures are taken back the entry goes. A pin that held it
 * goes where it goes: left behind it would be a second bracket. So do the ends of spans that were taped to it.
 */
export function setFittedBracket(bay: Bay, index: number | null, planned: WallPlace, measured: BracketMeasured): Bay {
	const { brackets } = bay.fitted;
	const old = index === null ? undefined : brackets[index];
	const was = old ?? { ...planned, planned: planned.at, projection: null };
	const next = asMeasured(was, planned, measured);
	const isTakenBack = (measured.at === null || measured.projection === null) && isAsPlanned(next);
	const others = brackets.flatMap((each) => (each !== old ? [each] : isTakenBack ? [] : [next]));
	const along = <Place extends WallPlace>(place: Place): Place =>
		place.wall === was.wall && Math.abs(place.at - was.at) < SAME_PIN
			? { ...place, wall: next.wall, at: next.at }
			: place;
	const spans = bay.fitted.spans.map((span) => ({ ...span, from: along(span.from), to: along(span.to) }));
	return {
		...bay,
		track: { ...bay.track, brackets: bay.track.brackets.map(along) },
		fitted: { ...bay.fitted, spans, brackets: old === undefined && !isTakenBack ? [...others, next] : others },
	};
}

function asMeasured(was: FittedBracket, { wall, at }: WallPlace, measured: BracketMeasured): FittedBracket {
	const projection = measured.projection === undefined ? was.projection : measured.projection;
	if (measured.at === undefined) return { ...was, projection };
	// A hole that the plan has taken to another wall since was planned there, not here.
	const planned = was.wall === wall ? was.planned : at;
	if (measured.at !== null) return { wall, planned, at: measured.at, projection };
	return { wall, planned: planned ?? at, at: planned ?? at, projection };
}

const isAsPlanned = ({ planned, at, projection }: FittedBracket): boolean => projection === null && planned === at;
