import type { WallChain } from "@baywright/geometry";
import type { Bracket, BracketLoad } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import { withPlacesTaken } from "../fitted/already-there.ts";
import type { WallPlace } from "../job/track-schema.ts";
import { asSettled } from "../survey/as-settled.ts";
import { bracketRoom } from "../track/bracket-room.ts";
import { placeBrackets } from "../track/brackets.ts";
import { fitBay } from "../track/fit-bay.ts";
import { type Interval, nearestAllowed } from "../track/intervals.ts";
import { pinBrackets } from "../track/remedies.ts";
import type { Refused } from "../track/search-remedies.ts";
import { isWarning } from "../track/trial.ts";
import { wholePlace } from "../track/whole-place.ts";
import { bayLoads, standingOf } from "./bay-loads.ts";

/** More brackets than this on one wall are no remedy: another system is. */
const MOST_ADDED = 6;

/** A bracket that takes off less than this part of the limit is not worth its hole. */
const LEAST_HELP = 0.02;

/** A row of brackets with some added, and what each of them carries. */
interface Row {
	readonly brackets: readonly Bracket[];
	readonly loads: readonly BracketLoad[];
}

/**
 * Brackets pinned beside those that carry too much, until none of them does: one after another, each in the span beside the worst, as near
 * its middle as a bracket may go, where it takes off most; one nearer to the track's end may take the end bracket's place. Field brackets beside a new
 * one are pinned with it, or they would be spread anew. The row is set out with every one; what comes of it is tried on the whole plan.
 */
export function extraBrackets(finding: Finding, refused: Refused): Remedy[] {
	const { bay: drawn, chain, system, plan, findings, trial } = refused;
	const bay = withPlacesTaken(asSettled(drawn, system).bay);
	const fit = fitBay(bay, chain as WallChain, system);
	if (!fit.ok) return [];
	const track = fit.value;
	const room = bracketRoom(bay, system, track, plan.height);

	const rowWith = (pins: readonly WallPlace[]): Row => {
		const pinned = { ...bay.track, brackets: [...bay.track.brackets, ...pins] };
		const { brackets } = placeBrackets({ ...bay, track: pinned }, system, track, plan.joints, room);
		return { brackets, loads: bayLoads(system, track.path.length, brackets, plan.curtains) };
	};
	const added: WallPlace[] = [];
	const kept: WallPlace[] = [];
	let row: Row = plan;
	for (let worst = worstOf(row); worst !== null; worst = worstOf(row)) {
		if (!trial.spend(bay.walls.length)) return [];
		const choices = spansBeside(row, worst, track.path.length, system.bracket.width, room).map(
			({ station, fields }) => {
				const place = wholePlace(track, room, station);
				const beside = fields.map((field) => wholePlace(track, room, field));
				return { place, beside, row: rowWith([...added, ...kept, place, ...beside]) };
			},
		);
		const best = choices.toSorted((a, b) => excessOf(a.row) - excessOf(b.row))[0];
		if (best === undefined || !helps(excessOf(row), excessOf(best.row))) return [];
		added.push(best.place);
		if (added.filter(({ wall }) => wall === best.place.wall).length > MOST_ADDED) return [];
		kept.push(...best.beside);
		row = best.row;
	}
	const remedy = pinBrackets(added.toSorted(alongTrack), kept.toSorted(alongTrack));
	const warnings = findings.filter(isWarning).length;
	return trial.cures(finding, remedy.change) && trial.warnings(remedy.change) < warnings ? [remedy] : [];
}

/** What is hardly over its limit is cured by little. */
const helps = (excess: number, left: number): boolean => left === 0 || left <= excess - LEAST_HELP;

const alongTrack = (a: WallPlace, b: WallPlace): number => a.wall - b.wall || a.at - b.at;

/** Index of the bracket that is furthest over its limit; null where none is. */
function worstOf(row: Row): number | null {
	const over = overOf(row);
	return over.length === 0
		? null
		: over.reduce((worst, load) => (load.greatest > worst.greatest ? load : worst)).bracket;
}

const overOf = ({ loads }: Row): BracketLoad[] => loads.filter((load) => standingOf(load) === "over");

/** By how much the brackets are over their limit, as a part of it. */
const excessOf = (row: Row): number => overOf(row).reduce((sum, { share }) => sum + (share as number) - 1, 0);

/**
 * The middles of the spans either side of a bracket, or of what hangs over beside it at an end of the track, as near as one more may stand to them;
 * and the field brackets that each span ends at.
 */
function spansBeside({ brackets }: Row, index: number, length: number, width: number, room: readonly Interval[]) {
	return [index - 1, index].flatMap((i) => {
		const [left, right] = [brackets[i], brackets[i + 1]];
		const low = left === undefined ? 0 : left.station + width;
		const high = right === undefined ? length : right.station - width;
		const station = nearestAllowed(room, (low + high) / 2, low, high);
		const ends = [left, right].filter((end) => end?.role === "field") as Bracket[];
		return station === null ? [] : [{ station, fields: ends.map((end) => end.station) }];
	});
}
