import { readChain, wallCrossings } from "@baywright/geometry";
import type { Problem } from "@baywright/setout";
import { chordOf, lengthOf, type Piece } from "./stroke.ts";
import { type ChosenUnit, UNITS } from "./unit.ts";

interface Stretch {
	readonly walls: readonly Piece[];
	readonly closed: boolean;
	readonly first: number;
	readonly last: number;
	/** The walls of the stretch, laid; none where there is no such stretch. */
	readonly taking: readonly Piece[];
	readonly unit: ChosenUnit;
}

/** What walls may be, mm. */
const WALL = { least: 10, most: 30_000 } as const;
/** What a bay's walls may come to together, mm. */
const BAY = { least: 200, most: 60_000 } as const;
const MOST_WALLS = 100;

/** Why a stretch of a chain cannot be a bay; none where it can. */
export function stretchProblems({ walls, closed, first, last, taking, unit }: Stretch): Problem[] {
	const one = (path: string, found: string, allowed: string): Problem[] => [{ path, found, allowed }];
	if (taking.length === 0)
		return one(
			"walls",
			`${first + 1} to ${last + 1}`,
			`walls ${closed ? "of" : "in order out of"} 1 to ${walls.length}`,
		);
	if (closed && taking.length === walls.length)
		return one(
			"walls",
			`all ${walls.length} of a closed outline`,
			"a stretch of it: leave out the side that is open to the room",
		);
	const whole = taking.reduce((sum, wall) => sum + lengthOf(wall), 0);
	if (!(whole >= BAY.least && whole <= BAY.most))
		return one(
			"unit",
			`walls that come to ${lengthText(whole)}, with one unit as ${lengthText(unit.mm)}`,
			`a bay of ${lengthText(BAY.least)} to ${lengthText(BAY.most)}${instead(whole, unit)}`,
		);
	if (taking.length > MOST_WALLS)
		return one("walls", `${taking.length}`, `up to ${MOST_WALLS} in one bay: choose a stretch`);

	const number = (i: number): number => ((first + i) % walls.length) + 1;
	const problems = taking.flatMap((wall, i): Problem[] => {
		const length = lengthOf(wall);
		if (!(length >= WALL.least && length <= WALL.most))
			return one(`wall ${number(i)}`, lengthText(length), `${lengthText(WALL.least)} to ${lengthText(WALL.most)}`);
		return Math.abs(wall.bulge) > 1 + HARDLY
			? one(
					`wall ${number(i)}`,
					`an arc of ${((4 * Math.atan(Math.abs(wall.bulge)) * 180) / Math.PI).toFixed(1)}°`,
					"up to 180°: break it in two",
				)
			: [];
	});
	if (problems.length > 0) return problems;
	const corners = [...taking.slice(0, 1).map(({ from }) => from), ...taking.map(({ to }) => to)];
	const read = readChain(corners, taking.map(riseWithin));
	if (read.ok)
		return wallCrossings(read.value).map(({ first: a, second: b }) => ({
			path: `walls ${number(a)} and ${number(b)}`,
			found: "walls that cross or touch each other",
			allowed: "walls that meet only at their corners",
		}));
	return read.faults.map((fault) => {
		switch (fault.kind) {
			case "corner-folded":
				return {
					path: `the corner of walls ${number(fault.corner - 1)} and ${number(fault.corner)}`,
					found: `a room angle of ${fault.angle.toFixed(1)}°`,
					allowed: "20° to 340°",
				};
			case "coordinate-out-of-range":
				return { path: "walls", found: `a corner ${lengthText(fault.coordinate)} away`, allowed: "up to 100 m" };
			default:
				throw new Error(`Broken invariant: ${fault.kind} was looked for before.`);
		}
	});
}

/** Arcs just over a half circle are one as written. */
const HARDLY = 1e-6;

const riseWithin = (wall: Piece): number => {
	const half = chordOf(wall) / 2;
	return Math.min(half, Math.max(-half, -wall.bulge * half));
};

/** A unit in which it would be a likely bay. */
function instead(whole: number, { mm, scale }: ChosenUnit): string {
	const units = (whole / mm) * scale;
	const fitting = Object.entries(UNITS).filter(([, each]) => units * each >= 1000 && units * each <= 20_000);
	if (fitting.length === 0) return ": choose another unit or scale";
	return `: in ${fitting.map(([name, each]) => `${name} it would be ${lengthText(units * each)}`).join(", in ")}`;
}

/** A length of any size, for people. */
export function lengthText(mm: number): string {
	if (mm >= 1e6) return `${Number((mm / 1e6).toPrecision(3))} km`;
	if (mm >= 10_000) return `${Number((mm / 1000).toPrecision(3))} m`;
	return `${Number(mm >= 100 ? mm.toFixed(1) : mm.toPrecision(3))} mm`;
}
