import { cordSentence } from "../cords/describe-cords.ts";
import {
	meetOnBendSentence,
	notHungSentence,
	offTrackSentence,
	onBendSentence,
	overhangsSentence,
	overlapSentence,
	overlapStraightSentence,
	stacksMeetSentence,
	touchesSentence,
	unusualSentence,
	unusualTitle,
} from "../curtains/describe-curtains.ts";
import { bendsApartText } from "../fitted/describe-bent.ts";
import { cutFindingText } from "../fitted/describe-fitted.ts";
import { zonesSentence } from "../fixings/describe-fixing.ts";
import { formatAngle, formatLength } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import { liftSentence, massSentence, notCheckedSentence, overloadedSentence } from "../loads/describe-loads.ts";
import { disagreementSentence, faultSentence, mayChangeSentence, taskSentence } from "../survey/describe-survey.ts";
import type { MayChange } from "../survey/may-change.ts";
import { capital } from "./capital.ts";
import { severityOf } from "./codes.ts";
import type { Finding, Remedy, Severity } from "./finding.ts";
import { bendName, cornerName, wallName } from "./names.ts";
import { remedyLabel } from "./remedy-label.ts";

/** A finding in words and units. */
export interface Described {
	readonly severity: Severity;
	/** A few words: what is the matter. */
	readonly title: string;
	/** One or two plain sentences with the figures. */
	readonly message: string;
	/** What each remedy's button says. */
	readonly remedies: readonly string[];
}

/** How a finding is to be worded: its unit of length, and how many walls the bay has, which decides what they are called. */
export interface Wording {
	readonly unit: LengthUnit;
	readonly walls: number;
}

export function describe(finding: Finding, wording: Wording): Described {
	const [title, message] = sentences(finding, wording);
	return {
		severity: severityOf(finding.code),
		title,
		message,
		remedies: finding.remedies.map((remedy: Remedy) => remedyLabel(remedy, wording)),
	};
}

