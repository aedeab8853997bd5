import { expect, test } from "vitest";
import { planned } from "../app/marks-right-angled.ts";
import { bayOf } from "../setout-survey/bay.ts";

type Pair = readonly [number, number];

const RADIUS = 310;

/** Walls of these lengths, each turned from the one before by so many degrees to the right (left under 0). */
function cornersOf(lengths: readonly number[], turns: readonly number[]): Pair[] {
	const corners: Pair[] = [[0, 0]];
	let heading = 0;
	lengths.forEach((length, i) => {
		heading -= ((turns[i - 1] ?? 0) * Math.PI) / 180;
		const [x, y] = corners.at(-1) as Pair;
		corners.push([x + length * Math.cos(heading), y + length * Math.sin(heading)]);
	});
	return corners;
}

/** The centre line by crossing lines: each wall's line moved into the room, two tangents less and a sweep more at each corner. */
function centreLine(corners: readonly Pair[], projections: readonly number[]): number {
	const lines = corners.slice(1).map(([x, y], i) => {
		const [left, down] = corners[i] as Pair;
		const length = Math.hypot(x - left, y - down);
		const [dx, dy] = [(x - left) / length, (y - down) / length];
		const off = projections[i] as number;
		return { x: left + dy * off, y: down - dx * off, dx, dy, length };
	});
	let total = 0;
	lines.forEach((line, i) => {
		const [before, after] = [lines[i - 1], lines[i + 1]];
		const cross = (other: typeof line) => {
			const area = line.dx * other.dy - line.dy * other.dx;
			return ((other.x - line.x) * other.dy - (other.y - line.y) * other.dx) / area;
		};
		total += (after ? cross(after) : line.length) - (before ? cross(before) : 0);
		if (!after) return;
		const turn = Math.abs(Math.atan2(line.dx * after.dy - line.dy * after.dx, line.dx * after.dx + line.dy * after.dy));
		total -= RADIUS * (2 * Math.tan(turn / 2) - turn);
	});
	return total;
}

const lengthOf = (corners: readonly Pair[], projections: readonly (number | null)[]) => {
	const brackets = projections.flatMap((projection, wall) =>
		projection === null ? [] : [{ wall, planned: 700, at: 700, projection }],
	);
	const bay = bayOf({
		corners,
		track: { system: "light-corded", projection: 40, radius: RADIUS, joints: "none" },
		fitted: { brackets },
	});
	const { pieces, system } = planned(bay);
	return pieces.reduce((sum, { cutLength }) => sum + cutLength, 2 * system.endTakeUp);
};

// By hand, 5 further off one wall: 5·cot(θ/2) less at each of its corners, cot 45° = 1, cot 67.5° = 0.41421, cot 60° = 0.57735, cot 112.5° = −0.41421.
test.each([
	{ bay: "right angles, a side", turns: [90, 90], wall: 0, less: 5 },
	{ bay: "right angles, the front", turns: [90, 90], wall: 1, less: 10 },
	{ bay: "135°, a side", turns: [45, 45], wall: 2, less: 2.07107 },
	{ bay: "135°, the front", turns: [45, 45], wall: 1, less: 4.14214 },
	{ bay: "120° and 135°, the front", turns: [60, 45], wall: 1, less: 4.95782 },
	{ bay: "an external corner of 225°, its first wall", turns: [-45, 60], wall: 0, less: -2.07107 },
])("$bay: a bracket 5 further off shortens the cut by $less", ({ turns, wall, less }) => {
	const corners = cornersOf([1400, 1800, 1400], turns);
	const measured = [0, 1, 2].map((each) => (each === wall ? 45 : null));
	const [before, after] = [lengthOf(corners, []), lengthOf(corners, measured)];
	expect(before - after).toBeCloseTo(less, 4);
	expect(before).toBeCloseTo(centreLine(corners, [40, 40, 40]), 6);
	expect(after).toBeCloseTo(
		centreLine(
			corners,
			measured.map((each) => each ?? 40),
		),
		6,
	);
});
