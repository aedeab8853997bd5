import {
	clearance,
	type FitRule,
	fitTrack,
	indexWalls,
	type Point,
	readChain,
	shareRadii,
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import { libraryOf, parseJob, planBay } from "@baywright/setout";
import IndexedFacetDistance from "jsts/org/locationtech/jts/operation/distance/IndexedFacetDistance.js";
import { mixedBay, SPIRAL_TRACK, spiralBay } from "./bays.ts";
import { roundWithFlatten, roundWithMaker } from "./by-hand.ts";
import { lineString, sampled } from "./polyline.ts";
import { benchSurvey, benchTaped } from "./survey.ts";
import { growth, median, printTable } from "./table.ts";

const SIZES = [5, 20, 100, 500, 2000];
const { projection, radius } = SPIRAL_TRACK;

const microseconds = (value: number): string => (value < 100 ? value.toFixed(2) : value.toFixed(0));

benchFit();
benchPlan();
benchClearance();
benchSharing();
benchSurvey(microseconds);
benchTaped(microseconds);

/** Corners in, track out: read the chain, offset every wall, round every corner. The peers do the same and no more. */
function benchFit(): void {
	const rule: FitRule = {
		leastRadius: { internal: 10, external: 10 },
		preferredRadius: radius,
		straightBesideBend: 0,
		endStraight: 0,
		clearance: 0,
		corridor: null,
		setRadii: new Map(),
	};
	const times = SIZES.map((walls) => {
		const corners = spiralBay(walls);
		const projections = Array<number>(walls).fill(projection);
		return [
			median(() => fitWhole(corners, projections, rule)),
			median(() => roundWithFlatten(corners, projection, radius)),
			median(() => roundWithMaker(corners, projection, radius)),
		] as const;
	});
	printTable(
		"Fit: offset a chain and round every corner (median µs)",
		["walls", "baywright", "@flatten-js/core by hand", "makerjs converge + fillet", "× flatten", "× makerjs"],
		[
			...SIZES.map((walls, i) => {
				const [own, flatten, maker] = times[i] as (typeof times)[number];
				return [
					String(walls),
					...[own, flatten, maker].map(microseconds),
					(flatten / own).toFixed(1),
					(maker / own).toFixed(1),
				];
			}),
			[
				"growth",
				...[0, 1, 2].map((which) =>
					growth(
						SIZES,
						times.map((row) => row[which] as number),
					).toFixed(2),
				),
				"",
				"",
			],
		],
	);
}

function fitWhole(corners: readonly Point[], projections: readonly number[], rule: FitRule) {
	const chain = readChain(corners);
	if (!chain.ok) throw new Error("Broken invariant: the bench's chain is refused.");
	const { walls } = chain.value as WallChain;
	const end = { wall: walls.length - 1, at: (walls.at(-1) as WallFace).length };
	const fit = fitTrack(chain.value, projections, { start: { wall: 0, at: 0 }, end }, rule);
	if (!fit.ok) throw new Error("Broken invariant: the bench's track is refused.");
	return fit.value;
}

/** Everything planBay works out: checks, path, corners, brackets, joints, pieces, stock, stack-back, findings. */
function benchPlan(): void {
	const sizes = [5, 20, 100, 200, 500, 2000];
	const times = sizes.map((walls) => {
		const { bay, library } = mixedJob(walls);
		const plan = planBay(bay, library, { stockNodes: 1000 });
		if (plan.path === null) throw new Error(`Broken invariant: the bench's bay is refused: ${plan.findings[0]?.code}.`);
		return { walls, time: median(() => planBay(bay, library, { stockNodes: 1000 })), brackets: plan.brackets.length };
	});
	global.gc?.();
	const before = process.memoryUsage().heapUsed;
	const { bay, library } = mixedJob(2000);
	const kept = planBay(bay, library, { stockNodes: 1000 });
	const rows = times.map(({ walls, time, brackets }) => [String(walls), microseconds(time), String(brackets)]);
	rows.push([
		"growth",
		growth(
			sizes,
			times.map(({ time }) => time),
		).toFixed(2),
		"",
	]);
	printTable("Whole plan of one bay (median µs)", ["walls", "planBay", "brackets"], rows);
	const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);
	console.log(
		`2000-wall plan: ${megabytes(process.memoryUsage().heapUsed - before)} MB of heap grown for ${kept.brackets.length} brackets; peak of this whole process ${megabytes(process.resourceUsage().maxRSS * 1000)} MB.`,
	);
}

function mixedJob(walls: number) {
	const { corners, rises } = mixedBay(walls);
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		systems: [
			{
				id: "bench",
				name: "Bench",
				minRadius: { internal: 10, external: 10 },
				preferredRadius: radius,
				projection: { default: projection, min: 10, max: 40 },
				clearance: 8,
				straightBesideBend: 5,
				bracket: { maxSpacing: 400, width: 4, endMax: 60 },
				joint: { clearOfBend: 20 },
				stock: [{ length: 6000 }],
			},
		],
		bays: [
			{
				id: "b",
				corners: corners.map(({ x, y }) => [x, y]),
				walls: rises.map((rise) => ({ rise })),
				track: { system: "bench", mounting: "ceiling" },
			},
		],
	});
	if (!parsed.ok) throw new Error("Broken invariant: the bench's job is refused.");
	return { bay: parsed.job.bays[0] as (typeof parsed.job.bays)[number], library: libraryOf(parsed.job) };
}

/** Legs that fill up one after another: the case that makes sharing out in rounds quadratic. */
function benchSharing(): void {
	const sizes = [500, 2000, 8000, 32000];
	const times = sizes.map((bends) => {
		const row = {
			slope: Array<number>(bends).fill(1),
			least: Array<number>(bends).fill(100),
			goal: Array<number>(bends).fill(100_000),
			room: Array.from({ length: bends + 1 }, (_, leg) => 200 + (leg * 190_000) / bends),
		};
		return median(() => shareRadii(row));
	});
	printTable(
		"Sharing out radii where every leg fills up in turn (median µs)",
		["bends", "shareRadii", "µs a bend"],
		[
			...sizes.map((bends, i) => [
				String(bends),
				microseconds(times[i] as number),
				((times[i] as number) / bends).toFixed(3),
			]),
			["growth", growth(sizes, times).toFixed(2), ""],
		],
	);
}

/** Where the path comes nearest to its walls, the index of the walls built beforehand; the peer's arcs are sampled. */
function benchClearance(): void {
	const times = SIZES.map((walls) => {
		const { bay, library } = mixedJob(walls);
		const { chain, path } = planBay(bay, library, { stockNodes: 1000 });
		if (chain === null || path === null) throw new Error("Broken invariant: the bench's bay is refused.");
		const index = indexWalls(chain);
		const peer = new IndexedFacetDistance(lineString(chain.corners));
		const line = lineString(sampled(path));
		return [median(() => clearance(path, index)), median(() => peer.distance(line))] as const;
	});
	printTable(
		"Clearance of a path from its walls (median µs)",
		["walls", "baywright", "jsts IndexedFacetDistance", "× jsts"],
		[
			...SIZES.map((walls, i) => {
				const [own, jsts] = times[i] as (typeof times)[number];
				return [String(walls), microseconds(own), microseconds(jsts), (jsts / own).toFixed(1)];
			}),
			[
				"growth",
				...[0, 1].map((which) =>
					growth(
						SIZES,
						times.map((row) => row[which] as number),
					).toFixed(2),
				),
				"",
			],
		],
	);
}