function sentences({ code, where, figures }: Finding, { unit, walls }: Wording): readonly [string, string] {
	const length = (name: string) => formatLength(Number(figures[name]), unit, { unit: true });
	const fine = (name: string) => formatLength(Number(figures[name]), unit, { unit: true, precision: 1 });
	const angle = (name: string) => formatAngle(Number(figures[name]));
	const corner = cornerName(where.corner ?? 0, walls);
	const wall = wallName(where.wall ?? 0, walls);
	const bend = bendName([where.corner ?? 0, Number(figures.last ?? where.corner ?? 0)], walls);
	const along = where.corner === undefined ? `along the ${wall}` : `round ${bend}`;
	switch (code) {
		case "too-few-corners":
			return ["No wall yet", `A bay needs at least two corners; this one has ${figures.count}.`];
		case "coordinate-out-of-range":
			return [
				"Corner out of reach",
				`${capital(corner)} lies at ${length("coordinate")}; corners must be within 100 m of the origin.`,
			];
		case "wall-too-short":
			return ["Wall too short", `The ${wall} is ${fine("length")} long; the least is 1 mm.`];
		case "corner-folded":
			return [
				"Corner folded back",
				`${capital(corner)} has a room angle of ${angle("angle")}; it must be between 20° and 340°${figures.bow === undefined ? "" : `, and without the bow of the ${wallName(Number(figures.bow), walls)} is ${angle("straight")}`}.`,
			];
		case "walls-cross":
			return ["Walls cross", `The ${wall} and the ${wallName(Number(figures.other), walls)} cross each other.`];
		case "bow-too-deep":
			return [
				"Bow too deep",
				`The ${wall} bows by ${fine("rise")}; no more than half its chord, ${wholeMillimetres(figures, "greatest", unit)}, makes an arc.`,
			];
		case "bow-too-tight":
			return [
				"Bow too tight for the track",
				`Along the ${wall} the track would run at radius ${wholeMillimetres(figures, "radius", unit)}; it bends to ${length("least")} at the least.`,
			];
		case "legs-do-not-meet":
			return [
				"Track cannot turn here",
				`At ${corner} the track ${length("left")} off one wall never meets the track ${length("right")} off the next, however far both are carried on.`,
			];
		case "no-room-round-corner":
			return [
				"No room round the corner",
				Number(figures.greatest) > 0
					? `Round ${bend} a bend may have radius ${wholeMillimetres(figures, "greatest", unit)} at the most to keep ${length("clearance")} from it; this track needs ${length("radius")}${projectionNeeded(figures, unit)}.`
					: `Round ${bend} no bend keeps ${length("clearance")} from it; this track needs radius ${length("radius")}${projectionNeeded(figures, unit)}.`,
			];
		case "projection-out-of-range":
			return [
				"Projection out of range",
				`A projection of ${length("projection")} is asked for${where.wall === undefined ? "" : ` on the ${wall}`}; the system's brackets give ${length("min")} to ${length("max")}.`,
			];
		case "projection-change-at-slight-turn":
			return [
				"Projection changes where the wall hardly turns",
				`At ${corner} the projection goes from ${length("left")} to ${length("right")} at a turn of ${formatAngle(Math.abs(Number(figures.turn)))}; where it turns by less than 3° it must stay the same.`,
			];
		case "end-off-wall":
			return [
				`${capital(`${where.end} end of the track`)} off the wall`,
				`The ${where.end} end is set at ${length("at")} along the ${wall}, which is ${length("length")} long.`,
			];
		case "ends-reversed":
			return ["Track ends the wrong way round", "The left end of the track lies to the right of its right end."];
		case "radius-below-least":
			return [
				"Bend too tight",
				`Radius ${length("radius")} is set at ${corner}; this track bends to ${length("least")} at the least.`,
			];
		case "radius-too-large":
			return [
				"Bend too wide",
				`Radius ${length("radius")} is set at ${corner}; its walls leave room for ${wholeMillimetres(figures, "greatest", unit)} at the most.`,
			];
		case "leg-too-short":
			return [
				"Wall too short for its bends",
				`The ${wall} is ${length("wallLength")} long; for bends at its own corners, at the tightest this track makes, it would have to be ${length("neededWall")}, ${length("short")} more.`,
			];
		case "end-too-near-corner":
			return [
				`${capital(`${where.end} end of the track`)} too near ${corner}`,
				`The ${where.end} end of the track is ${length("fromCorner")} from ${corner} along the ${wall}; for its end hardware and the tightest bend this track makes it must be ${roundedUp(figures, "needed", unit)} from it.`,
			];
		case "track-too-short":
			return [
				"Track too short",
				`The track along the ${wall} is ${length("length")} long; its end hardware alone takes ${length("needed")}.`,
			];
		case "track-too-near-wall":
			return [
				"Track too near a wall",
				`The track comes within ${fine("distance")} of the ${wall}; this system keeps ${length("clearance")}.`,
			];
		case "track-crosses-itself":
			return ["Track crosses itself", "The track runs into itself here; the walls are too close together."];
		case "obstacle-in-the-way":
			return [
				`${capital(String(figures.kind))} in the way`,
				Number(figures.distance) === 0
					? `It stands ${length("depth")} off the ${wall} at track height and the track runs through it${projectionPast(figures, unit)}.`
					: `It stands ${length("depth")} off the ${wall} at track height; the track passes ${fine("distance")} from it and must keep ${length("clearance")}${projectionPast(figures, unit)}.`,
			];
		case "piece-longer-than-stock":
			return [
				"Piece longer than any stock",
				`Piece ${where.piece} is cut at ${length("length")}; the longest stock is ${length("longest")}${noJoint(figures, walls)}.`,
			];
		case "piece-too-short":
			return [
				"Piece too short",
				`Piece ${where.piece} would be cut at ${fine("length")}; a piece shorter than a bracket (${length("least")}) cannot be hung.`,
			];
		case "cannot-be-joined":
			return ["Track cannot be joined", `${figures.system} has no joints; the ones that are set are left out.`];
		case "readings-cannot-settle":
			return ["Readings settle no bay", faultSentence(figures, { unit, walls })];
		case "readings-disagree":
			return ["Readings do not close", disagreementSentence(figures, { unit, walls })];
		case "cut-length-unsure":
			return [
				"Cut length too unsure to cut",
				`Piece ${where.piece} would be cut at ${length("length")} ± ${fine("sure")} (95 %); ± ${fine("goal")} is sure enough.${toTape(figures, unit)}`,
			];
		case "cut-piece-too-long":
			return [
				"Piece cut too long",
				`Piece ${where.piece} is cut to ${length("cut")}; it needs ${length("needed")} now. ${cutFindingText(figures, unit)}`,
			];
		case "cut-piece-too-short":
			return [
				"Piece cut too short",
				`Piece ${where.piece} is cut to ${length("cut")}; it needs ${length("needed")} now. ${cutFindingText(figures, unit)}`,
			];
		case "cut-piece-bends-apart":
			return [
				"Piece bent for another plan",
				`Piece ${where.piece} does not fit. ${bendsApartText({ first: String(figures.first), last: String(figures.last), by: Number(figures.by) }, unit)}`,
			];
		case "piece-not-in-plan":
			return [
				"Cut piece not in the plan",
				`Piece ${where.piece}, cut to ${length("length")}, has no place in the track as it is planned now.`,
			];
		case "bracket-off-projection":
			return [
				"Brackets out of line",
				`The brackets on the ${wall} stand ${length("least")} to ${length("greatest")} off it, and the track runs in one line: it is planned at ${fine("mean")}. Pack them out to one projection.`,
			];
		case "track-may-change":
			return ["Track may change", mayChangeSentence(figures.change as MayChange)];
		case "radius-not-used":
			return [
				"Radius not used",
				`Radius ${length("radius")} is set at ${corner}, but ${notUsed(String(figures.why))}.`,
			];
		case "joint-off-track":
			return ["Joint off the track", `The joint at ${length("at")} along the ${wall} is not on the track.`];
		case "joint-badly-placed":
			return [
				"Joint where none should be",
				`The joint on the ${wall} is nearer than ${length("clear")} to a bend or a bow, or where no bracket can go.`,
			];
		case "pin-off-track":
			return ["Bracket off the track", `The bracket pinned at ${length("at")} along the ${wall} is not on the track.`];
		case "pin-where-no-bracket-goes":
			return [
				"Bracket where none goes",
				`The bracket pinned at ${length("at")} along the ${wall} is on a bend, end hardware, an obstacle or a stretch that takes no hole.`,
			];
		case "no-place-for-bracket":
			return [
				"No place for a bracket",
				`${needed(String(figures.role))} on the ${wall} finds no place that takes a hole.`,
			];
		case "brackets-too-far-across-bend":
			return [
				"Brackets too far apart round a bend",
				`${where.corner === undefined ? `Along the bow of the ${wall}` : `Round ${bend}`} the brackets are ${length("gap")} apart along the track; this system allows ${length("limit")}.`,
			];
		case "bracket-out-of-reach":
			return [
				"Bracket out of reach",
				`Where the track bends past the ${wall}, a bracket would have to reach ${length("projection")}; the system's give ${length("min")} to ${length("max")}.`,
			];
		case "bracket-gap-too-wide":
			return [
				"Brackets too far apart",
				`On the ${wall} ${length("gap")} of track hangs between two brackets; this system allows ${length("limit")}.`,
			];
		case "brackets-on-tight-bow":
			return [
				"Brackets on a tight bow",
				`The bow of the ${wall}, radius ${length("radius")}, holds ${figures.count} ${figures.count === 1 ? "bracket" : "brackets"}, though this system's ${figures.least === undefined ? "go on no bend" : `go on none under ${length("least")}`}: with none there ${length("gap")} of track would hang free, and it allows ${length("limit")}.`,
			];
		case "straight-beside-bow-short":
			return [
				"Too little straight beside a bow",
				`Beside the bow the track runs straight for ${fine("length")} along the ${wall}; what is beside it needs ${length("needed")}.`,
			];
		case "end-on-bow":
			return [
				"Track ends on a bow",
				`The ${where.end} end of the track lies on the bow of the ${wall}, radius ${length("radius")}; the end hardware takes ${length("straight")} of straight track, which would stand ${fine("off")} off the curve there.`,
			];
		case "overlap-on-bend":
			return ["Curtains meet on a bend", overlapStraightSentence({ where, figures }, length, along)];
		case "leading-edges-on-bend":
			return ["Curtains meet on a bend", meetOnBendSentence({ where, figures }, length, along)];
		case "stack-on-bend":
			return ["Stack on a bend", onBendSentence({ where, figures }, length, along)];
		case "stacks-meet":
			return ["Stacks meet", stacksMeetSentence({ where, figures }, length)];
		case "stack-overhangs":
			return ["Stack longer than its track", overhangsSentence({ where, figures }, length)];
		case "curtain-off-track":
			return ["Curtain past the end of the track", offTrackSentence({ where, figures }, length)];
		case "curtains-not-hung":
			return ["Curtains do not hang", notHungSentence({ where, figures })];
		case "curtains-overlap":
			return ["Curtains overlap", overlapSentence({ where, figures }, length)];
		case "curtain-touches-behind":
			return ["Curtain touches behind", touchesSentence({ where, figures }, length, wall, corner)];
		case "unusual-figure":
			return [unusualTitle(figures), unusualSentence({ where, figures }, length)];
		case "bracket-overloaded":
			return ["Too much on a bracket", overloadedSentence(figures, bracketOn(where, wall))];
		case "load-not-checked":
			return ["Loads not checked", notCheckedSentence(figures, bracketOn(where, wall))];
		case "mass-not-known":
			return ["Mass of curtains not known", massSentence(figures)];
		case "bracket-lifts":
			return ["Track lifts off a bracket", liftSentence(figures, bracketOn(where, wall))];
		case "bow-to-be-bent":
			return [
				"Track bent along a bowed wall",
				`Along the ${wall} the track is bent to radius ${length("radius")} over ${length("length")}, from ${length("from")} to ${length("to")} of the finished track.`,
			];
		case "no-smoother-track":
			return [
				"No smoother track",
				"No smoother track stays inside what the brackets reach; this one follows the walls.",
			];
		case "smoothest-is-worse":
			return [
				"Smoothest line no better",
				`On the smoothest line this track has ${countOf(figures.smoothest, "warning")}; along the walls it would have ${countOf(figures.walls, "warning")}.`,
			];
		case "stock-not-proved-best":
			return [
				"Stock not proved the best",
				`The search ended before it was sure; what is listed wastes ${length("waste")}.`,
			];
		case "cord-against-advice":
			return ["Cord in reach of children", cordSentence(figures, length)];
		case "holes-in-cable-zones":
			return ["Cables may run where holes go", zonesSentence(figures)];
	}
}

