import { type Adjusted, adjust, type Network, type NetworkPoint, type Observation } from "@baywright/survey";
import { describe, expect, test } from "vitest";

/** Points by name, so that the observations read as they are printed. */
function networkOf(
	fixed: Record<string, readonly [number, number]>,
	from: Record<string, readonly [number, number]>,
	observed: (of: Taking) => Observation[],
) {
	const goes = (points: Record<string, readonly [number, number]>, how: NetworkPoint["goes"]) =>
		Object.values(points).map(([x, y]): NetworkPoint => ({ x, y, goes: how }));
	const names = [...Object.keys(fixed), ...Object.keys(from)];
	const at = (name: string) => names.indexOf(name);
	const observations = observed({
		distance: (a, b, value, sd) => ({ kind: "distance", from: at(a), to: at(b), value, sd, role: "reading" }),
		angle: (a, b, c, value, sd) => ({ kind: "angle", at: at(a), from: at(b), to: at(c), value, sd, role: "reading" }),
	});
	const network: Network = {
		points: [...goes(fixed, "nowhere"), ...goes(from, "free")],
		parameters: [],
		observations,
	};
	const adjusted = settled(network);
	const place = (name: string) => adjusted.points[at(name)] as { x: number; y: number };
	/** Scaled by the a-posteriori deviation of unit weight, as the examples print it. */
	const sd = (name: string) => {
		const [x, y] = [2 * at(name), 2 * at(name) + 1];
		const of = (i: number) => Math.sqrt(adjusted.covariance[i]?.[i] as number) * (adjusted.sigma0 as number);
		return { x: of(x), y: of(y) };
	};
	return { adjusted, place, sd };
}

interface Taking {
	readonly distance: (a: string, b: string, value: number, sd: number) => Observation;
	/** Clockwise at a from b to c, radians. */
	readonly angle: (a: string, b: string, c: string, value: number, sd: number) => Observation;
}

