import type { Point, Radians, TrackPath, WallChain } from "@baywright/geometry";
import type { ErrorEllipse } from "@baywright/survey";
import type { CordSetOut } from "./cords/set-out-cords.ts";
import type { Finding } from "./finding/finding.ts";
import type { AsFitted } from "./fitted/as-fitted.ts";
import type { Fixing } from "./fixings/fixing.ts";
import type { Heading } from "./library/heading.ts";
import type { TrackSystem } from "./library/system.ts";
import type { Part } from "./order/part.ts";
import type { WantedReading } from "./survey/next-readings.ts";
import type { BaySurvey } from "./survey/settle.ts";

/** Everything worked out for one bay. Never saved: `planBay` makes it anew from the job. Lengths mm. */
export interface BayPlan {
	readonly id: string;
	readonly system: TrackSystem;
	/** The settled wall faces; null where the corners make no bay. */
	readonly chain: WallChain | null;
	/** Projection of the track's centre line from each wall's face, mm. */
	readonly projections: readonly number[];
	/** Track height above the floor, mm; null while nothing says it. */
	readonly height: number | null;
	/** The fitted centre line; null where it was refused. What follows is then empty. */
	readonly path: TrackPath | null;
	readonly corners: readonly CornerSetOut[];
	/** Where the track is bent along a bowed wall, left to right. */
	readonly bows: readonly BowSetOut[];
	/** Facets that a bend leaves out, and how far it stands off where the leg along each would be. */
	readonly bridged: readonly BridgedFacet[];
	readonly brackets: readonly Bracket[];
	/** How each of `brackets` is held, in the same order. */
	readonly fixings: readonly Fixing[];
	readonly joints: readonly Joint[];
	readonly pieces: readonly Piece[];
	readonly stock: StockPlan;
	/** Left to right as they hang; none where nothing is drawn. */
	readonly curtains: readonly CurtainSetOut[];
	/** One for each bracket; none while the mass of no curtain is known. A curtain whose mass is not known is left out. */
	readonly loads: readonly BracketLoad[];
	readonly stackBack: readonly StackBack[];
	/** null where nothing is drawn by a cord. */
	readonly cords: CordSetOut | null;
	/** Everything to buy for this bay, in the order of the work. */
	readonly parts: readonly Part[];
	readonly glass: Glass;
	/** Obstacles that a curtain hangs before. */
	readonly covered: readonly CoveredObstacle[];
	/** What was taped says about the bay; null where nothing was. */
	readonly survey: SurveyOfPlan | null;
	/** What is fitted and cut already; null where nothing is entered. */
	readonly fitted: AsFitted | null;
	readonly findings: readonly Finding[];
}

/** How the readings of a bay agree. Lengths mm, angles degrees. */
export interface SurveyOfPlan
	extends Pick<BaySurvey, "readings" | "sigma0" | "redundancy" | "closes" | "closesWithin" | "suspects"> {
	/** False where the readings settle no bay: the corners are then as drawn. */
	readonly settled: boolean;
	/** Where each corner is to be expected, one standard deviation about it, seen from the left end. */
	readonly ellipses: readonly ErrorEllipse[];
	/** What to tape next; null where every cut length is sure enough, nothing helps, or the plan was made in haste. */
	readonly next: WantedReading | null;
	/** What to tape where several readings might as well be the wrong one; null where it is not needed, or the plan was made in haste. */
	readonly telling: WantedReading["reading"] | null;
}

