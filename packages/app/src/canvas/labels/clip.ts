import type { ScreenPoint, Size } from "@baywright/editor";

export interface Line {
	readonly from: ScreenPoint;
	readonly to: ScreenPoint;
}

/** The part of a line on screen, `margin` px in from its edges (or out, where negative); null where none is. Liang and Barsky's way. */
export function clipLine(line: Line, size: Size, margin: number): Line | null {
	const { from, to } = line;
	if (within(from, size, margin) && within(to, size, margin)) return line;
	const left = to.left - from.left;
	const top = to.top - from.top;
	let enters = 0;
	let leaves = 1;
	const bounds: readonly (readonly [towards: number, room: number])[] = [
		[-left, from.left - margin],
		[left, size.width - margin - from.left],
		[-top, from.top - margin],
		[top, size.height - margin - from.top],
	];
	for (const [towards, room] of bounds) {
		if (towards === 0) {
			if (room < 0) return null;
		} else if (towards < 0) enters = Math.max(enters, room / towards);
		else leaves = Math.min(leaves, room / towards);
	}
	if (!(enters < leaves)) return null;
	const at = (share: number): ScreenPoint => ({ left: from.left + left * share, top: from.top + top * share });
	return { from: enters > 0 ? at(enters) : from, to: leaves < 1 ? at(leaves) : to };
}

const within = ({ left, top }: ScreenPoint, { width, height }: Size, margin: number): boolean =>
	left >= margin && top >= margin && left <= width - margin && top <= height - margin;
