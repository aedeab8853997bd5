import fc from "fast-check";
import { cornersOf, type Shape } from "./bays.ts";

/** A bay of any corners and bows, before it is put anywhere: every wall has its rise (mm, + away from the room) and its projection. */
export interface AnyBay {
	readonly shape: Shape;
	readonly rises: readonly number[];
	/** As a share of the system's range; null for the usual one. */
	readonly projections: readonly (number | null)[];
	readonly system: SystemId;
	readonly radii: readonly (number | null)[];
}

/** What the generators need to know of the built-in systems. mm. */
export const RANGES = {
	"light-corded": [30, 150],
	"heavy-hand-drawn": [50, 200],
	flexible: [25, 100],
	"ceiling-channel": [30, 400],
	"fine-hand-drawn": [40, 120],
} as const;
export type SystemId = keyof typeof RANGES;

export const part = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);
const between = (min: number, max: number) => part.map((share) => min + (max - min) * share);

interface Formed extends Shape {
	readonly rises: readonly number[];
}

const straight = (lengths: readonly number[], turns: readonly number[]): Formed => ({
	lengths,
	turns,
	rises: lengths.map(() => 0),
});

const long = between(700, 2500);
const facet = between(50, 400);

/** One external corner. */
export const pier: fc.Arbitrary<Formed> = fc
	.tuple(long, long, between(-159.9, -4))
	.map(([a, b, turn]) => straight([a, b], [turn]));

/** A chimney breast or a pier between two windows: out, along, and back. */
export const breast: fc.Arbitrary<Formed> = fc
	.tuple(long, between(20, 600), between(200, 1600), between(20, 600), long, between(60, 110), between(60, 110))
	.map(([a, out, front, back, b, first, last]) => straight([a, out, front, back, b], [first, -first, -last, last]));

/** Opposite turns close together: a nib or a step in the wall. */
export const nib: fc.Arbitrary<Formed> = fc
	.tuple(long, between(20, 500), long, between(10, 100), between(10, 100), fc.boolean())
	.map(([a, short, b, first, second, external]) =>
		straight([a, short, b], external ? [-first, second] : [first, -second]),
	);

/** A run of short facets of one sense between two long walls. */
export const faceted: fc.Arbitrary<Formed> = fc
	.integer({ min: 2, max: 6 })
	.chain((corners) =>
		fc
			.tuple(
				long,
				long,
				fc.array(facet, { minLength: corners - 1, maxLength: corners - 1 }),
				fc.array(between(4, 200 / corners), { minLength: corners, maxLength: corners }),
				fc.boolean(),
			)
			.map(([a, b, facets, turns, external]) =>
				straight([a, ...facets, b], external ? turns.map((turn) => -turn) : turns),
			),
	);

/** A run of short facets with a slight turn of either sense among its corners. */
export const slightAmong: fc.Arbitrary<Formed> = fc
	.tuple(
		long,
		long,
		fc.array(facet, { minLength: 3, maxLength: 3 }),
		fc.integer({ min: 0, max: 3 }),
		part,
		fc.boolean(),
	)
	.map(([a, b, facets, which, slight, external]) => {
		const turns = [24, 31, 28, 35].with(which, (slight - 0.5) * 5.6);
		return straight([a, ...facets, b], external ? turns.map((turn) => -turn) : turns);
	});

/** Some junctions are tangent already, or nearly. */
const oneTurn = fc.oneof(
	{ weight: 6, arbitrary: between(-80, 80) },
	{ weight: 1, arbitrary: fc.constant(0) },
	{ weight: 1, arbitrary: between(-1e-5, 1e-5) },
	{ weight: 1, arbitrary: between(-3.2, 3.2) },
);

