import { SLIGHT_TURN, type WallChain } from "@baywright/geometry";
import type { Bracket } from "../bay-plan.ts";
import type { Bay, Obstacle } from "../job/bay-schema.ts";
import { PLATE_REACH } from "../track/bracket-room.ts";
import type { AccessoryZone, CableZone, CornerZone, WallTopZone } from "./fixing.ts";

/**
 * How far from the top of a wall, and from the angle of two walls, concealed cables are to be expected, mm. Figures of Great Britain: BS 7671,
 * regulation 522.6.202, read in secondary sources.
 */
export const CABLE_ZONE = 150;

/** What a concealed cable runs to. */
const ACCESSORIES: readonly Obstacle["kind"][] = ["switch", "socket", "sensor"];

/** Of obstacles by their wall, those that cables run to. */
export type Accessories = ReadonlyMap<number, readonly { readonly index: number; readonly box: Obstacle }[]>;

export function accessoriesOf(obstacles: readonly Obstacle[]): Accessories {
	const onWalls = new Map<number, { readonly index: number; readonly box: Obstacle }[]>();
	obstacles.forEach((box, index) => {
		if (!isAccessory(box)) return;
		const others = onWalls.get(box.wall);
		if (others === undefined) onWalls.set(box.wall, [{ index, box }]);
		else others.push({ index, box });
	});
	return onWalls;
}

export const isAccessory = ({ kind }: Pick<Obstacle, "kind">): boolean => ACCESSORIES.includes(kind);

/** The zones that the holes of one bracket on a wall lie in. `half`: of the bracket along the track, mm. */
export function cableZones(
	bracket: Pick<Bracket, "wall" | "fromLeftCorner" | "fromRightCorner">,
	chain: WallChain,
	{
		ceiling,
		height,
		half,
	}: { readonly ceiling: Bay["ceiling"]; readonly height: number | null; readonly half: number },
	accessories: Accessories,
): CableZone[] {
	const { wall, fromLeftCorner, fromRightCorner } = bracket;
	return [
		...wallTop(ceiling, height),
		...besideCorner(chain, wall, fromLeftCorner, half),
		...besideCorner(chain, wall + 1, fromRightCorner, half),
		...(accessories.get(wall) ?? []).flatMap(({ index, box }) => inLineWith(box, index, fromLeftCorner, height, half)),
	];
}

function wallTop(ceiling: number | null, height: number | null): WallTopZone[] {
	if (ceiling === null || height === null) return [{ kind: "wall-top", below: null, sure: false }];
	const below = ceiling - height;
	if (below > CABLE_ZONE + PLATE_REACH) return [];
	return [{ kind: "wall-top", below, sure: below <= CABLE_ZONE }];
}

/** Beyond the ends of the bay another wall most likely stands at an angle, but nobody has said so. */
function besideCorner({ turns, walls }: WallChain, corner: number, distance: number, half: number): CornerZone[] {
	const isEnd = corner === 0 || corner === walls.length;
	const isAngle = isEnd || Math.abs(turns[corner] as number) >= SLIGHT_TURN;
	if (!isAngle || distance > CABLE_ZONE + half) return [];
	return [{ kind: "corner", corner, distance, sure: !isEnd && distance <= CABLE_ZONE }];
}

function inLineWith(
	{ kind: accessory, from, to, bottom, top }: Obstacle,
	obstacle: number,
	at: number,
	height: number | null,
	half: number,
): AccessoryZone[] {
	const zone = (lies: AccessoryZone["lies"], sure: boolean): AccessoryZone[] => [
		{ kind: "accessory", obstacle, accessory, lies, sure },
	];
	const knowsHeights = height !== null && bottom !== null && top !== null;
	const isInLine = at >= from && at <= to;
	// Straight above and below it, over the whole height of the wall.
	if (isInLine || (at >= from - half && at <= to + half)) {
		if (!knowsHeights) return zone("in-line", isInLine);
		return zone(height > top ? "above" : height < bottom ? "below" : "level", isInLine);
	}
	// Level with it, over the whole length of the wall.
	if (!knowsHeights) return zone("level", false);
	if (height < bottom - PLATE_REACH || height > top + PLATE_REACH) return [];
	return zone("level", height >= bottom && height <= top);
}
