import { found, type Outcome, type Point, toDegrees, toRadians } from "@baywright/geometry";
import type { Adjusted, Agreement } from "./adjust.ts";
import { bayNetwork, type DrawnBay, isExternal, observedOf } from "./bay-network.ts";
import { type Covariance, type Gradient, seenFrom } from "./covariance.ts";
import { fewestReadings } from "./fewest-readings.ts";
import { foresee } from "./linear.ts";
import type { Network, NetworkFault } from "./network.ts";
import { type Candidate, nextReading } from "./next-reading.ts";
import { chordDeviation } from "./observation.ts";
import { isInDegrees, type Reading, type ReadingFault, type ReadingOf, USUAL_SD } from "./reading.ts";
import { adjustBay } from "./restart.ts";
import { stateOf } from "./state-of.ts";
import { type Suspicion, suspects } from "./suspects.ts";
import { tellApart } from "./tell-apart.ts";

/** A bay as its readings say it is, and how sure that is. Corner 0 and the direction of the frame wall are as drawn. */
export interface SettledBay extends Agreement {
	readonly corners: readonly Point[];
	/** One a wall, mm. */
	readonly rises: readonly number[];
	/** A priori; over x and y of every corner in turn, then the rises. What was only drawn counts as good to a tenth of a run and 10° a turn. */
	readonly covariance: Covariance;
	/** One a reading, in their order. */
	readonly readings: readonly ReadingCheck[];
	readonly drawn: DrawnBay;
	readonly network: Network;
	readonly adjusted: Adjusted;
}

export interface ReadingCheck {
	/** Adjusted less taken, mm or degrees as the reading. */
	readonly residual: number;
	/** Share of an error that would show, 0 to 1. */
	readonly redundancy: number;
	/** Null where nothing checks the reading. */
	readonly standardized: number | null;
}

export type BayFault =
	| ReadingFault
	| { readonly kind: "too-few-corners"; readonly count: number }
	| { readonly kind: "no-such-wall"; readonly wall: number }
	| { readonly kind: "corners-coincide"; readonly corners: readonly [number, number] }
	| { readonly kind: "corner-not-a-number"; readonly corner: number }
	| { readonly kind: "rise-not-a-number"; readonly wall: number }
	/** Its value, its deviation or its place is none, or it cannot be read in such a bay. */
	| { readonly kind: "reading-impossible"; readonly reading: number }
	/** The readings and the drawing are too far apart for any bay to be found between them. */
	| { readonly kind: "unsettled"; readonly corners: readonly number[]; readonly walls: readonly number[] };

/** Settles the corners and rises of a bay by its readings; what none of them tells stays as drawn. */
export function settleBay(drawn: DrawnBay): Outcome<SettledBay, BayFault> {
	const { corners, frameWall = 0 } = drawn;
	if (corners.length < 2) return { ok: false, faults: [{ kind: "too-few-corners", count: corners.length }] };
	if (!Number.isInteger(frameWall) || frameWall < 0 || frameWall >= corners.length - 1)
		return { ok: false, faults: [{ kind: "no-such-wall", wall: frameWall }] };
	const network = bayNetwork(drawn);
	if (!network.ok) return network;
	const rest = adjustBay(network.value, frameWall);
	if (!rest.ok) return { ok: false, faults: distinct(rest.faults.map((fault) => bayFault(fault, drawn))) };
	const adjusted = withCornerZero(rest.value, corners[0] as Point, frameWall);
	const { points, parameters, covariance, redundancy, sigma0, sumOfSquares, greatestSum, closes } = adjusted;
	const readings = drawn.readings.map((reading, k): ReadingCheck => {
		const check = adjusted.observations[k] as ReadingCheck;
		return { ...check, residual: inReadingsUnit(reading, check.residual) };
	});
	const agreement = { redundancy, sigma0, sumOfSquares, greatestSum, closes };
	return found({
		corners: points,
		rises: parameters,
		covariance,
		readings,
		drawn,
		network: network.value,
		adjusted,
		...agreement,
	});
}

/** Which readings of a settled bay to doubt, the most suspect first; lengths in mm, angles in degrees. */
export function suspectReadings({ drawn, network, adjusted }: SettledBay): Suspicion[] {
	return suspects(network, adjusted).map((suspicion) => ({
		...suspicion,
		grossErrors: suspicion.readings.map((reading, i) => {
			const error = suspicion.grossErrors[i] as number;
			return -inReadingsUnit(drawn.readings[reading] as Reading, -error);
		}),
		closesWithin: { length: suspicion.closesWithin.length, angle: toDegrees(suspicion.closesWithin.angle) },
	}));
}

/** What might be read next; `sd` null = the kind's usual deviation. */
export type CandidateReading = ReadingOf & { readonly sd: number | null };

export interface NextBayReading {
	/** Index of the candidate. */
	readonly candidate: number;
	/** Standard deviation of the worst figure now and with the reading taken, in the figures' own unit. */
	readonly from: number;
	readonly reaches: number;
}

/**
 * The reading after which the worst of the figures is surest; null where none helps. Figures are gradients over x and y of every corner in
 * turn, then the rises. Candidates that the bay has no place for are passed over.
 */
