/** What a corner is called: the ends by their side, the others by number. */
export function cornerName(corner: number, walls: number): string {
	if (corner === 0) return "the left end";
	return corner === walls ? "the right end" : `corner ${corner}`;
}

/** What a bend is called: by the corner that it goes round, or by the first and last of several. */
export function bendName(corners: readonly number[], walls: number): string {
	const [first, last] = [corners[0] ?? 0, corners.at(-1) ?? 0];
	return first === last ? cornerName(first, walls) : `corners ${first}–${last}`;
}

/** What a wall is called: by its place in a bay of up to three walls, else by the corners at its ends. */
export function wallName(wall: number, walls: number): string {
	if (walls === 1) return "wall";
	if (walls === 2) return wall === 0 ? "left wall" : "right wall";
	if (walls === 3) return `${["left", "front", "right"][wall] ?? "right"} wall`;
	return `wall ${end(wall, walls)}–${end(wall + 1, walls)}`;
}

function end(corner: number, walls: number): string {
	if (corner === 0) return "left end";
	return corner === walls ? "right end" : String(corner);
}
