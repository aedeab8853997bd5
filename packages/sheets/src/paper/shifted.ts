import type { Item, Mark } from "./drawing.ts";
import { moved, type PaperPoint } from "./place.ts";

/** The same item `right` and `down` mm from where it was. */
export function shifted<I extends Item | Mark>(item: I, right: number, down: number): I {
	const to = (p: PaperPoint) => moved(p, right, down);
	switch (item.kind) {
		case "text":
			return { ...item, at: to(item.at) };
		case "circle":
			return { ...item, centre: to(item.centre) };
		case "path":
			return { ...item, vertices: item.vertices.map((each) => ({ ...each, at: to(each.at) })) };
		case "hatch":
			return { ...item, outline: item.outline.map((each) => ({ ...each, at: to(each.at) })) };
		case "window": {
			const { left, top, right: end, bottom } = item.hole;
			return { ...item, hole: { left: left + right, top: top + down, right: end + right, bottom: bottom + down } };
		}
	}
}
