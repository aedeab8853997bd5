export { type Adjusted, type Agreement, adjust, type ObservationCheck } from "./adjust.ts";
export type { DrawnBay } from "./bay-network.ts";
export { candidateReadings, longestArm, type TapedReading } from "./candidates.ts";
export { type Covariance, covary, type ErrorEllipse, errorEllipse, type Gradient, propagate } from "./covariance.ts";
export type { Network, NetworkFault, NetworkPoint, Parameter } from "./network.ts";
export { type Candidate, type NextReading, nextReading } from "./next-reading.ts";
export type { Bowed, Observation, Observed, Place, Tilt } from "./observation.ts";
export { angleByChord } from "./observation.ts";
export { readingGradient, readOff, type StandingBay } from "./read-off.ts";
export { type Reading, type ReadingFault, type ReadingOf, USUAL_SD, type WallPlace } from "./reading.ts";
export {
	type BayFault,
	type CandidateReading,
	fewestBayReadings,
	type NextBayReading,
	nextBayReading,
	type ReadingCheck,
	type SettledBay,
	settleBay,
	suspectReadings,
	tellApartBayReading,
} from "./settle-bay.ts";
export { type Suspicion, suspects } from "./suspects.ts";
