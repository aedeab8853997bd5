import { KIND_NAMES, setObstacle, setOpening, USUAL_OBSTACLE, USUAL_WINDOW, wallLength } from "@baywright/editor";
import { type Bay, type Obstacle, type Opening, wallName } from "@baywright/setout";

/** A height above the floor, or a measure of something on a wall: what is taped besides the readings of the walls. */
export type HeightOf =
	| { readonly kind: "sill" | "head"; readonly opening: number }
	| { readonly kind: "ceiling" }
	| { readonly kind: "track" }
	| { readonly kind: "from" | "width" | "bottom" | "top" | "depth"; readonly obstacle: number };

/** Every height in the order of the work: the openings from the left, the ceiling, the track. */
export function heightsOfRoom({ openings }: Bay): HeightOf[] {
	const fromLeft = openings
		.map(({ wall, from }, opening) => ({ wall, from, opening }))
		.sort((a, b) => a.wall - b.wall || a.from - b.from);
	return [
		...fromLeft.flatMap(({ opening }): HeightOf[] => [
			{ kind: "sill", opening },
			{ kind: "head", opening },
		]),
		{ kind: "ceiling" },
		{ kind: "track" },
	];
}

/** Everything there is to tape of the obstacles, in their order. */
export const measuresOfObstacles = ({ obstacles }: Bay): HeightOf[] =>
	obstacles.flatMap((_, obstacle) => OF_OBSTACLE.map((kind): HeightOf => ({ kind, obstacle })));

const OF_OBSTACLE = ["from", "width", "bottom", "top", "depth"] as const;

/** So many measures has each obstacle. */
export const MEASURES = OF_OBSTACLE.length;

/** What it is as the job has it, mm; null where nobody has said. */
export function heightIn(bay: Bay, of: HeightOf): number | null {
	if (of.kind === "ceiling") return bay.ceiling;
	if (of.kind === "track") return bay.track.height;
	if ("opening" in of) return bay.openings[of.opening]?.[of.kind] ?? null;
	const obstacle = bay.obstacles[of.obstacle];
	if (obstacle === undefined) return null;
	return of.kind === "width" ? obstacle.to - obstacle.from : obstacle[of.kind];
}

/** Nobody has said it yet: nothing is set, or the very figure that a thing is given when it is put on a wall. */
export function isUnsaid(bay: Bay, of: HeightOf): boolean {
	const value = heightIn(bay, of);
	if (of.kind === "ceiling" || of.kind === "track") return value === null;
	if ("opening" in of) return value === null || value === USUAL_WINDOW[of.kind];
	const obstacle = bay.obstacles[of.obstacle];
	if (obstacle === undefined) return false;
	const { width, ...usual } = USUAL_OBSTACLE[obstacle.kind];
	if (of.kind === "from" || of.kind === "width") return obstacle.to - obstacle.from === width;
	return value === usual[of.kind];
}

/** `sill of opening 1, front wall`. */
export function heightName(bay: Bay, of: HeightOf): string {
	if (of.kind === "ceiling" || of.kind === "track") return `height of the ${of.kind}`;
	const walls = bay.walls.length;
	if ("opening" in of) {
		const name = `${of.kind} of opening ${of.opening + 1}`;
		return `${name}, ${wallName(bay.openings[of.opening]?.wall ?? 0, walls)}`;
	}
	return `${MEASURE_NAMES[of.kind]} of ${obstacleName(bay, of.obstacle)}`;
}

const MEASURE_NAMES = {
	from: "place",
	width: "width",
	bottom: "lower edge",
	top: "upper edge",
	depth: "depth",
} as const;

/** `the pipe, left wall`, numbered among several. */
export function obstacleName({ obstacles, walls }: Bay, index: number): string {
	const obstacle = obstacles[index];
	if (obstacle === undefined) return "the obstacle";
	const alike = obstacles.flatMap((each, i) => (each.kind === obstacle.kind && each.wall === obstacle.wall ? [i] : []));
	const number = alike.length > 1 ? ` ${alike.indexOf(index) + 1}` : "";
	return `the ${KIND_NAMES[obstacle.kind]}${number}, ${wallName(obstacle.wall, walls.length)}`;
}

/** The bay with it taken, mm. A thing that is moved along its wall keeps its width. */
export function withHeight(bay: Bay, of: HeightOf, mm: number): Bay {
	if (of.kind === "ceiling") return { ...bay, ceiling: mm };
	if (of.kind === "track") return { ...bay, track: { ...bay.track, height: mm } };
	if ("opening" in of) return setOpening(bay, of.opening, { [of.kind]: mm } as Partial<Opening>);
	const obstacle = bay.obstacles[of.obstacle];
	if (obstacle === undefined) return bay;
	return setObstacle(bay, of.obstacle, changeOf(bay, obstacle, of.kind, mm));
}

function changeOf(bay: Bay, { wall, from, to }: Obstacle, kind: (typeof OF_OBSTACLE)[number], mm: number) {
	if (kind === "from") return { from: mm, to: Math.min(wallLength(bay, wall), mm + to - from) };
	if (kind === "width") return { to: from + mm };
	return { [kind]: mm } as Partial<Obstacle>;
}