/** Bowed walls, both ways, among straight ones. */
export const bowed: fc.Arbitrary<Formed> = fc.integer({ min: 1, max: 4 }).chain((walls) =>
	fc
		.tuple(
			fc.array(between(300, 2500), { minLength: walls, maxLength: walls }),
			fc.array(oneTurn, { minLength: walls - 1, maxLength: walls - 1 }),
			fc.array(fc.oneof(fc.constant(0), between(-0.4, 0.4), between(-0.05, 0.05)), {
				minLength: walls,
				maxLength: walls,
			}),
		)
		.map(([lengths, turns, bows]) => ({
			lengths,
			turns,
			rises: lengths.map((length, wall) => length * (bows[wall] as number)),
		})),
);

/** Room angles 20–340°, any lengths, any bows. */
export const anything: fc.Arbitrary<Formed> = fc.integer({ min: 2, max: 8 }).chain((walls) =>
	fc
		.tuple(
			fc.array(fc.oneof(long, facet), { minLength: walls, maxLength: walls }),
			fc.array(fc.oneof(between(-159.9, 159.9), between(-60, 60), between(-3.2, 3.2)), {
				minLength: walls - 1,
				maxLength: walls - 1,
			}),
			fc.array(fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: between(-0.45, 0.45) }), {
				minLength: walls,
				maxLength: walls,
			}),
		)
		.map(([lengths, turns, bows]) => ({
			lengths,
			turns,
			rises: lengths.map((length, wall) => length * (bows[wall] as number)),
		})),
);

export const allForms = fc.oneof(pier, breast, nib, faceted, bowed, anything);

/** The bays of a kind of form, on any system; projections all alike, or now and then each wall its own. */
export const baysOf = (forms: fc.Arbitrary<Formed>, { setRadii = false } = {}): fc.Arbitrary<AnyBay> =>
	forms.chain((form) => {
		const walls = form.lengths.length;
		const perWall = <Value>(value: fc.Arbitrary<Value>) => fc.array(value, { minLength: walls, maxLength: walls });
		const none = fc.constant(form.lengths.map(() => null));
		const alike = fc.option(part, { nil: null }).map((share) => form.lengths.map(() => share));
		return fc.record({
			shape: fc.constant({ lengths: form.lengths, turns: form.turns }),
			rises: fc.constant(form.rises),
			projections: fc.oneof({ weight: 2, arbitrary: none }, alike, perWall(fc.option(part, { nil: null }))),
			system: fc.constantFrom(...(Object.keys(RANGES) as SystemId[])),
			radii: setRadii
				? fc.oneof(
						{ weight: 2, arbitrary: none },
						perWall(fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, between(60, 900))),
					)
				: none,
		});
	});

/** The bay as a job file has it, its corners given. */
export function drawnAt(
	{ rises, projections, system, radii }: AnyBay,
	corners: readonly (readonly [number, number])[],
) {
	const [min, max] = RANGES[system];
	return {
		id: "b",
		corners,
		walls: rises.map((rise, wall) => {
			const share = projections[wall] ?? null;
			return { rise, projection: share === null ? null : min + (max - min) * share };
		}),
		track: {
			system,
			bends: radii.flatMap((radius, corner) => (corner === 0 || radius === null ? [] : [{ corner, radius }])),
		},
	};
}

/** Corners of a bay whose walls may bow: the turns given are those between the faces at each corner. */
export function anyCorners({ shape, rises }: AnyBay, placing: { x: number; y: number; heading: number }) {
	const half = (wall: number) => {
		const chord = shape.lengths[wall] as number;
		return (2 * Math.atan((2 * (rises[wall] as number)) / chord) * 180) / Math.PI;
	};
	const turns = shape.turns.map((turn, corner) => turn + half(corner) + half(corner + 1));
	return cornersOf({ ...shape, turns }, placing);
}

/** The same bay in a mirror. */
export const mirrorOf = (bay: AnyBay): AnyBay => ({
	...bay,
	shape: { lengths: bay.shape.lengths.toReversed(), turns: bay.shape.turns.toReversed() },
	rises: bay.rises.toReversed(),
	projections: bay.projections.toReversed(),
	radii: bay.radii.map((_, corner) => (corner === 0 ? null : (bay.radii[bay.radii.length - corner] ?? null))),
});
