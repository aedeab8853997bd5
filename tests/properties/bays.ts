import { type BayPlan, type Job, libraryOf, parseJob, planBay, severities } from "@baywright/setout";
import fc from "fast-check";

/** A bay as a job file would have it; the defaults are left to the schema. */
export interface DrawnBay {
	readonly id: string;
	readonly corners: readonly (readonly [number, number])[];
	readonly walls: readonly Record<string, unknown>[];
	readonly openings: readonly Record<string, unknown>[];
	readonly obstacles: readonly Record<string, unknown>[];
	readonly track: Readonly<Record<string, unknown>>;
}

/** Walls one after another, before they are put anywhere: turns are to the right, degrees; lengths mm. */
export interface Shape {
	readonly lengths: readonly number[];
	readonly turns: readonly number[];
}

export type Bay = Job["bays"][number];

const SEED = 1407;

/** Runs a property with a fixed seed; on failure fast-check prints it with the path to the smallest failing case. */
export const check = <Case>(cases: fc.Arbitrary<Case>, law: (bay: Case) => void, numRuns: number): void =>
	fc.assert(fc.property(cases, law), { seed: SEED, numRuns });

/** A figure such as a tape gives, and now and then the limits themselves. */
const between = (min: number, max: number) =>
	fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);
const orNull = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: null });

const shapeOf = (turns: fc.Arbitrary<readonly number[]>, length: fc.Arbitrary<number>): fc.Arbitrary<Shape> =>
	turns.chain((all) =>
		fc
			.array(length, { minLength: all.length + 1, maxLength: all.length + 1 })
			.map((lengths) => ({ lengths, turns: all })),
	);

const wallLength = fc.oneof({ weight: 5, arbitrary: between(500, 3500) }, { weight: 1, arbitrary: between(5, 500) });
const splayed = shapeOf(fc.tuple(between(20, 75), between(20, 75)), wallLength);
const square = shapeOf(fc.constant([90, 90]), wallLength);
const outOfSquare = shapeOf(fc.tuple(between(80, 100), between(80, 100)), wallLength);
const oneCorner = shapeOf(fc.tuple(between(4, 155)), wallLength);
const oneWall = shapeOf(fc.constant([]), wallLength);
const withSlightTurns = shapeOf(
	fc.array(fc.oneof(between(-2.9, 2.9), between(20, 60), between(-1e-6, 1e-6)), { minLength: 1, maxLength: 4 }),
	wallLength,
);
const manyWalled = fc
	.integer({ min: 3, max: 6 })
	.chain((corners) =>
		shapeOf(fc.array(between(10, 180 / corners), { minLength: corners, maxLength: corners }), between(350, 1500)),
	);
/** 2 to 60 walls that go round less than half a turn. */
const longChain = fc
	.integer({ min: 1, max: 59 })
	.chain((corners) =>
		shapeOf(
			fc.array(fc.oneof(between(3.1, 3.1 + 120 / corners), between(-1, 1)), { minLength: corners, maxLength: corners }),
			between(120, 1200),
		),
	);
/** Anything: external corners, folds, spirals and crossings among them. */
const wildShape = shapeOf(
	fc.array(between(-175, 175), { minLength: 1, maxLength: 8 }),
	fc.oneof(between(0, 3000), between(0, 3)),
);
const spiral = fc
	.integer({ min: 5, max: 12 })
	.chain((corners) =>
		shapeOf(fc.array(between(60, 120), { minLength: corners, maxLength: corners }), between(600, 2500)),
	);

export const ordinaryShapes = fc.oneof(
	splayed,
	square,
	outOfSquare,
	oneCorner,
	oneWall,
	withSlightTurns,
	manyWalled,
	longChain,
);
export const anyShapes = fc.oneof({ weight: 3, arbitrary: ordinaryShapes }, wildShape, spiral);

export interface Placing {
	readonly x: number;
	readonly y: number;
	/** Heading of the first wall, degrees counter-clockwise from +x. */
	readonly heading: number;
}

export const placings: fc.Arbitrary<Placing> = fc.record({
	x: between(-5000, 5000),
	y: between(-5000, 5000),
	heading: between(0, 360),
});

/** The corners of a shape put somewhere. */
export function cornersOf({ lengths, turns }: Shape, { x, y, heading }: Placing): [number, number][] {
	let direction = (heading * Math.PI) / 180;
	let at: [number, number] = [x, y];
	const corners = [at];
	lengths.forEach((length, wall) => {
		at = [at[0] + length * Math.cos(direction), at[1] + length * Math.sin(direction)];
		corners.push(at);
		direction -= ((turns[wall] ?? 0) * Math.PI) / 180;
	});
	return corners;
}

const SYSTEMS = ["light-corded", "heavy-hand-drawn", "flexible", "ceiling-channel", "fine-hand-drawn"];
const stretch = (length: number) =>
	fc.tuple(between(-0.2, 1.2), between(0.01, 0.6)).map(([from, long]) => {
		const start = from * length;
		return [start, start + 1 + long * length] as [number, number];
	});

