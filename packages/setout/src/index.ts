export { longestArm, USUAL_SD } from "@baywright/survey";
export type {
	BayPlan,
	BowSetOut,
	Bracket,
	BracketLoad,
	BracketRole,
	BridgedFacet,
	CornerSetOut,
	CoveredObstacle,
	CurtainSetOut,
	Cut,
	Cutting,
	Glass,
	Joint,
	Mark,
	MarkKind,
	OpeningGlass,
	Piece,
	StackBack,
	StockPlan,
	Stretch,
	SurveyOfPlan,
} from "./bay-plan.ts";
export { type Bent, bentAt } from "./bent-at.ts";
export { CAUTIONS, type Caution, cautionsFor } from "./cautions/cautions.ts";
export { type CordAdvice, cordAdvice } from "./cautions/cord-advice.ts";
export { cordSentences } from "./cords/describe-cords.ts";
export type { CordSetOut } from "./cords/set-out-cords.ts";
export { type CornerCard, cornerCard, type OddCorner, RIGHT_ANGLE_RULE } from "./corner-card.ts";
export { clearOf } from "./curtains/covering.ts";
export { curtainName, HEADING_NAMES } from "./curtains/describe-curtains.ts";
export { type CurtainPosition, openedAt, positionOf } from "./curtains/position.ts";
export { capital } from "./finding/capital.ts";
export { type FindingCode, severities, severityOf } from "./finding/codes.ts";
export { type Described, describe, type Wording } from "./finding/describe.ts";
export type { Finding, Place, Remedy, RemedyAction, Severity } from "./finding/finding.ts";
export { forJob } from "./finding/for-job.ts";
export { bendName, cornerName, wallName } from "./finding/names.ts";
export { type FindingSample, findingSamples, sampleJob } from "./finding/samples.ts";
export { type AsFitted, type CutPiece, sawnAtLeft } from "./fitted/as-fitted.ts";
export { type BendRecord, bendRecordText, readBendRecord, toTenth } from "./fitted/bend-record.ts";
export { bendsToMake, bowsToMake, type OnPiece, onPiece } from "./fitted/bends-to-make.ts";
export { cutAnswer } from "./fitted/describe-fitted.ts";
export { CABLE_ZONE, isAccessory } from "./fixings/cable-zones.ts";
export {
	type FixingGuidance,
	fixingGuidance,
	GUIDANCE_GROUND,
	guidanceSentence,
	surfacesOf,
	ZONE_ADVICE,
	ZONE_SOURCE,
	zoneName,
} from "./fixings/describe-fixing.ts";
export type { CableZone, Fixing, Surface } from "./fixings/fixing.ts";
export { parseDegrees, ROOM_ANGLE } from "./job/angle.ts";
export type { Bay, Obstacle, Opening, Wall } from "./job/bay-schema.ts";
export { applyChange, type Operation } from "./job/change.ts";
export type { Curtain, MakeUp } from "./job/curtain-schema.ts";
export type { Fitted } from "./job/fitted-schema.ts";
export { readJobText, serialiseJob } from "./job/job-text.ts";
export { jobJsonSchema } from "./job/json-schema.ts";
export { parseLength } from "./job/length.ts";
export { formatAngle, formatLength } from "./job/length-text.ts";
export { type Parsed, parseJob } from "./job/parse.ts";
export { foundText, type Problem, problemLine } from "./job/problem.ts";
export type { Reading } from "./job/reading-schema.ts";
export type { Job, LengthUnit, Region } from "./job/schema.ts";
export type { Track, WallPlace } from "./job/track-schema.ts";
export { builtInSystems } from "./library/built-in.ts";
export { builtInCloths } from "./library/built-in-cloths.ts";
export type { Cloth } from "./library/cloth.ts";
export type { Heading } from "./library/heading.ts";
export { findSystem, type Library, libraryOf } from "./library/library.ts";
export type { TrackSystem } from "./library/system.ts";
export { type LoadStanding, standingOf } from "./loads/bay-loads.ts";
export { bracketReactions } from "./loads/bracket-reactions.ts";
export { formatLimit, formatMass, LOADS_SENTENCE } from "./loads/describe-loads.ts";
export { amountText, priceText } from "./order/amount-text.ts";
export { type DescribedPart, describePart, rangesOf } from "./order/describe-part.ts";
export { type JobOrder, jobOrder, type OrderLine } from "./order/job-order.ts";
export { orderLineName, totalWhy, writeOrderCsv } from "./order/order-csv.ts";
export type { Part, PartKind, PartSource } from "./order/part.ts";
export { type PlanEffort, planBay, planJob } from "./plan.ts";
export { planJson } from "./plan-json.ts";
export { type AsSettled, asSettled, isTaped } from "./survey/as-settled.ts";
export { csvField, csvText } from "./survey/csv.ts";
export {
	mayChangeSentence,
	readingFigure,
	readingName,
	readingTask,
	surveyFaultSentence,
	suspectSentence,
	withinText,
} from "./survey/describe-survey.ts";
export { GREATEST_SEED } from "./survey/dice.ts";
export { type DimensionSureness, dimensionSureness } from "./survey/dimension-sureness.ts";
export { AT_95, type MayChange } from "./survey/may-change.ts";
export {
	SURE_ENOUGH,
	type WantedReading,
	type WantedReadings,
	wantedReadings,
} from "./survey/next-readings.ts";
export {
	type CsvProblem,
	csvProblemLine,
	type ReadingsCsv,
	readReadingsCsv,
	writeReadingsCsv,
} from "./survey/readings-csv.ts";
export { type BaySurvey, type CheckedReading, type Suspect, settle, surveyReadings } from "./survey/settle.ts";
export {
	FITS_WITHIN,
	HISTOGRAM_END,
	type Simulation,
	type SimulationOrder,
	type SimulationProgress,
	type SimulationRun,
	type StrategyResult,
	simulateBay,
	simulateRandomBays,
	USUAL_ERRORS,
} from "./survey/simulate.ts";
export { formatSpread } from "./survey/spread-text.ts";
export type { MeasuringErrors, StrategyName } from "./survey/strategies.ts";
export { type SettledAnswer, settleAnswer, settleJson } from "./survey/survey-json.ts";
export {
	type SureCut,
	type SureFigure,
	type SureSetBack,
	sureCuts,
	sureFigures,
} from "./survey/uncertainty.ts";
export { buyStock, type StockAnswer, type StockOrder, type StockProgress, searchStock } from "./track/stock.ts";