/** One fitted corner, as a fitter marks it out. */
export interface CornerSetOut {
	readonly corner: number;
	/** All corners that its bend goes round: itself, or with others whose facets it bridges. */
	readonly corners: readonly number[];
	/** Half of a reverse bend, a bend that bridges facets, or an ordinary one. */
	readonly kind: "bend" | "bridge" | "reverse";
	/** Room angle between the two walls. */
	readonly interiorAngle: Radians;
	/** Bend radius on the centre line, mm; 0 where there is no bend. */
	readonly radius: number;
	/** From the corner along the left and the right wall face to where the bend starts, mm; null towards a wall that it leaves out. */
	readonly setBack: readonly [left: number | null, right: number | null];
	/** One standard deviation of each set-back from the survey, mm; null while nothing is taped, and in a plan made in haste. */
	readonly sd: readonly [left: number | null, right: number | null];
	/** Length along the bend, mm. */
	readonly sweep: number;
	/** Corner to the middle of the bend, mm; where the bend passes several corners, to the nearest point of the track. */
	readonly cornerGap: number;
	/** The track springs round a slight turn: nothing is bent. */
	readonly sprung: boolean;
	/** Radii that this corner could be given, all others at their least, mm. */
	readonly least: number;
	readonly greatest: number;
	/** The user set this radius. */
	readonly chosen: boolean;
}

/** Track bent along a bowed wall, concentric with its face. */
export interface BowSetOut {
	readonly wall: number;
	/** On the centre line, mm. */
	readonly radius: number;
	/** Angle turned through; + away from the room. */
	readonly turn: Radians;
	/** Stations of its ends, mm. */
	readonly from: number;
	readonly to: number;
	/** Length along the curve, mm. */
	readonly sweep: number;
}

export interface BridgedFacet {
	readonly wall: number;
	/** mm; away from an internal wall positive, towards an external one negative. */
	readonly standOff: number;
}

export type BracketRole = "end" | "bend" | "joint" | "companion" | "field" | "pinned";

export interface Bracket {
	/** mm along the centre line from the finished left end. */
	readonly station: number;
	/** Place on the centre line. */
	readonly at: Point;
	readonly wall: number;
	/** Along the wall face from the corner at its left and right end, mm: what a fitter tapes. */
	readonly fromLeftCorner: number;
	readonly fromRightCorner: number;
	/**
	 * One standard deviation of either reading from the survey, mm: how far off the place would be in the bay as it stands. Null as a piece's, and
	 * where a bay hardly other would have it elsewhere.
	 */
	readonly sd: readonly [fromLeft: number | null, fromRight: number | null];
	/** Wall face to centre line at this bracket, mm. */
	readonly projection: number;
	readonly role: BracketRole;
}

/**
 * What one bracket carries of the track and of the curtains whose mass is known, kg; less than nought where it has to hold the track down. From the
 * track laid out straight: torsion at bends is left out.
 */
export interface BracketLoad {
	/** Its index in `brackets`. */
	readonly bracket: number;
	/** Every curtain left, between drawn and drawn back, where it loads this bracket most, and least. */
	readonly greatest: number;
	readonly least: number;
	/** All curtains drawn, and all drawn back. */
	readonly drawn: number;
	readonly stacked: number;
	/** The greatest as a part of what the system allows on one bracket; null where it states no limit. */
	readonly share: number | null;
}

export interface Joint {
	readonly station: number;
	readonly wall: number;
	/** Along the wall face from its left corner, mm. */
	readonly at: number;
}

export type MarkKind = "bend-start" | "bend-middle" | "bend-end" | "bracket" | "joint";

/** A mark on the strip, read from the piece's own cut ends, mm. */
export interface Mark {
	readonly kind: MarkKind;
	readonly fromLeft: number;
	readonly fromRight: number;
	/** For a bend mark its first corner, on a bow its wall; for a bracket its index in `brackets`; for a joint its index in `joints`. */
	readonly of: number;
	/** A bend mark of a bow. */
	readonly bow: boolean;
}

export interface Piece {
	/** "A", "B", … from the left. */
	readonly name: string;
	/** Stations of its finished ends, mm. */
	readonly from: number;
	readonly to: number;
	readonly finishedLength: number;
	readonly cutLength: number;
	/** One standard deviation of the cut length from the survey, mm; null while nothing is taped, and in a plan made in haste. */
	readonly sd: number | null;
	readonly marks: readonly Mark[];
}

/** A length to cut from stock. */
export interface Cut {
	readonly piece: string;
	readonly length: number;
}

