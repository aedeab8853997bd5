import { glidersOf } from "../curtains/folds.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Library } from "../library/library.ts";
import { clothParts } from "./cloth-parts.ts";
import { type Counted, curtainPlaces, piece, type ToCount } from "./counted.ts";
import { fixingParts } from "./fixing-parts.ts";
import type { Part, PartSource } from "./part.ts";
import { metresUp, spareOf } from "./spare.ts";

/** Projections this near are one bracket, mm. */
const SAME_PROJECTION = 0.5;

/** Everything to buy for one bay, in the order of the work: each line counted from the plan. Nothing where no track fits. */
export function bayParts(bay: Bay, plan: ToCount, library: Pick<Library, "cloths" | "spare">): Part[] {
	if (plan.path === null) return [];
	const counted = [
		...trackParts(plan),
		...bracketParts(bay, plan),
		...hardwareParts(plan, plan.path.length),
		...cordParts(plan),
		...fixingParts(bay, plan),
		...clothParts(bay, plan, library.cloths),
	];
	return counted.map((part) => ({ ...part, spare: spareOf(part, part.quantity, library.spare) }));
}

function trackParts({ stock, system }: ToCount): Counted[] {
	return stock.buy.map(({ length, count }) => {
		const cuts = stock.cuts.filter((cut) => cut.stock === length).flatMap(({ pieces }) => pieces);
		return {
			kind: "track",
			item: `track ${length}`,
			system: system.id,
			quantity: count,
			unit: "piece",
			size: length,
			from: [{ of: "pieces", names: cuts.map(({ piece }) => piece) }],
			figures: {},
		};
	});
}

/** One a place; those that stand off their wall by another projection are lines of their own. */
function bracketParts({ track: { mounting } }: Bay, { brackets, joints, system }: ToCount): Counted[] {
	const groups: { kind: Part["kind"]; size: number | null; indexes: number[] }[] = [];
	brackets.forEach(({ station, projection, role }, index) => {
		const atJoint = role === "joint" || joints.some((joint) => Math.abs(joint.station - station) < SAME_PROJECTION);
		const overhead = mounting === "ceiling";
		const kind = atJoint ? "joint-bracket" : overhead ? "ceiling-bracket" : "bracket";
		const size = overhead ? null : projection;
		const known = groups.find(
			(group) => group.kind === kind && (size === null || Math.abs((group.size as number) - size) < SAME_PROJECTION),
		);
		if (known === undefined) groups.push({ kind, size, indexes: [index] });
		else known.indexes.push(index);
	});
	const lines = groups
		.toSorted((a, b) => Number(a.kind === "joint-bracket") - Number(b.kind === "joint-bracket"))
		.map(({ kind, size, indexes }) => piece(kind, system.id, indexes.length, [{ of: "brackets", indexes }], {}, size));
	if (!system.bracket.base || brackets.length === 0) return lines;
	const all = brackets.map((_, index) => index);
	return [...lines, piece("bracket-base", system.id, all.length, [{ of: "brackets", indexes: all }])];
}

/** Common practice, no source: one end stop or pulley an end, one master carrier for each curtain's leading edge. */
function hardwareParts({ joints, system, curtains }: ToCount, length: number): Counted[] {
	const hung: PartSource[] = curtains.length > 0 ? [hungFrom(curtains)] : [{ of: "track" }];
	const gliders =
		curtains.length > 0
			? curtains.reduce((sum, curtain) => sum + curtain.gliders, 0)
			: glidersOf(length, system.gliderSpacing);
	return [
		...(joints.length === 0
			? []
			: [piece("joint", system.id, joints.length, [{ of: "joints", indexes: joints.map((_, i) => i) }])]),
		piece(system.corded ? "end-pulley" : "end-stop", system.id, 2, [{ of: "track" }]),
		piece("glider", system.id, gliders, hung, curtains.length > 0 ? {} : { spacing: system.gliderSpacing, length }),
		...(curtains.length === 0 ? [] : [piece("master-carrier", system.id, curtains.length, hung)]),
	];
}

/** The job's own curtains, or what stands in for them. */
const hungFrom = (curtains: ToCount["curtains"]): PartSource =>
	curtains.some(({ curtain }) => curtain === null)
		? { of: "draw", count: curtains.length }
		: { of: "curtains", indexes: curtainPlaces(curtains) };

function cordParts({ cords, system }: ToCount): Counted[] {
	if (cords === null) return [];
	const { inTrack, hangs, length, unknown } = cords;
	return [
		{
			kind: "cord",
			item: "cord",
			system: system.id,
			quantity: length === null ? null : metresUp(length / 1000),
			unit: "m",
			size: null,
			from: [{ of: "cord" }],
			figures: { inTrack, ...(hangs === null ? {} : { hangs }), ...(unknown === null ? {} : { unknown }) },
		},
		piece("tensioner", system.id, 1, [{ of: "cord" }]),
	];
}
