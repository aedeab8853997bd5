import { type FitRule, type FittedTrack, fitTrack, type Point, readChain } from "@baywright/geometry";

/** Walls one after another from the origin along +x, turning right by these degrees between their faces; rises in mm. */
export interface Walls {
	readonly lengths: readonly number[];
	readonly turns?: readonly number[];
	readonly rises?: readonly number[];
	/** One for all walls, or one each. */
	readonly projection: number | readonly number[];
}

export const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** Least radius 100 both ways, 300 preferred, nothing else asked. */
const RULE: FitRule = {
	leastRadius: { internal: 100, external: 100 },
	preferredRadius: 300,
	straightBesideBend: 0,
	endStraight: 0,
	clearance: 15,
	setRadii: new Map(),
};

export function chainOf({ lengths, turns = [], rises = [] }: Walls) {
	const half = (wall: number) => 2 * Math.atan((2 * (rises[wall] ?? 0)) / (lengths[wall] as number));
	let heading = 0;
	let at: Point = { x: 0, y: 0 };
	const corners = [at];
	lengths.forEach((length, wall) => {
		at = { x: at.x + length * Math.cos(heading), y: at.y + length * Math.sin(heading) };
		corners.push(at);
		if (wall + 1 < lengths.length) heading -= rad(turns[wall] ?? 0) + half(wall) + half(wall + 1);
	});
	const chain = readChain(corners, rises);
	if (!chain.ok) throw new Error(JSON.stringify(chain.faults));
	return chain.value;
}

/** Fits a track from end to end. */
function layOut(walls: Walls, rule: Partial<FitRule> = {}) {
	const chain = chainOf(walls);
	const last = chain.walls.length - 1;
	const { projection } = walls;
	return fitTrack(
		chain,
		chain.walls.map((_, wall) => (typeof projection === "number" ? projection : (projection[wall] as number))),
		{ start: { wall: 0, at: 0 }, end: { wall: last, at: chain.walls[last]?.faceLength as number } },
		{ ...RULE, ...rule },
	);
}

export function fitted(walls: Walls, rule: Partial<FitRule> = {}): FittedTrack {
	const track = layOut(walls, rule);
	if (!track.ok) throw new Error(JSON.stringify(track.faults));
	return track.value;
}

export const faultsOf = (walls: Walls, rule: Partial<FitRule> = {}) => {
	const track = layOut(walls, rule);
	return track.ok ? [] : track.faults;
};
