import { type FittedTrack, LENGTH_SLACK } from "@baywright/geometry";
import type { BayPlan } from "./bay-plan.ts";
import { cordFindings, setOutCords } from "./cords/set-out-cords.ts";
import { coveredObstacles, glassOf } from "./curtains/covering.ts";
import { curtainFindings } from "./curtains/curtain-findings.ts";
import { setOutCurtains } from "./curtains/set-out-curtains.ts";
import { stackBack } from "./curtains/stack-back.ts";
import { severityOf } from "./finding/codes.ts";
import type { Finding } from "./finding/finding.ts";
import { forJob } from "./finding/for-job.ts";
import { withPlacesTaken } from "./fitted/already-there.ts";
import { asFitted, withCutsSure } from "./fitted/as-fitted.ts";
import { fittedFindings, ofOwnPins } from "./fitted/fitted-findings.ts";
import { setOutFixings, zoneFindings } from "./fixings/set-out-fixings.ts";
import type { Bay } from "./job/bay-schema.ts";
import type { Job } from "./job/schema.ts";
import { type Library, libraryOf } from "./library/library.ts";
import type { TrackSystem } from "./library/system.ts";
import { bayLoads } from "./loads/bay-loads.ts";
import { loadFindings } from "./loads/load-findings.ts";
import { bayParts } from "./order/bay-parts.ts";
import { asSettled } from "./survey/as-settled.ts";
import { disagreement, unsettledFindings } from "./survey/survey-findings.ts";
import { surveyOfPlan, withSureness } from "./survey/survey-of-plan.ts";
import { wallFaces } from "./survey/wall-faces.ts";
import { bridgedFacets } from "./track/bend-spans.ts";
import { bowFindings } from "./track/bow-findings.ts";
import { bowsOf, bowsToBend } from "./track/bows-to-bend.ts";
import { bracketRoom } from "./track/bracket-room.ts";
import { placeBrackets } from "./track/brackets.ts";
import { cornersOf } from "./track/corners.ts";
import { fitBay } from "./track/fit-bay.ts";
import { fitFinding } from "./track/fit-findings.ts";
import { inTheWay } from "./track/in-the-way.ts";
import { placeJoints } from "./track/joints.ts";
import { overlapOnBend } from "./track/overlap.ts";
import { cutPieces } from "./track/pieces.ts";
import { NO_STOCK, planStock } from "./track/plan-stock.ts";
import { projectionFindings } from "./track/projection-findings.ts";
import { follow } from "./track/remedies.ts";
import { remediesFor } from "./track/remedies-for.ts";
import { whyNoJoint } from "./track/too-long.ts";
import { heightOf, projectionsOf } from "./track/track-rule.ts";
import { isRefusal, isWarning, type Trial, trialOn } from "./track/trial.ts";
import { unusedRadii } from "./track/unused-radii.ts";

/** How hard to work. */
export interface PlanEffort {
	/** How long to look for the best stock to buy, in search nodes; left out, until it is proved for all ordinary jobs. */
	readonly stockNodes?: number;
	/** How much to try for remedies, in walls planned; 0 = those only that need no trying. */
	readonly trials?: number;
	/** Whether to work out how sure each cut length of a taped bay is and what to tape next; left out, it is. */
	readonly sureness?: boolean;
}

/** A plan that is only tried: whether its pieces can be cut is known long before what is best to buy. */
const TRIED: PlanEffort = { stockNodes: 100, sureness: false };

/**
 * Works out everything for one bay: with readings as they settle it, else as drawn. Pure: the same bay and library give the same plan. What cannot be fitted comes back as
 * findings, with the wall faces drawn all the same; remedy paths start at the bay.
 */
export function planBay(bay: Bay, library: Library, effort: PlanEffort = {}): BayPlan {
	const drafted = draftPlan(bay, library, effort);
	const settled = asSettled(bay, drafted.system);
	const plan = effort.sureness === false ? drafted : withSureness(drafted, bay, settled);
	const trial = trialOn(bay, plan.findings, (changed) => draftPlan(changed, library, TRIED).findings, effort.trials);
	const findings = gravestFirst([...plan.findings, ...worseThanWalls(bay, drafted.findings, trial)]);
	const { chain, system } = plan;
	const others = library.systems.filter(({ id }) => id !== system.id);
	const refused = { bay, chain, system, others, plan, findings, trial };
	return {
		...plan,
		fitted: withCutsSure(plan.fitted, plan.pieces),
		findings: findings.map((finding) => {
			const found = remediesFor(finding, refused);
			return found.length === 0 ? finding : { ...finding, remedies: [...finding.remedies, ...found] };
		}),
	};
}

