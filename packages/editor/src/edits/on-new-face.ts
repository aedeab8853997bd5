import type { Bay } from "@baywright/setout";

/** Parts of a mm that places along a face keep. */
const KEPT = 1000;

/**
 * What stands on a wall whose bow changes: every place keeps its share of the way along the face, and what has a width keeps it, its
 * middle moving by share. So a window in the middle stays in the middle, as wide as it is.
 */
export function onNewFace(bay: Bay, wall: number, rise: number): Bay {
	const before = faceLength(bay, wall, bay.walls[wall]?.rise ?? 0);
	const after = faceLength(bay, wall, rise);
	if (!(before > 0) || before === after) return bay;
	const share = after / before;
	const stretch = (from: number, to: number): readonly [number, number] => {
		const width = Math.min(to - from, after);
		const left = Math.max(0, Math.min(after - width, ((from + to) / 2) * share - width / 2));
		return [kept(left), kept(left + width)];
	};
	const stretched = <Item extends { readonly wall: number; readonly from: number; readonly to: number }>(
		item: Item,
	) => {
		if (item.wall !== wall) return item;
		const [from, to] = stretch(item.from, item.to);
		return { ...item, from, to };
	};
	const placed = <Item extends { readonly wall: number; readonly at: number }>(item: Item): Item =>
		item.wall === wall ? { ...item, at: kept(item.at * share) } : item;
	const { track } = bay;
	return {
		...bay,
		walls: bay.walls.map((it, i) =>
			i === wall ? { ...it, noDrill: it.noDrill.map(([from, to]) => [...stretch(from, to)] as [number, number]) } : it,
		),
		openings: bay.openings.map(stretched),
		obstacles: bay.obstacles.map(stretched),
		track: {
			...track,
			start: track.start === null ? null : placed(track.start),
			end: track.end === null ? null : placed(track.end),
			joints: typeof track.joints === "string" ? track.joints : track.joints.map(placed),
			brackets: track.brackets.map(placed),
		},
	};
}

/** Along the face of a wall with this rise, mm: an arc of half-angle 2·atan(2h/c) over the chord c. */
function faceLength({ corners }: Bay, wall: number, rise: number): number {
	const [left, right] = [corners[wall], corners[wall + 1]];
	if (!left || !right) return 0;
	const chord = Math.hypot(right[0] - left[0], right[1] - left[1]);
	const half = 2 * Math.atan((2 * Math.abs(rise)) / chord);
	return half === 0 ? chord : (chord * half) / Math.sin(half);
}

/** Down, so that what ends with the wall does not come to end beyond it. */
const kept = (at: number): number => Math.floor(at * KEPT + 1e-6) / KEPT;
