/** How the strip lies on screen: pieces end to end on one line with gaps between. */
export interface StripView {
	/** CSS px per mm. */
	readonly scale: number;
	/** px from the left edge of the drawing to the left end of the first piece. */
	readonly left: number;
}

/** px between two pieces, whatever the scale: they are apart. */
export const PIECE_GAP = 34;

/** px kept free at either end of the strip. */
export const STRIP_MARGIN = 26;

/** px per mm: a millimetre is easily seen. */
const GREATEST_SCALE = 6;

/** A place on one piece, mm from its left cut end. */
export interface PiecePlace {
	readonly piece: number;
	readonly mm: number;
}

/** px from the left edge. `lengths`: cut lengths of the pieces, mm. */
export function placeOn(view: StripView, lengths: readonly number[], { piece, mm }: PiecePlace): number {
	return view.left + piece * PIECE_GAP + (lengthBefore(lengths, piece) + mm) * view.scale;
}

/** The place on a piece nearest to `left` px. */
export function placeUnder(view: StripView, lengths: readonly number[], left: number): PiecePlace {
	let piece = 0;
	while (piece + 1 < lengths.length && left > placeOn(view, lengths, { piece: piece + 1, mm: 0 }) - PIECE_GAP / 2)
		piece++;
	const mm = (left - placeOn(view, lengths, { piece, mm: 0 })) / view.scale;
	return { piece, mm: Math.max(0, Math.min(lengths[piece] ?? 0, mm)) };
}

/** The view that shows all pieces. */
export function fitStrip(lengths: readonly number[], width: number): StripView {
	const total = lengthBefore(lengths, lengths.length);
	const room = width - 2 * STRIP_MARGIN - Math.max(0, lengths.length - 1) * PIECE_GAP;
	return { scale: total > 0 ? Math.max(room, 1) / total : 1, left: STRIP_MARGIN };
}

/** Zooms by `factor` about `left` px: what lies there stays there as far as the strip's ends allow. */
export function zoomStrip(
	view: StripView,
	lengths: readonly number[],
	width: number,
	left: number,
	factor: number,
): StripView {
	const whole = fitStrip(lengths, width).scale;
	const scale = Math.max(whole, Math.min(Math.max(GREATEST_SCALE, whole), view.scale * factor));
	const held = placeUnder(view, lengths, left);
	const now = placeOn({ scale, left: view.left }, lengths, held);
	const before = placeOn(view, lengths, held);
	return holdStrip({ scale, left: view.left + before - now }, lengths, width);
}

/** Keeps the strip's ends at the edges of the drawing or beyond. */
export function holdStrip(view: StripView, lengths: readonly number[], width: number): StripView {
	const extent =
		lengthBefore(lengths, lengths.length) * view.scale + Math.max(0, lengths.length - 1) * PIECE_GAP + 2 * STRIP_MARGIN;
	const least = Math.min(STRIP_MARGIN, width - extent + STRIP_MARGIN);
	return { scale: view.scale, left: Math.max(least, Math.min(STRIP_MARGIN, view.left)) };
}

function lengthBefore(lengths: readonly number[], piece: number): number {
	let sum = 0;
	for (let i = 0; i < piece; i++) sum += lengths[i] ?? 0;
	return sum;
}
