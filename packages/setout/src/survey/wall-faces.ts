import {
	type ChainFault,
	type Crossing,
	distance,
	type Point,
	readChain,
	type WallChain,
	wallCrossings,
} from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";
import { ROOM_ANGLE } from "../job/angle.ts";
import type { Bay } from "../job/bay-schema.ts";

export interface WallFaces {
	/** Null where the corners make no chain of walls. */
	readonly chain: WallChain | null;
	readonly findings: readonly Finding[];
}

/** The wall faces of a bay, or why they are none. */
export function wallFaces(bay: Bay): WallFaces {
	const points = bay.corners.map(([x, y]): Point => ({ x, y }));
	const rises = bay.walls.map(({ rise }) => rise);
	const read = readChain(points, rises);
	if (!read.ok) return { chain: null, findings: read.faults.map((fault) => chainFinding(fault, points, rises)) };
	return { chain: read.value, findings: wallCrossings(read.value).map(crossingFinding) };
}

function chainFinding(fault: ChainFault, points: readonly Point[], rises: readonly number[]): Finding {
	const of = (code: Finding["code"], where: Finding["where"], figures: Finding["figures"]) => ({
		code,
		where,
		figures,
		remedies: [],
	});
	switch (fault.kind) {
		case "too-few-corners":
			return of("too-few-corners", {}, { count: fault.count });
		case "coordinate-out-of-range":
			return of("coordinate-out-of-range", { corner: fault.corner }, { coordinate: fault.coordinate });
		case "wall-too-short":
			return of("wall-too-short", { wall: fault.wall }, { length: fault.length });
		case "bow-too-deep":
			return of("bow-too-deep", { wall: fault.wall }, { rise: fault.rise, greatest: fault.greatest });
		case "corner-folded":
			return of(
				"corner-folded",
				{ corner: fault.corner },
				{ angle: fault.angle, ...bowThatFolds(fault.corner, fault.angle, points, rises) },
			);
	}
}

/** The bow without which a corner would not be folded back, and the room angle that it would then have; nothing where no one bow is to blame. */
function bowThatFolds(corner: number, angle: number, points: readonly Point[], rises: readonly number[]) {
	const straightened = [corner - 1, corner].map((wall) => {
		const chord = distance(points[wall] as Point, points[wall + 1] as Point);
		// A bow takes half of its own angle, 4·atan(2h/c), off the turn at each of its ends; one into the room adds it.
		const turn = (Math.atan((2 * (rises[wall] ?? 0)) / chord) * 360) / Math.PI;
		return { bow: wall, straight: angle - turn };
	});
	const fromFold = ({ straight }: { straight: number }) =>
		Math.min(straight - ROOM_ANGLE.least, ROOM_ANGLE.greatest - straight);
	const best = straightened.reduce((a, b) => (fromFold(b) > fromFold(a) ? b : a));
	return fromFold(best) > 0 && (rises[best.bow] ?? 0) !== 0 ? best : {};
}

const crossingFinding = ({ first, second, at }: Crossing): Finding => ({
	code: "walls-cross",
	where: { wall: first, at },
	figures: { other: second },
	remedies: [],
});
