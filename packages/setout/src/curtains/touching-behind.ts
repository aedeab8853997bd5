import { type FittedTrack, footOnFace, pointAt } from "@baywright/geometry";
import type { CornerSetOut, CurtainSetOut, Stretch } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import { stretchAlong } from "../track/opening-stations.ts";
import { hangsBefore } from "./covering.ts";

/** Slack (mm) when folds are compared with the room behind them. */
const SLACK = 1e-6;

/**
 * What drawn curtains' folds touch behind the track: walls, external corners and sill boards, each kind told once where it is touched worst, and
 * every obstacle. A wall with a projection of its own is told by itself, for it is cured by itself.
 */
export function touchingBehind(
	bay: Bay,
	track: FittedTrack,
	curtains: readonly CurtainSetOut[],
	corners: readonly CornerSetOut[],
	height: number | null,
): Finding[] {
	const touched = new Map<string, Touch[]>();
	for (const curtain of curtains) {
		const behind = [...nearestWall(track, curtain, corners), ...standingOut(bay, track, curtain, height)];
		for (const one of behind) {
			if (one.room >= curtain.behind - SLACK) continue;
			const key = `${one.what} ${one.where.obstacle} ${ownWall(bay, one)}`;
			touched.set(key, [...(touched.get(key) ?? []), { curtain, one }]);
		}
	}
	return [...touched.values()].map((touches) => found(bay, touches));
}

/** A curtain, and what its folds touch. */
interface Touch {
	readonly curtain: CurtainSetOut;
	readonly one: Behind;
}

/** The wall that something stands on or is, where it has a projection of its own. */
const ownWall = ({ walls }: Bay, { where: { wall } }: Behind): number | null =>
	wall !== undefined && (walls[wall]?.projection ?? null) !== null ? wall : null;

/** The worst of what is touched, and at how many more places: both parts of a curtain touch one thing at one place. */
function found(bay: Bay, touches: readonly Touch[]): Finding {
	const short = ({ curtain, one }: Touch) => curtain.behind - one.room;
	const worst = touches.reduce((most, each) => (short(each) > short(most) + SLACK ? each : most));
	const { behind } = worst.curtain;
	const { where, room, depth, what } = worst.one;
	const places = new Set(
		touches.map(({ curtain, one }) => `${curtain.curtain} ${one.where.opening} ${one.where.obstacle}`),
	);
	const own = ownWall(bay, worst.one);
	const clears = ({ curtain, one }: Touch) => Math.ceil(one.depth + curtain.behind - SLACK);
	return {
		code: "curtain-touches-behind",
		where: { curtain: worst.curtain.curtain ?? 0, ...where },
		figures: {
			what,
			behind,
			room: Math.max(0, room),
			depth,
			needed: Math.max(...touches.map(clears)),
			...(places.size > 1 ? { others: places.size - 1 } : {}),
			...(own === null ? {} : { own }),
		},
		remedies: [],
	};
}

/** Something behind a curtain: how much room there is between the track's centre line and it, and how far it stands off the wall. */
interface Behind {
	readonly where: Finding["where"];
	readonly room: number;
	readonly depth: number;
	readonly what: string;
}

/** The wall or external corner that comes nearest to the track along a curtain. */
function nearestWall(track: FittedTrack, { from, to }: CurtainSetOut, corners: readonly CornerSetOut[]): Behind[] {
	const { segments } = track.path;
	const along = segments.filter(({ start, length }) => start < to && start + length > from);
	const legs = along.flatMap((segment): Behind[] =>
		segment.kind === "bend"
			? []
			: [
					{
						where: { wall: segment.wall, station: middleOf({ from, to }, segment) },
						room: track.projections[segment.wall] ?? Number.POSITIVE_INFINITY,
						depth: 0,
						what: "wall",
					},
				],
	);
	const edges = along.flatMap((segment): Behind[] =>
		segment.kind !== "bend" || segment.turn > 0
			? []
			: corners
					.filter(({ corner }) => segment.corners.includes(corner))
					.map(({ corner, cornerGap }) => ({
						where: { corner, station: middleOf({ from, to }, segment) },
						room: cornerGap,
						depth: 0,
						what: "corner",
					})),
	);
	const [nearest] = [...legs, ...edges].toSorted((a, b) => a.room - b.room);
	return nearest === undefined ? [] : [nearest];
}

const middleOf = ({ from, to }: Stretch, { start, length }: { readonly start: number; readonly length: number }) =>
	(Math.max(from, start) + Math.min(to, start + length)) / 2;

/** Sill boards and obstacles that a curtain hangs before. */
function standingOut(bay: Bay, track: FittedTrack, curtain: CurtainSetOut, height: number | null): Behind[] {
	const before = (
		thing: { readonly wall: number; readonly from: number; readonly to: number },
		depth: number,
		bottom: number | null,
		top: number | null,
	) => {
		if (depth <= 0 || !hangsBefore({ bottom, top }, curtain.drop, height)) return null;
		return roomBefore(track, thing, depth, curtain);
	};
	const sills = bay.openings.flatMap((opening, index): Behind[] => {
		const { sillDepth: depth, sill, wall } = opening;
		const near = before(opening, depth, sill, sill);
		return near === null
			? []
			: [{ where: { opening: index, wall, station: near.station }, room: near.room, depth, what: "sill" }];
	});
	const obstacles = bay.obstacles.flatMap((obstacle, index): Behind[] => {
		const { depth, bottom, top, wall, kind } = obstacle;
		const near = before(obstacle, depth, bottom, top);
		return near === null
			? []
			: [{ where: { obstacle: index, wall, station: near.station }, room: near.room, depth, what: kind }];
	});
	return [...sills, ...obstacles];
}

/** Least room (mm) between the track and the front of something on a wall where a curtain hangs before it: round a bend it is least at one of its ends. */
function roomBefore(
	track: FittedTrack,
	thing: { readonly wall: number; readonly from: number; readonly to: number },
	depth: number,
	{ from, to }: Stretch,
): { readonly room: number; readonly station: number } | null {
	const along = stretchAlong(track, thing);
	if (along === null) return null;
	const start = Math.max(from, along.from);
	const end = Math.min(to, along.to);
	if (end <= start) return null;
	const rooms = [(start + end) / 2, start, end].map((station) => {
		const place = pointAt(track.path, station);
		const off = place === null ? Number.POSITIVE_INFINITY : footOnFace(track.chain, thing.wall, place.at).off;
		return { room: off - depth, station };
	});
	return rooms.reduce((least, each) => (each.room < least.room - SLACK ? each : least));
}
