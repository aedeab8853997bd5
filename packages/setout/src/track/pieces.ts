import type { FittedTrack } from "@baywright/geometry";
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
	{ endTakeUp }: TrackSystem,
	joints: readonly Joint[],
	brackets: readonly Bracket[],
): Piece[] {
	const { length } = track.path;
	const ends = [0, ...joints.map(({ station }) => station), length];
	const marks = stationsOfMarks(track, joints, brackets);
	let next = 0;
	return ends.slice(1).map((to, i) => {
		const from = ends[i] as number;
		const left = from + (i === 0 ? endTakeUp : 0);
		const right = to - (i === ends.length - 2 ? endTakeUp : 0);
		while (next < marks.length && (marks[next] as StationMark).station < from - SLACK) next++;
		const own: Mark[] = [];
		for (let j = next; j < marks.length && (marks[j] as StationMark).station <= to + SLACK; j++) {
			const { kind, of, station } = marks[j] as StationMark;
			own.push({ kind, of, fromLeft: station - left, fromRight: right - station });
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
	readonly station: number;
}

function stationsOfMarks({ path }: FittedTrack, joints: readonly Joint[], brackets: readonly Bracket[]): StationMark[] {
	const marks: StationMark[] = [];
	for (const segment of path.segments) {
		if (segment.kind !== "bend" || segment.sprung) continue;
		const of = segment.corners[0] as number;
		marks.push(
			{ kind: "bend-start", of, station: segment.start },
			{ kind: "bend-middle", of, station: segment.start + segment.length / 2 },
			{ kind: "bend-end", of, station: segment.start + segment.length },
		);
	}
	joints.forEach(({ station }, of) => {
		marks.push({ kind: "joint", of, station });
	});
	brackets.forEach(({ station }, of) => {
		marks.push({ kind: "bracket", of, station });
	});
	return marks.sort((a, b) => a.station - b.station);
}

/** A … Z, AA, AB … */
function pieceName(index: number): string {
	const letter = String.fromCharCode(65 + (index % 26));
	return index < 26 ? letter : pieceName(Math.floor(index / 26) - 1) + letter;
}
