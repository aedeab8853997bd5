import type { Bend, Bow, FittedTrack } from "@baywright/geometry";
import type { Bracket, Joint, Mark, Piece } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";

/** Slack (mm) with which a mark at a piece's very end still belongs to it. */
const SLACK = 1e-6;

/**
 * The pieces to cut, left to right, with every mark read from the piece's own cut ends. End hardware comes off the two ends
 * of the track, never off a joint.
 */
export function cutPieces(
	track: FittedTrack,
	system: TrackSystem,
	joints: readonly Joint[],
	brackets: readonly Bracket[],
): Piece[] {
	const { length } = track.path;
	const { endTakeUp } = system;
	const ends = [0, ...joints.map(({ station }) => station), length];
	const marks = stationsOfMarks(track, system, joints, brackets);
	let next = 0;
	return ends.slice(1).map((to, i) => {
		const from = ends[i] as number;
		const left = from + (i === 0 ? endTakeUp : 0);
		const right = to - (i === ends.length - 2 ? endTakeUp : 0);
		while (next < marks.length && (marks[next] as StationMark).station < from - SLACK) next++;
		const own: Mark[] = [];
		for (let j = next; j < marks.length && (marks[j] as StationMark).station <= to + SLACK; j++) {
			const { kind, of, bow, station } = marks[j] as StationMark;
			own.push({ kind, of, bow, fromLeft: station - left, fromRight: right - station });
		}
		return {
			name: pieceName(i),
			from,
			to,
			finishedLength: to - from,
			cutLength: right - left,
			sd: null,
			marks: own,
		};
	});
}

interface StationMark {
	readonly kind: Mark["kind"];
	readonly of: number;
	readonly bow: boolean;
	readonly station: number;
}

function stationsOfMarks(
	{ path }: FittedTrack,
	{ endTakeUp }: TrackSystem,
	joints: readonly Joint[],
	brackets: readonly Bracket[],
): StationMark[] {
	const marks = path.segments.flatMap((segment) =>
		segment.kind === "bow" || (segment.kind === "bend" && !segment.sprung)
			? bendMarks(segment, endTakeUp, path.length - endTakeUp)
			: [],
	);
	joints.forEach(({ station }, of) => {
		marks.push({ kind: "joint", of, bow: false, station });
	});
	brackets.forEach(({ station }, of) => {
		marks.push({ kind: "bracket", of, bow: false, station });
	});
	return marks.sort((a, b) => a.station - b.station);
}

/** A bow that runs on past a cut end is marked as far as there is track to bend. */
function bendMarks(segment: Bend | Bow, leftCut: number, rightCut: number): StationMark[] {
	const from = Math.max(segment.start, leftCut);
	const to = Math.min(segment.start + segment.length, rightCut);
	if (from >= to) return [];
	const bow = segment.kind === "bow";
	const of = bow ? segment.wall : (segment.corners[0] as number);
	return [
		{ kind: "bend-start", of, bow, station: from },
		{ kind: "bend-middle", of, bow, station: (from + to) / 2 },
		{ kind: "bend-end", of, bow, station: to },
	];
}

/** A … Z, AA, AB … */
function pieceName(index: number): string {
	const letter = String.fromCharCode(65 + (index % 26));
	return index < 26 ? letter : pieceName(Math.floor(index / 26) - 1) + letter;
}
