import { type Point, toDegrees } from "@baywright/geometry";
import { isExternal, observedOf } from "./bay-network.ts";
import { foresee } from "./linear.ts";
import { startOf } from "./network.ts";
import type { ReadingOf } from "./reading.ts";

/** A bay as it stands: corners and rises, mm, the room on the right of travel. */
export interface StandingBay {
	readonly corners: readonly Point[];
	readonly rises: readonly number[];
}

/** What a perfect tape, bevel or rule reads of a bay, mm or degrees; null where the bay has no such place or nothing can be read there. */
export function readOff({ corners, rises }: StandingBay, reading: ReadingOf): number | null {
	const standing = { corners, rises, readings: [] };
	const observed = observedOf(standing, reading);
	if (observed === null) return null;
	const network = {
		points: corners.map(({ x, y }) => ({ x, y, goes: "nowhere" as const })),
		parameters: corners.slice(1).map((_, wall) => ({ value: rises[wall] ?? 0, fixed: true })),
		observations: [],
	};
	const { value } = foresee(observed, startOf(network));
	if (!Number.isFinite(value)) return null;
	if (reading.kind === "angle") return toDegrees(value);
	if (reading.kind !== "chord") return value;
	// Past an external corner one mark is on a straightedge that carries its face on.
	return 2 * reading.arm * Math.sin((isExternal(standing, reading.corner) ? value - Math.PI : value) / 2);
}