function settled(network: Network): Adjusted {
	const outcome = adjust(network);
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

const dms = (degrees: number, minutes = 0, seconds = 0) => ((degrees + minutes / 60 + seconds / 3600) * Math.PI) / 180;

/** Half a unit of the last digit printed. */
const printed = (digits: number) => 0.5 * 10 ** -digits + 1e-12;
const expectPrinted = (value: number, figure: number, digits: number) =>
	expect(Math.abs(value - figure), `${value} for ${figure}`).toBeLessThanOrEqual(printed(digits));

describe("plane networks: F. Krumm, Geodetic Network Adjustment Examples, Universität Stuttgart, rev. 3.5 (2020)", () => {
	test("Strang & Borre 1997: three distances to one point", () => {
		const { place, sd } = networkOf(
			{ 1: [170.71, 270.71], 2: [100, 100], 3: [241.42, 100] },
			{ P: [170.71, 170.71] },
			({ distance }) => [
				distance("1", "P", 100.01, 0.01),
				distance("2", "P", 100.02, 0.01),
				distance("3", "P", 100.03, 0.01),
			],
		);
		expectPrinted(place("P").x, 170.7029, 4);
		expectPrinted(place("P").y, 170.7234, 4);
		expectPrinted(sd("P").x * 100, 3.303, 3);
		expectPrinted(sd("P").y * 100, 2.335, 3);
	});

	test("Benning 2011, example 8-2: two points by five distances", () => {
		const { adjusted, place, sd } = networkOf(
			{ 1: [0, 1000], 2: [1000, 1000] },
			{ 3: [0, 0], 4: [1000, 0] },
			({ distance }) => [
				distance("1", "3", 1000.02, 0.01),
				distance("1", "4", 1414.2, 0.01),
				distance("2", "3", 1414.24, 0.01),
				distance("2", "4", 999.98, 0.01),
				distance("3", "4", 1000, 0.01),
			],
		);
		expectPrinted(place("3").x, -0.0096, 4);
		expectPrinted(place("3").y, -0.0226, 4);
		expectPrinted(place("4").x, 999.993, 4);
		expectPrinted(place("4").y, 0.0174, 4);
		for (const name of ["3", "4"]) {
			expectPrinted(sd(name).x * 100, 0.901, 3);
			expectPrinted(sd(name).y * 100, 0.637, 3);
		}
		// s0 is printed in the unit of the readings: √(vᵀv / redundancy), which is sigma0 times their deviation.
		expectPrinted((adjusted.sigma0 as number) * 0.01 * 1000, 6.882, 3);
		expect(adjusted.redundancy).toBeCloseTo(1, 9);
		[0.26, -0.368, -0.368, 0.26, 0.26].forEach((residual, i) => {
			expectPrinted((adjusted.observations[i]?.residual as number) * 100, residual, 3);
		});
	});

	test("Benning 2011, example 8-8: one point by five distances", () => {
		const { place, sd } = networkOf(
			{ 1: [3000, 2000], 2: [1000, 2000], 3: [3000, 2100], 4: [1000, 2100], 5: [2000, 1000] },
			{ 6: [2000, 2000] },
			({ distance }) => [
				distance("6", "1", 1000, 0.02),
				distance("6", "2", 1000, 0.02),
				distance("6", "3", 1005, 0.02),
				distance("6", "4", 1005, 0.02),
				distance("6", "5", 1000, 0.02),
			],
		);
		expectPrinted(place("6").x, 2000, 4);
		expectPrinted(place("6").y, 1999.9976, 4);
		expectPrinted(sd("6").x * 100, 0.504, 3);
		expectPrinted(sd("6").y * 100, 0.996, 3);
	});

	test("Ghilani 2010, example 16.1: a chain of two distances and three angles", () => {
		const { place, sd } = networkOf(
			{ Q: [1000, 800], R: [1000, 1000], S: [1223, 1186.5], T: [1400, 1186.5] },
			{ U: [1173.2, 1100] },
			({ distance, angle }) => [
				distance("R", "U", 200, 0.05),
				distance("U", "S", 100, 0.08),
				angle("R", "Q", "U", dms(240), dms(0, 0, 30)),
				angle("U", "R", "S", dms(150), dms(0, 0, 30)),
				angle("S", "U", "T", dms(240, 1), dms(0, 0, 30)),
			],
		);
		expectPrinted(place("U").x, 1173.0886, 4);
		expectPrinted(place("U").y, 1099.9872, 4);
		expectPrinted(sd("U").x * 100, 4.194, 3);
		expectPrinted(sd("U").y * 100, 5.264, 3);
	});
});

/** NIST StRD, linear regression, Norris: 36 pairs. Source: National Institute of Standards and Technology, Statistical Reference Datasets. */
const norris = {
	x: [
		0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
		11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
		448.9, 0.5,
	],
	y: [
		0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
		557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2,
		0.2,
	],
};

test("NIST StRD Norris: a straight line through 36 pairs, certified to 15 digits", () => {
	const unknown = { value: 0, fixed: false };
	const adjusted = settled({
		points: [],
		parameters: [unknown, unknown],
		observations: norris.x.map((x, i) => ({
			kind: "sum",
			terms: [
				{ parameter: 0, factor: 1 },
				{ parameter: 1, factor: x },
			],
			value: norris.y[i] as number,
			sd: 1,
			role: "reading",
		})),
	});
	const [b0, b1] = adjusted.parameters as [number, number];
	// Absolute, as rounding of figures near 1000 leaves it.
	expect(Math.abs(b0 - -0.262323073774029)).toBeLessThan(1e-12);
	expect(Math.abs(b1 - 1.00211681802045)).toBeLessThan(5e-15);
	expect(Math.abs(adjusted.sumOfSquares - 26.6173985294224)).toBeLessThan(1e-11);
	expect(adjusted.redundancy).toBeCloseTo(34, 9);
});

test("Gander, Golub & Strebel, BIT 34 (1994): the circle nearest to six points (fitted values from memory, recomputed)", () => {
	// A circle is where a tape with a hook worn by the radius reads nothing.
	const taken = [
		[1, 7],
		[2, 6],
		[5, 8],
		[7, 7],
		[9, 5],
		[3, 7],
	] as const;
	const adjusted = settled({
		points: [...taken.map(([x, y]): NetworkPoint => ({ x, y, goes: "nowhere" })), { x: 4.5, y: 4, goes: "free" }],
		parameters: [{ value: 0, fixed: false }],
		observations: taken.map((_, i) => ({
			kind: "distance",
			from: i,
			to: 6,
			zero: 0,
			value: 0,
			sd: 1,
			role: "reading",
		})),
	});
	expectPrinted(adjusted.points[6]?.x as number, 4.7398, 4);
	expectPrinted(adjusted.points[6]?.y as number, 2.9835, 4);
	expectPrinted(-(adjusted.parameters[0] as number), 4.7142, 4);
});
