import {
	type ChainFault,
	type Crossing,
	type Point,
	readChain,
	type WallChain,
	wallCrossings,
} from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import { risesOf } from "./rise.ts";

export interface WallFaces {
	/** Null where the corners make no chain of walls. */
	readonly chain: WallChain | null;
	readonly findings: readonly Finding[];
}

/** The bay's wall faces, corners as drawn and bows as taped where they are, or why they are no bay. */
export function wallFaces(bay: Bay): WallFaces {
	const points = bay.corners.map(([x, y]): Point => ({ x, y }));
	const read = readChain(points, risesOf(bay));
	if (!read.ok) return { chain: null, findings: read.faults.map(chainFinding) };
	return { chain: read.value, findings: wallCrossings(read.value).map(crossingFinding) };
}

function chainFinding(fault: ChainFault): Finding {
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
			return {
				code: "bow-too-deep",
				where: { wall: fault.wall },
				figures: { rise: fault.rise, greatest: fault.greatest },
				remedies: [flatterBow(fault.wall, fault.rise, fault.greatest)],
			};
		case "corner-folded":
			return of("corner-folded", { corner: fault.corner }, { angle: fault.angle });
	}
}

const flatterBow = (wall: number, rise: number, greatest: number): Remedy => {
	const value = Math.sign(rise) * Math.floor(greatest);
	return {
		action: "set-rise",
		figures: { wall, rise: value },
		change: [{ op: "replace", path: `/walls/${wall}/rise`, value }],
	};
};

const crossingFinding = ({ first, second, at }: Crossing): Finding => ({
	code: "walls-cross",
	where: { wall: first, at },
	figures: { other: second },
	remedies: [],
});
