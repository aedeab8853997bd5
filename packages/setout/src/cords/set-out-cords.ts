import { type FittedTrack, tapedFrom } from "@baywright/geometry";
import { cordAdvice } from "../cautions/cord-advice.ts";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Region } from "../job/schema.ts";
import type { WallPlace } from "../job/track-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** The cord of one corded track. Lengths mm. */
export interface CordSetOut {
	/** The end of the track at which its loop hangs, and whether the user has chosen it. */
	readonly side: "left" | "right";
	readonly chosen: boolean;
	/** Where that end stands on its wall. */
	readonly at: WallPlace;
	/** Along the track there and back. */
	readonly inTrack: number;
	/** How low the loop is to hang, above the floor: as the user or the region's advice has it. */
	readonly wanted: number;
	/** From the track down to the loop's lowest point; null where the height of the track is not known or leaves no room. */
	readonly hangs: number | null;
	/** The loop's lowest point above the floor, where its tensioner is fixed; null in the same cases. */
	readonly lowest: number | null;
	/** Why it is not known: no height of the track, or a track that is itself no higher than its loop may come down. */
	readonly unknown: "no-height" | "track-too-low" | null;
	/** In all: along the track, down and up again, and the knots; null where the loop is not known. */
	readonly length: number | null;
	/** The opening in front of which the tensioner would stand, by its place in the bay's `openings`. */
	readonly overOpening: number | null;
}

/** For the knots at the carriers, mm (common practice, no source). */
const KNOTS = 300;

/** Where the region gives no height to keep above, a loop still hangs no lower than this, mm: the greatest height listed for any region. */
const ELSE_ABOVE = cordAdvice("other").loopAbove ?? 0;

/** Null where nothing is drawn by a cord. */
export function setOutCords(
	bay: Bay,
	system: TrackSystem,
	track: FittedTrack,
	height: number | null,
	region: Region,
): CordSetOut | null {
	const { cordSide, cordLowest, draw } = bay.track;
	if (!system.corded || draw === "none") return null;
	const side = cordSide === "auto" ? (draw === "left" ? "left" : "right") : cordSide;
	const { length: path } = track.path;
	const { wall, at } = tapedFrom(track, side === "left" ? 0 : path);
	const wanted = cordLowest ?? cordAdvice(region).loopAbove ?? ELSE_ABOVE;
	const unknown = height === null ? "no-height" : height <= wanted ? "track-too-low" : null;
	const lowest = unknown === null ? wanted : null;
	const hangs = height === null || lowest === null ? null : height - lowest;
	return {
		side,
		chosen: cordSide !== "auto",
		at: { wall, at },
		inTrack: 2 * path,
		wanted,
		hangs,
		lowest,
		unknown,
		length: hangs === null ? null : 2 * path + 2 * hangs + KNOTS,
		overOpening: lowest === null ? null : openingAt(bay, wall, at, lowest),
	};
}

/** No tensioner is fixed on glass. An opening whose sill or head is not known may be there. */
function openingAt({ openings }: Bay, wall: number, at: number, height: number): number | null {
	const found = openings.findIndex(
		(opening) =>
			opening.wall === wall &&
			at >= opening.from &&
			at <= opening.to &&
			height >= (opening.sill ?? 0) &&
			height <= (opening.head ?? Number.POSITIVE_INFINITY),
	);
	return found < 0 ? null : found;
}

/** A cord that hangs lower or longer than the region's rules are read to allow. */
export function cordFindings(cords: CordSetOut | null, region: Region): Finding[] {
	if (cords === null) return [];
	const { loopAbove, longest } = cordAdvice(region);
	const { lowest, hangs, unknown, wanted } = cords;
	const finding = (figures: Finding["figures"], remedies: Finding["remedies"] = []): Finding => ({
		code: "cord-against-advice",
		where: { end: cords.side },
		figures: { ...figures, region },
		remedies,
	});
	if (lowest !== null && loopAbove !== null && lowest < loopAbove)
		return [
			finding({ lowest, loopAbove }, [
				{ action: "raise-cord", figures: {}, change: [{ op: "replace", path: "/track/cordLowest", value: null }] },
			]),
		];
	if (longest !== null && unknown !== "track-too-low" && (hangs === null || hangs > longest))
		return [finding({ longest, ...(hangs === null ? {} : { hangs }) })];
	return unknown === "track-too-low" ? [finding({ wanted })] : [];
}