const wallArb = (length: number, plain: boolean) =>
	plain
		? fc.constant<Record<string, unknown>>({})
		: fc.record<Record<string, unknown>>({
				projection: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: between(50, 100) }),
				noDrill: fc.oneof(
					{ weight: 4, arbitrary: fc.constant([]) },
					{ weight: 1, arbitrary: fc.array(stretch(length), { minLength: 1, maxLength: 3 }) },
				),
			});

const place = ({ lengths }: Shape, low = -0.1, high = 1.1) =>
	fc
		.nat(lengths.length - 1)
		.chain((wall) => between(low, high).map((share) => ({ wall, at: share * (lengths[wall] as number) })));

const few = <Value>(value: fc.Arbitrary<Value>, most = 2) =>
	fc.oneof(
		{ weight: 3, arbitrary: fc.constant<Value[]>([]) },
		{ weight: 1, arbitrary: fc.array(value, { minLength: 1, maxLength: most }) },
	);

const trackArb = (shape: Shape): fc.Arbitrary<Record<string, unknown>> => {
	const last = shape.lengths.length - 1;
	const ends = fc.oneof(
		{ weight: 4, arbitrary: fc.constant({ start: null, end: null }) },
		{
			weight: 2,
			arbitrary: fc.tuple(between(0, 0.6), between(0.4, 1)).map(([start, end]) => ({
				start: { wall: 0, at: start * (shape.lengths[0] as number) },
				end: { wall: last, at: end * (shape.lengths[last] as number) },
			})),
		},
		{ weight: 1, arbitrary: fc.record({ start: orNull(place(shape)), end: orNull(place(shape)) }) },
	);
	const bends =
		last === 0
			? fc.constant([])
			: few(fc.record({ corner: fc.integer({ min: 1, max: last }), radius: between(30, 900) }), 3).map((all) =>
					all.filter(({ corner }, i) => all.findIndex((other) => other.corner === corner) === i),
				);
	return fc
		.record({
			system: fc.constantFrom(...SYSTEMS),
			mounting: fc.constantFrom("wall", "wall", "ceiling"),
			projection: fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: between(20, 160) }),
			radius: orNull(between(100, 900)),
			height: orNull(between(1500, 2600)),
			bends,
			joints: fc.oneof(
				{ weight: 3, arbitrary: fc.constant("auto") },
				{ weight: 1, arbitrary: fc.constant("none") },
				{ weight: 1, arbitrary: fc.array(place(shape), { maxLength: 3 }) },
			),
			brackets: few(place(shape), 4),
			draw: fc.constantFrom("pair", "left", "right", "none"),
		})
		.chain((track) => ends.map((both) => ({ ...track, ...both })));
};

const drawn = (shape: Shape, plain: boolean): fc.Arbitrary<DrawnBay> => {
	const onWall = fc
		.nat(shape.lengths.length - 1)
		.chain((wall) => stretch(shape.lengths[wall] as number).map(([from, to]) => ({ wall, from, to })));
	return fc.record({
		id: fc.constant("b"),
		corners: placings.map((placing) => cornersOf(shape, placing)),
		walls: fc.tuple(...shape.lengths.map((length) => wallArb(length, plain))),
		openings: few(
			fc.tuple(onWall, between(300, 900), between(1000, 2300)).map(([where, sill, head]) => ({ ...where, sill, head })),
			3,
		),
		obstacles: few(
			fc
				.tuple(onWall, between(0, 2300), between(10, 900), between(0, 200))
				.map(([where, bottom, high, depth]) => ({ ...where, bottom, top: bottom + high, depth })),
			3,
		),
		track: trackArb(shape),
	});
};

/** Bays a fitter may meet: internal corners and slight turns, but with anything on the walls and anything asked of the track. */
export const ordinaryBays: fc.Arbitrary<DrawnBay> = ordinaryShapes.chain((shape) => drawn(shape, false));

/** Whatever can be drawn. */
export const anyBays: fc.Arbitrary<DrawnBay> = anyShapes.chain((shape) => drawn(shape, false));

/** The job round a drawn bay. Throws where the schema refuses it: then the generator is at fault. */
export function jobOf(bay: unknown, systems: readonly unknown[] = []): Job {
	const read = parseJob({ format: "baywright-job", version: 1, systems, bays: [bay] });
	if (!read.ok) throw new Error(`not a job: ${JSON.stringify(read.problems)}`);
	return read.job;
}

export const bayOf = (job: Job): Bay => job.bays[0] as Bay;

/** Without the remedies that are found by trying: most properties ask for none, and they take the longest. */
export const planOf = (job: Job): BayPlan => planBay(bayOf(job), libraryOf(job), { trials: 0 });

export const planDrawn = (bay: unknown, systems: readonly unknown[] = []): BayPlan => planOf(jobOf(bay, systems));

export const refusalsOf = ({ findings }: BayPlan) => findings.filter(({ code }) => REFUSALS.has(code));

const REFUSALS: ReadonlySet<string> = new Set(
	Object.entries(severities)
		.filter(([, severity]) => severity === "refusal")
		.map(([code]) => code),
);