/** The plan with such remedies only as need no trying. */
function draftPlan(drawn: Bay, library: Library, effort: PlanEffort): BayPlan {
	const system = library.systems.find(({ id }) => id === drawn.track.system);
	if (system === undefined) throw new Error(`Broken invariant: no system "${drawn.track.system}" in the library.`);
	const settled = asSettled(drawn, system);
	const { bay, faults } = settled;
	const { chain, findings: faces } = wallFaces(bay);
	const survey = surveyOfPlan(settled);
	const findings = [
		...faces,
		// Where the drawing makes no bay it says so itself.
		...(faces.length > 0 ? [] : unsettledFindings(bay, faults)),
		...(settled.survey === null ? [] : disagreement(bay, settled.survey)),
		...projectionFindings(bay, system),
	];
	const height = heightOf(bay);
	const refused = (...more: Finding[]): BayPlan => ({
		id: bay.id,
		system,
		chain,
		projections: projectionsOf(bay, system),
		height,
		path: null,
		corners: [],
		bows: [],
		bridged: [],
		brackets: [],
		fixings: [],
		joints: [],
		pieces: [],
		stock: NO_STOCK,
		curtains: [],
		loads: [],
		stackBack: [],
		cords: null,
		parts: [],
		glass: {
			total: bay.openings.reduce((sum, { from, to }) => sum + to - from, 0),
			clearOpen: 0,
			clearDrawn: 0,
			lostOpen: 0,
			lostDrawn: 0,
			openings: [],
		},
		covered: [],
		survey,
		fitted: null,
		findings: gravestFirst([...findings, ...more]),
	});
	if (chain === null || faces.length + faults.length > 0) return refused();

	const fit = fitBay(bay, chain, system);
	if (!fit.ok) return refused(...fit.faults.map((fault) => fitFinding(fault, bay, chain, system)));
	const track = fit.value;
	const room = bracketRoom(bay, system, track, height);
	const { joints, findings: jointFindings } = placeJoints(bay, system, track, room);
	// What is on the wall already stays there, and the rest is placed round it.
	const { brackets, findings: bracketFindings } = placeBrackets(withPlacesTaken(bay), system, track, joints, room);
	const fixings = setOutFixings(bay, system, chain, height, brackets);
	const pieces = cutPieces(track, system, joints, brackets);
	const joinedAnew = () => {
		const auto = { ...bay, track: { ...bay.track, joints: "auto" as const } };
		return cutPieces(track, system, placeJoints(auto, system, track, room).joints, []);
	};
	const { stock, findings: stockFindings } = planStock(bay, system, pieces, effort.stockNodes, joinedAnew);
	const fitted = asFitted(bay, system, track, brackets, pieces);
	const cords = setOutCords(bay, system, track, height, library.region);
	const bows = bowsOf(track);
	const corners = cornersOf(track);
	const curtains = setOutCurtains(bay, library, system, track.path.length);
	const counted = { system, path: track.path, brackets, fixings, joints, stock, curtains, cords };
	const parts = bayParts(bay, counted, library);
	const loads = bayLoads(system, track.path.length, brackets, curtains);
	return {
		id: bay.id,
		system,
		chain,
		projections: track.projections,
		height,
		path: track.path,
		corners,
		bows,
		bridged: bridgedFacets(track),
		brackets,
		fixings,
		joints,
		pieces,
		stock,
		curtains,
		loads,
		stackBack: stackBack(curtains),
		cords,
		parts,
		glass: glassOf(bay, track, curtains, height),
		covered: coveredObstacles(bay, track, curtains, height),
		survey,
		fitted,
		findings: gravestFirst([
			...findings,
			...smootherFinding(bay, system, track),
			...unusedRadii(bay, track),
			...bowsToBend(bows),
			...bowFindings(system, track, brackets),
			...overlapOnBend(bay, system, track, curtains),
			...curtainFindings(bay, library, system, track, curtains, corners, height),
			...inTheWay(bay, system, track, height),
			...stockFindings.map((finding) => whyNoJoint(finding, bay, system, track)),
			...jointFindings,
			...ofOwnPins(bracketFindings, bay.track.brackets.length),
			...loadFindings(system, brackets, curtains, loads),
			...fittedFindings(
				bay,
				fitted,
				pieces.map(({ name }) => name),
			),
			...cordFindings(cords, library.region),
			...zoneFindings(fixings),
		]),
	};
}

/** Where the smoothest track was wanted and none stays inside what the brackets reach, the walls are followed and that is said. */
function smootherFinding(bay: Bay, system: TrackSystem, { chain, bends, path }: FittedTrack): Finding[] {
	const { track } = bay;
	if (track.follow === "walls" || bends.elbows.length === 0) return [];
	if (bends.elbows.some(({ limits }) => limits !== null)) return [];
	const along = fitBay({ ...bay, track: { ...track, follow: "walls" } }, chain, system);
	const isSame = along.ok && Math.abs(along.value.path.length - path.length) < LENGTH_SLACK;
	return isSame ? [{ code: "no-smoother-track", where: {}, figures: {}, remedies: [] }] : [];
}

/** The smoothest line that has more warnings than the line along the walls would have. */
function worseThanWalls({ track }: Bay, findings: readonly Finding[], trial: Trial): Finding[] {
	const smoothest = findings.filter(isWarning).length;
	const followsWalls = findings.some(({ code }) => code === "no-smoother-track");
	if (track.follow === "walls" || smoothest === 0 || followsWalls || findings.some(isRefusal)) return [];
	const { change } = follow("walls");
	const finding: Finding = { code: "smoothest-is-worse", where: {}, figures: { smoothest }, remedies: [] };
	const walls = trial.warnings(change);
	return trial.cures(finding, change) && walls < smoothest ? [{ ...finding, figures: { smoothest, walls } }] : [];
}

/** Plans every bay; remedy paths start at the job. */
export function planJob(job: Job): BayPlan[] {
	const library = libraryOf(job);
	return job.bays.map((bay, i) => {
		const plan = planBay(bay, library);
		return { ...plan, findings: plan.findings.map((finding) => forJob(finding, i, bay.id)) };
	});
}

const GRAVITY = { refusal: 0, warning: 1, note: 2 };

const gravestFirst = (findings: readonly Finding[]): Finding[] =>
	findings.toSorted((a, b) => GRAVITY[severityOf(a.code)] - GRAVITY[severityOf(b.code)]);
