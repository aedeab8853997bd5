import type { CurtainSetOut } from "../bay-plan.ts";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Curtain } from "../job/curtain-schema.ts";
import { type Heading, USUAL_HEADINGS } from "../library/heading.ts";
import { nearestWhole } from "../track/nearest-whole.ts";
import { setProjection, setWallProjection } from "../track/remedies.ts";
import { curing, nearestCure, otherSystems, type Refused } from "../track/search-remedies.ts";
import { endsOf } from "../track/track-rule.ts";
import { isWarning } from "../track/trial.ts";
import { MEETS } from "./hangings.ts";

/** The most that a track is lengthened at one end, mm; further a pole or another layout is looked at (common practice, no source). */
const LENGTHEN_AT_MOST = 1000;

/** Places tried for a figure: each is a plan of its own. */
const TRIES = 6;

/** Stacks that do not lie well: to another side, a thinner heading, a longer track. */
export function stackRemedies(finding: Finding, refused: Refused): Remedy[] {
	const curtain = finding.where.curtain as number;
	const other = finding.figures.other as number | undefined;
	const asked = other === undefined || other === curtain ? [curtain] : [curtain, other];
	return [
		...asked.flatMap((one) => worthwhile(refused, finding, toOneSide(refused, one))),
		...(finding.code === "stack-on-bend" ? worthwhile(refused, finding, parted(refused, asked[0] as number)) : []),
		...asked.flatMap((one) => thinnerHeading(finding, refused, one)),
		...lengthened(finding, refused, "left"),
		...lengthened(finding, refused, "right"),
	];
}

/** Curtains that meet on a bend: where else they may meet, or all to one side. */
export function meetingRemedies(finding: Finding, refused: Refused): Remedy[] {
	const left = finding.where.curtain;
	const right = finding.figures.other as number | undefined;
	if (left === undefined || right === undefined) return [];
	if (left === right) return worthwhile(refused, finding, toOneSide(refused, left));
	const { curtains } = refused.bay;
	const at = Number(finding.figures.at);
	const range = [
		(curtains[left]?.from ?? 0) + 1,
		(curtains[right]?.to ?? refused.plan.path?.length ?? at) - 1,
	] as const;
	return nearest(refused, finding, (one) => meetAt(left, right, one), at, range, 2 * TRIES);
}

/** Folds that touch something: the least projection that clears it, a heading with less behind the track, another system. */
export function behindRemedies(finding: Finding, refused: Refused): Remedy[] {
	const { bay, system } = refused;
	const { wall, curtain } = finding.where;
	const needed = Number(finding.figures.needed);
	const range = [needed, system.projection.max] as const;
	const remedyOf =
		finding.figures.own === undefined ? setProjection : (one: number) => setWallProjection(wall ?? 0, one);
	const further = nearestCure(refused, finding, remedyOf, needed, range, TRIES);
	const flatter = HEADINGS.filter((one) => USUAL_HEADINGS[one].behind < behindOf(refused, curtain as number)).map(
		(one) => (finding.figures.others === undefined ? withHeading(curtain as number, one) : withFlatter(bay, one)),
	);
	return [
		...further,
		...worthwhile(refused, finding, flatter).slice(0, 1),
		...(further.length > 0 ? [] : otherSystems(refused, finding, () => needed)),
	];
}

/** A curtain that reaches past the track ends with it, or does not hang. */
export function offTrackRemedies(finding: Finding, refused: Refused): Remedy[] {
	const curtain = finding.where.curtain as number;
	const withTrack: Remedy = {
		action: "end-curtain-with-track",
		figures: { curtain },
		change: [{ op: "replace", path: `/curtains/${curtain}/to`, value: null }],
	};
	const shortened = Number(finding.figures.from) < Number(finding.figures.length) - MEETS ? [withTrack] : [];
	return curing(refused, finding, shortened.length > 0 ? shortened : [removeCurtain(curtain)]);
}

/** Two that overlap meet in the middle of it, or where the second begins; one within the other is removed, for they could only meet where the outer one lost its far end. */
export function overlapRemedies(finding: Finding, refused: Refused): Remedy[] {
	const second = finding.where.curtain as number;
	const first = finding.figures.other as number;
	const { from, to } = finding.figures;
	const { curtains } = refused.bay;
	const end = (one: number) => curtains[one]?.to ?? Number.POSITIVE_INFINITY;
	if (end(second) < end(first)) return curing(refused, finding, [removeCurtain(second)]);
	const middle = Math.round((Number(from) + Number(to)) / 2);
	const met = curing(refused, finding, [
		meetAt(first, second, middle),
		meetAt(first, second, Math.round(Number(from))),
	]);
	return met.length > 0 ? met.slice(0, 1) : curing(refused, finding, [removeCurtain(second)]);
}

const HEADINGS = Object.keys(USUAL_HEADINGS) as Heading[];

const behindOf = ({ bay }: Refused, curtain: number): number =>
	USUAL_HEADINGS[bay.curtains[curtain]?.heading ?? "pencil"].behind;