const bracketOn = ({ bracket }: Finding["where"], wall: string): string =>
	`Bracket ${(bracket ?? 0) + 1} on the ${wall}`;

/** A greatest figure must not be rounded up. */
const wholeMillimetres = (figures: Finding["figures"], name: string, unit: LengthUnit): string =>
	formatLength(Math.floor(Number(figures[name])), unit, { unit: true });

/** Why a radius that the user has set has no effect. */
function notUsed(why: string): string {
	if (why === "slight") return "the track springs round so slight a turn and nothing is bent there";
	if (why === "reverse") return "the track passes there in a reverse bend at its least radii";
	return "the track does not go round it";
}

/** The reading that makes a cut length surer, and how many it takes until it is sure enough. */
function toTape(figures: Finding["figures"], unit: LengthUnit): string {
	if (figures.name === undefined) return "";
	const sure = (name: string) => `± ${formatLength(Number(figures[name]), unit, { unit: true, precision: 1 })}`;
	const first = ` Take the ${taskSentence(figures, unit)}: with it the length is sure to ${sure("first")}`;
	if (Number(figures.count) === 1) return `${first}${figures.enough === 1 ? "" : ", which is not enough yet"}.`;
	return `${first}, and with ${countOf(Number(figures.count) - 1, "more reading")} to ${sure("reaches")}.`;
}