export function nextBayReading(
	bay: SettledBay,
	candidates: readonly CandidateReading[],
	figures: readonly Gradient[],
): NextBayReading | null {
	const known = knownCandidates(bay, candidates);
	const next = nextReading(
		bay.network,
		bay.adjusted,
		known.map(({ observed }) => observed),
		figures,
	);
	return next && { ...next, candidate: known[next.candidate]?.index as number };
}

/**
 * The reading that best tells a suspect of this bay from those that might as well be it, as an index of the candidates; null where none does,
 * or where nothing is alike.
 */
export function tellApartBayReading(
	bay: SettledBay,
	{ readings, alike }: Pick<Suspicion, "readings" | "alike">,
	candidates: readonly CandidateReading[],
): number | null {
	if (alike.length === 0) return null;
	const known = knownCandidates(bay, candidates);
	const observed = known.map((each) => each.observed);
	const best = tellApart(bay.network, bay.adjusted, [...readings, ...alike], observed);
	return best === null ? null : (known[best]?.index as number);
}

/**
 * The fewest readings found after which the worst figure's standard deviation is at most `goal`, in the order in which each helps most; one
 * may be asked for again. None where the goal is reached already; all that help where nothing reaches it.
 */
export function fewestBayReadings(
	bay: SettledBay,
	candidates: readonly CandidateReading[],
	figures: readonly Gradient[],
	goal: number,
): NextBayReading[] {
	const known = knownCandidates(bay, candidates);
	const observed = known.map((each) => each.observed);
	return fewestReadings(bay.network, bay.adjusted, observed, figures, goal).map((next) => ({
		...next,
		candidate: known[next.candidate]?.index as number,
	}));
}

/** The candidates that the bay has a place for, in the network's terms. */
function knownCandidates(
	{ drawn, corners, rises, network, adjusted }: SettledBay,
	candidates: readonly CandidateReading[],
): readonly { readonly index: number; readonly observed: Candidate }[] {
	const state = stateOf(network, adjusted);
	const standing = { ...drawn, corners, rises };
	return candidates.flatMap((candidate, index) => {
		const observed = observedOf(standing, candidate);
		if (observed === null) return [];
		const sd = candidate.sd ?? USUAL_SD[candidate.kind];
		if (isInDegrees(candidate)) return [{ index, observed: { ...observed, sd: toRadians(sd) } as Candidate }];
		if (candidate.kind !== "chord") return [{ index, observed: { ...observed, sd } as Candidate }];
		const opening = foresee(observed, state).value;
		const byChord = chordDeviation(
			candidate.arm,
			isExternal(standing, candidate.corner) ? opening - Math.PI : opening,
			sd,
		);
		return [{ index, observed: { ...observed, sd: byChord } as Candidate }];
	});
}

/** The same bay with corner 0 where it was drawn, and everything else as sure as it is from there. */
function withCornerZero(adjusted: Adjusted, drawn: Point, frameWall: number): Adjusted {
	if (frameWall === 0) return adjusted;
	const { x, y } = adjusted.points[0] as Point;
	return {
		...adjusted,
		points: adjusted.points.map((point) => ({ x: point.x - x + drawn.x, y: point.y - y + drawn.y })),
		covariance: seenFrom(adjusted.covariance, 0, 2 * adjusted.points.length),
	};
}

/** A misfit of an observation as one of the reading it came from: a chord's is between the marks, not of the angle. */
function inReadingsUnit(reading: Reading, misfit: number): number {
	if (isInDegrees(reading)) return toDegrees(misfit);
	if (reading.kind !== "chord") return misfit;
	const taken = 2 * Math.asin(reading.value / (2 * reading.arm));
	return 2 * reading.arm * Math.sin((taken + misfit) / 2) - reading.value;
}

function bayFault(fault: NetworkFault, { readings, corners }: DrawnBay): BayFault {
	switch (fault.kind) {
		case "coincident":
			return { kind: "corners-coincide", corners: inOrder(fault.points) };
		case "not-a-number":
			if (fault.of === "point") return { kind: "corner-not-a-number", corner: fault.index };
			if (fault.of === "parameter") return { kind: "rise-not-a-number", wall: fault.index };
			return readingFault(fault.index, readings.length, corners.length);
		case "sd-not-positive":
		case "unobservable":
			return readingFault(fault.observation, readings.length, corners.length);
		case "undetermined":
			return { kind: "unsettled", corners: fault.points, walls: fault.parameters };
		case "restless":
			return everythingUnsettled(corners.length);
	}
}

const inOrder = ([a, b]: readonly [number, number]): readonly [number, number] => (a < b ? [a, b] : [b, a]);

const readingFault = (observation: number, readings: number, corners: number): BayFault =>
	observation < readings ? { kind: "reading-impossible", reading: observation } : everythingUnsettled(corners);

const everythingUnsettled = (corners: number): BayFault => ({
	kind: "unsettled",
	corners: Array.from({ length: corners }, (_, corner) => corner),
	walls: Array.from({ length: corners - 1 }, (_, wall) => wall),
});

const distinct = (faults: readonly BayFault[]): BayFault[] => [
	...new Map(faults.map((fault) => [JSON.stringify(fault), fault])).values(),
];
