import { SLIGHT_TURN } from "@baywright/geometry";
import { type Bay, CABLE_ZONE, isAccessory } from "@baywright/setout";
import type { Heights } from "./heights.ts";
import { alongOf, type Unrolled } from "./unrolled.ts";

/** A stretch of the unrolled faces in which concealed cables are to be expected, mm. Figures of Great Britain. */
export interface CableBand {
	readonly kind: "wall-top" | "corner" | "accessory";
	readonly from: number;
	readonly to: number;
	readonly bottom: number;
	readonly top: number;
}

/** Degrees short of straight under which two faces make no angle. */
const SLIGHT = (SLIGHT_TURN * 180) / Math.PI;

/** Along the wall tops where the ceiling's height is given, beside corners and ends, and in line with switches, sockets and sensors. */
export function cableBands(bay: Bay, unrolled: Unrolled, heights: Heights): CableBand[] {
	const { ceiling } = heights;
	const whole = { bottom: 0, top: ceiling.mm };
	const top: CableBand[] =
		ceiling.known === "given"
			? [
					{
						kind: "wall-top",
						from: 0,
						to: unrolled.length,
						bottom: Math.max(0, ceiling.mm - CABLE_ZONE),
						top: ceiling.mm,
					},
				]
			: [];
	const corners = unrolled.corners
		.filter(({ kind, angle }) => kind === "end" || Math.abs(180 - angle) >= SLIGHT)
		.map(
			({ at }): CableBand => ({
				kind: "corner",
				from: Math.max(0, at - CABLE_ZONE),
				to: Math.min(unrolled.length, at + CABLE_ZONE),
				...whole,
			}),
		);
	const accessories = bay.obstacles.flatMap((box): CableBand[] => {
		const wall = unrolled.walls[box.wall];
		if (!isAccessory(box) || wall === undefined) return [];
		const [from, to] = [alongOf(unrolled, box.wall, box.from), alongOf(unrolled, box.wall, box.to)];
		const upright: CableBand = { kind: "accessory", from, to, ...whole };
		if (box.bottom === null || box.top === null) return [upright];
		return [upright, { kind: "accessory", from: wall.from, to: wall.to, bottom: box.bottom, top: box.top }];
	});
	return [...top, ...corners, ...accessories];
}
