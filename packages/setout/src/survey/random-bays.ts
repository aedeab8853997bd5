import { distance, type Point, readChain, toRadians, wallCrossings } from "@baywright/geometry";
import { type Bay, baySchema, wallSchema } from "../job/bay-schema.ts";
import { builtInSystems } from "../library/built-in.ts";
import type { TrackSystem } from "../library/system.ts";
import { between, type Dice } from "./dice.ts";
import { type Standing, trackFitter } from "./settled-track.ts";

/** A bay as it really stands, a sketch of it, and the track that is to hang there. */
export interface TrialBay {
	readonly truth: Standing;
	readonly drawn: Bay;
	readonly system: TrackSystem;
}

/** Runs of random bays, mm, and their interior angles, degrees. */
const RUNS = [500, 1800] as const;
const ANGLES = [90, 165] as const;
const WALLS = [3, 4, 5] as const;

/** A sketch's runs and rises are out by up to this share, its turns by up to this many degrees. */
const SKETCHED_RUN = 0.1;
const SKETCHED_TURN = 10;

/** A bay of three to five straight walls, corners between 90° and 165°, that the built-in light corded track fits. */
export function randomBay(roll: Dice): TrialBay {
	const system = builtInSystems[0] as TrackSystem;
	for (;;) {
		const walls = WALLS[Math.floor(roll() * WALLS.length)] as number;
		const runs = Array.from({ length: walls }, () => between(roll, ...RUNS));
		const turns = Array.from({ length: walls - 1 }, () => 180 - between(roll, ...ANGLES));
		const corners = cornersOf({ x: 0, y: 0 }, toRadians(90), runs, turns);
		const truth = { corners, rises: runs.map(() => 0) };
		const chain = readChain(corners);
		if (!chain.ok || wallCrossings(chain.value).length > 0) continue;
		const bay = bayAt(plainBay(), truth);
		if (trackFitter(bay, system)(truth) !== null) return { truth, drawn: sketchOf(bay, truth, roll), system };
	}
}

const plainBay = (): Bay => baySchema.parse({ id: "bay", corners: [] });

/** The bay drawn as it stands. */
function bayAt(bay: Bay, { corners, rises }: Standing): Bay {
	const usual = wallSchema.parse({});
	return {
		...bay,
		corners: corners.map(({ x, y }): [number, number] => [x, y]),
		walls: rises.map((rise, wall) => ({ ...(bay.walls[wall] ?? usual), rise })),
	};
}

/** The bay as somebody sketched it before anything was taped. */
export function sketchOf(bay: Bay, { corners, rises }: Standing, roll: Dice): Bay {
	const out = (share: number) => between(roll, 1 - share, 1 + share);
	const chords = corners.slice(1).map((right, wall): [number, number] => {
		const left = corners[wall] as Point;
		return [right.x - left.x, right.y - left.y];
	});
	const runs = corners.slice(1).map((right, wall) => distance(corners[wall] as Point, right) * out(SKETCHED_RUN));
	const turns = chords.slice(1).map(([bx, by], i) => {
		const [ax, ay] = chords[i] as [number, number];
		const turn = (Math.atan2(ay * bx - ax * by, ax * bx + ay * by) * 180) / Math.PI;
		return turn + between(roll, -SKETCHED_TURN, SKETCHED_TURN);
	});
	const [ax, ay] = chords[0] as [number, number];
	const sketched = cornersOf(corners[0] as Point, Math.atan2(ay, ax), runs, turns);
	return bayAt(bay, { corners: sketched, rises: rises.map((rise) => rise * out(SKETCHED_RUN)) });
}

/** Corners from runs (mm) and turns to the right (degrees), setting out with a heading (radians). */
function cornersOf(from: Point, heading: number, runs: readonly number[], turns: readonly number[]): Point[] {
	const corners = [from];
	let at = from;
	let towards = heading;
	runs.forEach((run, wall) => {
		at = { x: at.x + run * Math.cos(towards), y: at.y + run * Math.sin(towards) };
		corners.push(at);
		towards -= toRadians(turns[wall] ?? 0);
	});
	return corners;
}