/** Drawn back to the other side; one that parts, to either. */
function toOneSide({ plan, bay }: Refused, curtain: number): Remedy[] {
	const now = plan.curtains.filter((one) => one.curtain === curtain).map(({ side }: CurtainSetOut) => side);
	const sides = (["left", "right"] as const).filter((side) => now.length > 1 || !now.includes(side));
	if (bay.curtains[curtain] === undefined) return [];
	return sides.map((side) => ({
		action: "stack-to-side",
		figures: { curtain, side },
		change: [{ op: "replace", path: `/curtains/${curtain}/stacks`, value: side }],
	}));
}

/** Parted in the middle, one that is drawn back whole: each half is half as long drawn back. */
function parted({ plan }: Refused, curtain: number): Remedy[] {
	if (plan.curtains.filter((one) => one.curtain === curtain).length !== 1) return [];
	const change = [{ op: "replace", path: `/curtains/${curtain}/stacks`, value: "both" }] as const;
	return [{ action: "stack-to-side", figures: { curtain, side: "both" }, change }];
}

/** The heading nearest to the present one of those that pack more tightly, if it cures. */
function thinnerHeading(finding: Finding, refused: Refused, curtain: number): Remedy[] {
	const made = refused.bay.curtains[curtain];
	if (made === undefined) return [];
	const packing = (heading: Heading) => USUAL_HEADINGS[heading].packing;
	const thinner = HEADINGS.filter((heading) => packing(heading) < packing(made.heading)).toSorted(
		(a, b) => packing(b) - packing(a),
	);
	const remedies = thinner.map((heading) => withHeading(curtain, heading));
	const first = remedies.find((remedy) => worthwhile(refused, finding, [remedy]).length > 0);
	return first === undefined ? [] : [first];
}

const withHeading = (curtain: number, heading: Heading): Remedy => ({
	action: "use-heading",
	figures: { curtain, heading },
	change: [{ op: "replace", path: `/curtains/${curtain}/heading`, value: heading }],
});

/** The heading for all curtains that have more behind the track than it. */
function withFlatter({ curtains }: Bay, heading: Heading): Remedy {
	const behind = (one: Heading) => USUAL_HEADINGS[one].behind;
	const remedies = curtains.flatMap((made, curtain) =>
		behind(made.heading) > behind(heading) ? [withHeading(curtain, heading)] : [],
	);
	const [only, ...more] = remedies;
	if (only !== undefined && more.length === 0) return only;
	return { action: "use-heading", figures: { heading }, change: remedies.flatMap(({ change }) => change) };
}

/** The track run on along its first or last wall by as little as cures; curtains that end with it go with it. */
function lengthened(finding: Finding, refused: Refused, end: "left" | "right"): Remedy[] {
	const { bay, chain, plan } = refused;
	if (chain === null || plan.path === null) return [];
	const { length } = plan.path;
	const faces = chain.walls.map(({ faceLength }) => faceLength);
	const ends = endsOf(bay, faces);
	const { wall, at } = end === "left" ? ends.start : ends.end;
	const room = end === "left" ? at : (faces[wall] ?? 0) - at;
	const remedyOf = (by: number): Remedy => ({
		action: "lengthen-track",
		figures: { end, by },
		change: [
			{
				op: "replace",
				path: end === "left" ? "/track/start" : "/track/end",
				value: { wall, at: end === "left" ? at - by : at + by },
			},
			...bay.curtains.flatMap((curtain, i) => carriedStations(curtain, i, end, by, length)),
		],
	});
	return nearest(refused, finding, remedyOf, 1, [1, Math.min(room, LENGTHEN_AT_MOST)], TRIES);
}

/** Stations are from the left end: lengthened there all move, but for a curtain that begins with the track; at the right end only one that ends with it. */
function carriedStations({ from, to }: Curtain, i: number, end: "left" | "right", by: number, length: number) {
	const set = (key: "from" | "to", value: number) => ({ op: "replace", path: `/curtains/${i}/${key}`, value }) as const;
	if (end === "right") return to !== null && to >= length - MEETS ? [set("to", to + by)] : [];
	// The end first: a stretch is never turned round on the way.
	return [
		...(to === null ? [] : [set("to", to + by)]),
		...(from === null || from <= MEETS ? [] : [set("from", from + by)]),
	];
}

const meetAt = (left: number, right: number, at: number): Remedy => ({
	action: "meet-at",
	figures: { at },
	change: [
		{ op: "replace", path: `/curtains/${left}/to`, value: at },
		{ op: "replace", path: `/curtains/${right}/from`, value: at },
	],
});

const removeCurtain = (curtain: number): Remedy => ({
	action: "remove-curtain",
	figures: { curtain },
	change: [{ op: "remove", path: `/curtains/${curtain}` }],
});

/** Those that cure and bring no other warning in its place: curtains can be hung otherwise in many ways, and one trouble for another is no cure. */
function worthwhile(refused: Refused, finding: Finding, remedies: readonly Remedy[]): Remedy[] {
	const now = refused.findings.filter(isWarning).length;
	return curing(refused, finding, remedies).filter(({ change }) => refused.trial.warnings(change) < now);
}

function nearest(
	refused: Refused,
	finding: Finding,
	remedyOf: (value: number) => Remedy,
	wanted: number,
	range: readonly [number, number],
	tries: number,
): Remedy[] {
	const holds = (one: number) => worthwhile(refused, finding, [remedyOf(one)]).length > 0;
	const value = nearestWhole(holds, wanted, range, tries);
	return value === null ? [] : [remedyOf(value)];
}
