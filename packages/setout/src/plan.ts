import type { FittedTrack } from "@baywright/geometry";
import type { BayPlan } from "./bay-plan.ts";
import { clearGlass, stackBack } from "./curtains/stack-back.ts";
import { severityOf } from "./finding/codes.ts";
import type { Finding } from "./finding/finding.ts";
import { forJob } from "./finding/for-job.ts";
import { keptForLater } from "./finding/kept-for-later.ts";
import type { Bay } from "./job/bay-schema.ts";
import type { Job } from "./job/schema.ts";
import { type Library, libraryOf } from "./library/library.ts";
import { wallFaces } from "./survey/wall-faces.ts";
import { bridgedFacets } from "./track/bend-spans.ts";
import { bowsToBend } from "./track/bows-to-bend.ts";
import { bracketRoom } from "./track/bracket-room.ts";
import { placeBrackets } from "./track/brackets.ts";
import { cornersOf } from "./track/corners.ts";
import { fitBay } from "./track/fit-bay.ts";
import { fitFinding } from "./track/fit-findings.ts";
import { inTheWay } from "./track/in-the-way.ts";
import { placeJoints } from "./track/joints.ts";
import { cutPieces } from "./track/pieces.ts";
import { NO_STOCK, planStock } from "./track/plan-stock.ts";
import { projectionFindings } from "./track/projection-findings.ts";
import { heightOf, projectionsOf } from "./track/track-rule.ts";
import { unusedRadii } from "./track/unused-radii.ts";

/** How long to look for the best stock to buy, in search nodes; left out, until it is proved for all ordinary jobs. */
export interface PlanEffort {
	readonly stockNodes?: number;
}

/**
 * Works out everything for one bay. Pure: the same bay and library give the same plan. What cannot be fitted comes back as
 * findings, with the wall faces drawn all the same; remedy paths start at the bay.
 */
export function planBay(bay: Bay, library: Library, effort: PlanEffort = {}): BayPlan {
	const system = library.systems.find(({ id }) => id === bay.track.system);
	if (system === undefined) throw new Error(`Broken invariant: no system "${bay.track.system}" in the library.`);
	const { chain, findings: faces } = wallFaces(bay);
	const findings = [...faces, ...projectionFindings(bay, system)];
	const height = heightOf(bay);
	const refused = (...more: Finding[]): BayPlan => ({
		id: bay.id,
		system,
		chain,
		projections: projectionsOf(bay, system),
		height,
		path: null,
		corners: [],
		bridged: [],
		brackets: [],
		joints: [],
		pieces: [],
		stock: NO_STOCK,
		stackBack: [],
		glass: { total: bay.openings.reduce((sum, { from, to }) => sum + to - from, 0), clearOpen: 0, openings: [] },
		findings: gravestFirst([...findings, ...more, ...keptForLater(bay, library)]),
	});
	if (chain === null || faces.length > 0) return refused();

	const fit = fitBay(bay, chain, system);
	const others = library.systems.filter(({ id }) => id !== system.id);
	if (!fit.ok) {
		return refused(...fit.faults.map((fault) => fitFinding(fault, bay, chain, system, others)));
	}
	const track = fit.value;
	const room = bracketRoom(bay, system, track, height);
	const { joints, findings: jointFindings } = placeJoints(bay, system, track, room);
	const { brackets, findings: bracketFindings } = placeBrackets(bay, system, track, joints, room);
	const pieces = cutPieces(track, system, joints, brackets);
	const joinedAnew = () => {
		const auto = { ...bay, track: { ...bay.track, joints: "auto" as const } };
		return cutPieces(track, system, placeJoints(auto, system, track, room).joints, []);
	};
	const { stock, findings: stockFindings } = planStock(bay, system, pieces, effort.stockNodes, joinedAnew);
	const stacks = stackBack(bay, track.path.length);
	return {
		id: bay.id,
		system,
		chain,
		projections: track.projections,
		height,
		path: track.path,
		corners: cornersOf(track),
		bridged: bridgedFacets(track),
		brackets,
		joints,
		pieces,
		stock,
		stackBack: stacks,
		glass: clearGlass(bay, track, stacks),
		findings: gravestFirst([
			...findings,
			...smootherFinding(bay, track),
			...unusedRadii(bay, track),
			...bowsToBend(track),
			...inTheWay(bay, system, track, height, others),
			...stockFindings,
			...jointFindings,
			...bracketFindings,
			...keptForLater(bay, library),
		]),
	};
}

/** Where the smoothest track was wanted and none stays inside what the brackets reach, the walls are followed and that is said. */
function smootherFinding({ track: { follow } }: Bay, { bends }: FittedTrack): Finding[] {
	const followsWalls = bends.elbows.every(({ limits }) => limits === null);
	return follow === "smoothest" && followsWalls && bends.elbows.length > 0
		? [{ code: "no-smoother-track", where: {}, figures: {}, remedies: [] }]
		: [];
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