export interface StockPlan {
	readonly buy: readonly { readonly length: number; readonly count: number }[];
	/** One entry per stock length bought: what is cut from it and what is left over. */
	readonly cuts: readonly { readonly stock: number; readonly pieces: readonly Cut[]; readonly offcut: number }[];
	/** All that is bought less all that is cut, kerf counted as waste, mm. */
	readonly waste: number;
	/** False where the search was ended before it proved that nothing better exists. */
	readonly exact: boolean;
}

/** One curtain as it hangs and as the workroom makes it. Stations and lengths mm along the centre line, masses kg. */
export interface CurtainSetOut {
	/** Its place in the bay's `curtains`; null where the job says nothing of curtains. */
	readonly curtain: number | null;
	/** The end of its stretch to which it is drawn back. */
	readonly side: "left" | "right";
	/** The stretch that it covers drawn; `from` is never over `to`. */
	readonly from: number;
	readonly to: number;
	/** The stretch that it takes up drawn back, within `from` and `to`. */
	readonly stack: Stretch;
	/** What the stack would take up if it had the room; over the stretch where it does not fit. */
	readonly stackWanted: number;
	readonly heading: Heading;
	readonly fullness: number;
	/** Id of its cloth; null where none is chosen. */
	readonly cloth: string | null;
	/** Finished drop, mm; null where it is not given. */
	readonly drop: number | null;
	/** Across the heading when it is made up: stretch, half an overlap where it meets another, returns, ease. */
	readonly finishedWidth: number;
	/** Cloth that hangs, without side turnings. */
	readonly flatWidth: number;
	/** Gliders, and so hooks. */
	readonly gliders: number;
	/** Front to back of a fold while it is drawn, and how much of that is behind the centre line. */
	readonly foldDepth: number;
	readonly behind: number;
	/** Made up, with its lining; null where cloth, its mass or the drop is not known. */
	readonly mass: number | null;
	/** What to cut; null where no cloth is chosen. */
	readonly cutting: Cutting | null;
}

/** Cloth of one curtain. Lengths mm; what needs the drop is null where it is not given. */
export interface Cutting {
	/** Widths of cloth, whole or in halves. */
	readonly widths: number;
	/** Of the roll to cut: a half width that another curtain's half completes counts once, at the first of the two. */
	readonly lengths: number;
	readonly finishedDrop: number | null;
	/** Each length along the roll: drop and turnings, up to where the pattern begins anew. */
	readonly cutDrop: number | null;
	readonly metres: number | null;
	/** null also where the cloth is unlined. */
	readonly liningWidths: number | null;
	readonly liningMetres: number | null;
}

/** Stations, mm. */
export interface Stretch {
	readonly from: number;
	readonly to: number;
}

export interface StackBack {
	readonly side: "left" | "right";
	/** Stations, mm. */
	readonly from: number;
	readonly to: number;
}

export interface Glass {
	/** Width of all openings along the wall faces, mm. */
	readonly total: number;
	/** Of these, what no curtain covers with the curtains open, and with them drawn, mm. */
	readonly clearOpen: number;
	readonly clearDrawn: number;
	/** Share of the light that open and drawn curtains take, 0 to 1: by area where all heights are known, else by width. */
	readonly lostOpen: number;
	readonly lostDrawn: number;
	readonly openings: readonly OpeningGlass[];
}

export interface OpeningGlass extends Pick<Glass, "clearOpen" | "clearDrawn" | "lostOpen" | "lostDrawn"> {
	readonly opening: number;
	/** Along the wall face, and from sill to head where both are given, mm. */
	readonly width: number;
	readonly height: number | null;
	/** The track in front of it, null where there is none, and how much of the width that passes, mm. */
	readonly stretch: Stretch | null;
	readonly passed: number;
}

/** Share of an obstacle's length that curtains hang before, 0 to 1, with the curtains open and drawn. */
export interface CoveredObstacle {
	readonly obstacle: number;
	readonly open: number;
	readonly drawn: number;
}