/** The projection that would do, where one figure says it. */
const projectionNeeded = (figures: Finding["figures"], unit: LengthUnit): string =>
	figures.needed === undefined ? "" : `, and for that a projection of ${roundedUp(figures, "needed", unit)}`;

/** The projection that passes an obstacle, where one figure says it. */
const projectionPast = (figures: Finding["figures"], unit: LengthUnit): string =>
	figures.needed === undefined
		? ""
		: `; past it on that wall it needs a projection of ${roundedUp(figures, "needed", unit)}`;

/** Why there is no joint in a piece that is too long. */
function noJoint({ why, wall }: Finding["figures"], walls: number): string {
	if (why === "bow")
		return `, and no joint can be made along the bow of the ${wallName(Number(wall), walls)}, where the track has no straight`;
	if (why === "no-joints") return ", and this system has no joints";
	return why === "no-place" ? ", and there is no place for a joint in it" : "";
}

function countOf(count: unknown, of: string): string {
	if (count === 0) return "none";
	return count === 1 ? `one ${of}` : `${count} ${of}s`;
}

/** A least figure must not be rounded down. */
const roundedUp = (figures: Finding["figures"], name: string, unit: LengthUnit): string =>
	formatLength(Math.ceil(Number(figures[name])), unit, { unit: true });

const needed = (role: string): string =>
	role === "bend"
		? "The bracket beside a bend"
		: role === "end"
			? "The bracket near the track's end"
			: "The bracket beside a joint";
