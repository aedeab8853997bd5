import type { Point, Radians } from "@baywright/geometry";
import { linesOf, type State } from "./measure.ts";
import type { Observation } from "./observation.ts";
import { COINCIDENT } from "./tolerance.ts";

/** Points and parameters, where they are thought to be, and what was observed of them. */
export interface Network {
	readonly points: readonly NetworkPoint[];
	readonly parameters: readonly Parameter[];
	readonly observations: readonly Observation[];
}

/** A point and where it may go: anywhere, nowhere, or to and fro along a heading only. */
export interface NetworkPoint extends Point {
	readonly goes: "free" | "nowhere" | { readonly along: Radians };
}

/** An unknown that is no point, a rise for one, or a known one where it is fixed. */
export interface Parameter {
	readonly value: number;
	readonly fixed: boolean;
}

export type NetworkFault =
	| { readonly kind: "not-a-number"; readonly of: "point" | "parameter" | "value" | "sd"; readonly index: number }
	| { readonly kind: "sd-not-positive"; readonly observation: number; readonly sd: number }
	| { readonly kind: "coincident"; readonly observation: number; readonly points: readonly [number, number] }
	/** No such thing can be read where the points are thought to be: an arm longer than its bow, places of a span that coincide. */
	| { readonly kind: "unobservable"; readonly observation: number }
	/** Nothing observed says where these are. */
	| { readonly kind: "undetermined"; readonly points: readonly number[]; readonly parameters: readonly number[] }
	/** The search for rest was given up; `step` is the last one, in standard deviations. */
	| { readonly kind: "restless"; readonly step: number };

/** Which columns of the state move with one unknown, and how far. */
export type Unknown = readonly { readonly column: number; readonly factor: number }[];

export function startOf({ points, parameters }: Network): State {
	const values = new Float64Array(2 * points.length + parameters.length);
	points.forEach(({ x, y }, i) => {
		values[2 * i] = x;
		values[2 * i + 1] = y;
	});
	parameters.forEach(({ value }, i) => {
		values[2 * points.length + i] = value;
	});
	return { values, firstParameter: 2 * points.length };
}

export function unknownsOf({ points, parameters }: Network): Unknown[] {
	const unknowns: Unknown[] = [];
	points.forEach(({ goes }, i) => {
		if (goes === "nowhere") return;
		if (goes === "free") unknowns.push([{ column: 2 * i, factor: 1 }], [{ column: 2 * i + 1, factor: 1 }]);
		else
			unknowns.push([
				{ column: 2 * i, factor: Math.cos(goes.along) },
				{ column: 2 * i + 1, factor: Math.sin(goes.along) },
			]);
	});
	parameters.forEach(({ fixed }, i) => {
		if (!fixed) unknowns.push([{ column: 2 * points.length + i, factor: 1 }]);
	});
	return unknowns;
}

/** Greatest extent of the points, and no less than the largest parameter: the measure of what is small. */
export function extentOf({ values, firstParameter }: State): number {
	let extent = 0;
	for (let i = 2; i < firstParameter; i++)
		extent = Math.max(extent, Math.abs((values[i] as number) - (values[i % 2] as number)));
	for (let i = firstParameter; i < values.length; i++) extent = Math.max(extent, Math.abs(values[i] as number));
	return extent;
}

/** What makes a network unfit before anything is reckoned. */
export function faultsOf(network: Network): NetworkFault[] {
	const faults: NetworkFault[] = [];
	const { points, parameters, observations } = network;
	const check = (of: "point" | "parameter" | "value" | "sd", index: number, ...figures: number[]) => {
		if (!figures.every(Number.isFinite)) faults.push({ kind: "not-a-number", of, index });
	};
	points.forEach(({ x, y, goes }, i) => {
		check("point", i, x, y, typeof goes === "string" ? 0 : goes.along);
	});
	parameters.forEach(({ value }, i) => {
		check("parameter", i, value);
	});
	if (faults.length > 0) return faults;
	const together = coincidences(network);
	if (together.length > 0) return together;
	observations.forEach(({ value, sd }, i) => {
		check("value", i, value);
		check("sd", i, sd);
	});
	if (faults.length > 0) return faults;
	return observations.flatMap(({ sd }, i): NetworkFault[] =>
		sd > 0 ? [] : [{ kind: "sd-not-positive", observation: i, sd }],
	);
}

function coincidences(network: Network): NetworkFault[] {
	const least = COINCIDENT * extentOf(startOf(network));
	return network.observations.flatMap((observation, index) =>
		linesOf(observation)
			.filter(([a, b]) => {
				const [from, to] = [network.points[a], network.points[b]];
				if (from === undefined || to === undefined)
					throw new Error(`Broken invariant: observation ${index} names a point that is not in the network.`);
				return Math.hypot(to.x - from.x, to.y - from.y) <= least;
			})
			.map((points): NetworkFault => ({ kind: "coincident", observation: index, points })),
	);
}
