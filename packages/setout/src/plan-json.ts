import { type Point, type Segment, toDegrees } from "@baywright/geometry";
import type { BayPlan, Mark } from "./bay-plan.ts";
import { bentAt } from "./bent-at.ts";
import { describe } from "./finding/describe.ts";
import type { LengthUnit } from "./job/schema.ts";
import { describePart } from "./order/describe-part.ts";

/** The plans as the command writes them: lengths mm, angles degrees. */
export function planJson(plans: readonly BayPlan[], unit: LengthUnit) {
	return { format: "baywright-plan", version: 1, bays: plans.map((plan) => bayJson(plan, unit)) } as const;
}

function bayJson(plan: BayPlan, unit: LengthUnit) {
	const walls = plan.projections.length;
	return {
		id: plan.id,
		path: plan.path === null ? null : { length: plan.path.length, segments: plan.path.segments.map(segmentJson) },
		corners: plan.corners.map(({ corner, interiorAngle, radius, setBack, sd, sweep, cornerGap }) => ({
			corner,
			interiorAngle: toDegrees(interiorAngle),
			radius,
			setBack,
			sd,
			sweep,
			cornerGap,
		})),
		bows: plan.bows.map(({ turn, ...bow }) => ({ ...bow, turn: toDegrees(turn) })),
		bridged: plan.bridged,
		brackets: plan.brackets.map((bracket) => ({ ...bracket, at: pair(bracket.at) })),
		fixings: plan.fixings,
		joints: plan.joints,
		pieces: plan.pieces.map((piece) => ({
			...piece,
			marks: piece.marks.map((mark) => markJson(mark, plan)),
		})),
		stock: { buy: plan.stock.buy, cuts: plan.stock.cuts, waste: plan.stock.waste },
		stackBack: plan.stackBack,
		glass: plan.glass,
		covered: plan.covered,
		curtains: plan.curtains,
		loads: plan.loads.map((load) => ({ ...load, limit: plan.system.bracket.maxLoad })),
		cords: plan.cords,
		parts: plan.parts.map((part) => ({ ...part, ...describePart(part, unit) })),
		survey: surveyJson(plan.survey),
		fitted: plan.fitted,
		findings: plan.findings.map((finding) => {
			const { severity, message, remedies } = describe(finding, { unit, walls });
			const { at, from, ...where } = finding.where;
			return {
				code: finding.code,
				severity,
				message,
				where: {
					...where,
					...(at === undefined ? {} : { at: pair(at) }),
					...(from === undefined ? {} : { from: pair(from) }),
				},
				figures: finding.figures,
				remedies: finding.remedies.map(({ change }, i) => ({ label: remedies[i], change })),
			};
		}),
	};
}

/** Readings by their index in the job's `readings`, spans between brackets counted on after them. */
function surveyJson(survey: BayPlan["survey"]) {
	if (survey === null) return { settled: false, sigma0: null, redundancy: 0, suspects: [], next: null, telling: null };
	const { settled, sigma0, redundancy, suspects, next, telling } = survey;
	return {
		settled,
		sigma0,
		redundancy: Math.round(redundancy),
		suspects: [...new Set(suspects.flatMap(({ readings }) => readings))],
		next: next && { reading: next.reading, reaches: next.reaches },
		telling,
	};
}

/** A bend mark also says which bend: by the corners that it goes round, or the bowed wall, and its radius. */
function markJson(mark: Mark, plan: BayPlan) {
	const { kind, fromLeft, fromRight } = mark;
	const read = { kind, fromLeft, fromRight };
	const bent = bentAt(mark, plan);
	if (bent === null) return read;
	const { radius, corners, wall } = bent;
	return { ...read, radius, where: wall === null ? { corners } : { wall } };
}

function segmentJson(segment: Segment) {
	const ends = { from: pair(segment.from), to: pair(segment.to) };
	if (segment.kind === "straight") return { kind: segment.kind, ...ends, length: segment.length, wall: segment.wall };
	const { kind, centre, radius, turn, length } = segment;
	const arc = { kind, ...ends, centre: pair(centre), radius, turn: toDegrees(turn), length };
	return segment.kind === "bend" ? { ...arc, corners: segment.corners } : { ...arc, wall: segment.wall };
}

const pair = ({ x, y }: Point): readonly [number, number] => [x, y];
