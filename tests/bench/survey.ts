import { type Point, toRadians } from "@baywright/geometry";
import { type Bay, libraryOf, parseJob, planBay } from "@baywright/setout";
import { type CandidateReading, candidateReadings, nextBayReading, type Reading, settleBay } from "@baywright/survey";
import { Matrix, solve } from "ml-matrix";
import { median, printTable } from "./table.ts";

/** Settling a bay with its covariance and tests, beside the plain iteration that a general solver is usually put to. */
export function benchSurvey(microseconds: (value: number) => string): void {
	const rows = [4, 6, 8, 12, 20].map((count) => {
		const corners = roundBay(count);
		const drawn = corners.map(({ x, y }, i): Point => ({ x: x + 40 * Math.sin(7 * i), y: y + 40 * Math.cos(5 * i) }));
		const rises = corners.slice(1).map(() => 0);
		const distances = pairsOf(count).map(([from, to]) => ({ from, to, value: taped(corners, from, to) }));
		const readings = distances.map(
			({ from, to, value }): Reading =>
				to === from + 1
					? { kind: "run", wall: from, value, sd: null }
					: { kind: "diagonal", from, to, value, sd: null },
		);
		const settled = settleBay({ corners: drawn, rises, readings });
		if (!settled.ok) throw new Error("Broken invariant: the bench's bay is refused.");
		const candidates: CandidateReading[] = candidateReadings(settled.value);
		const figures = rises.map((_, wall) => Float64Array.from({ length: 3 * count - 1 }, (_, i) => Math.sin(i * wall)));
		const own = median(() => settleBay({ corners: drawn, rises, readings }));
		const peer = median(() => plainly(drawn, distances));
		const next = median(() => nextBayReading(settled.value, candidates, figures));
		return [
			String(count),
			String(readings.length),
			...[own, peer].map(microseconds),
			(peer / own).toFixed(1),
			microseconds(next),
		];
	});
	printTable(
		"Survey: settle a bay with covariance and tests; the next reading of all candidates (median µs)",
		["corners", "readings", "settleBay", "ml-matrix solve by hand, corners only", "× by hand", "nextBayReading"],
		rows,
	);
}

/** Planning a bay of five walls as drawn, with ten readings, and with one of them wrong: under the hand, where its drawn corners move, and let go. */
export function benchTaped(microseconds: (value: number) => string): void {
	const corners = roundBay(6);
	const readings = pairsOf(6)
		.slice(0, 10)
		.map(([from, to]) => {
			const value = taped(corners, from, to);
			return to === from + 1 ? { kind: "run", wall: from, value } : { kind: "diagonal", from, to, value };
		});
	const moved = (by: number) => corners.map(({ x, y }, i) => [x + (i === 3 ? by : 0), y] as const);
	const wrong = readings.map((reading, i) => (i === 7 ? { ...reading, value: reading.value + 38 } : reading));
	const times = [[], readings, wrong].map((taken) => {
		const parsed = parseJob({
			format: "baywright-job",
			version: 1,
			bays: [{ id: "b", corners: moved(0), readings: taken, track: { system: "flexible" } }],
		});
		if (!parsed.ok) throw new Error("Broken invariant: the bench's job is refused.");
		const [bay] = parsed.job.bays as [Bay];
		const library = libraryOf(parsed.job);
		let by = 0;
		const drawn = () => {
			by = (by + 0.37) % 20;
			return { ...bay, corners: moved(by) as unknown as Bay["corners"] };
		};
		const held = { stockNodes: 40, trials: 60, sureness: false };
		return [median(() => planBay(drawn(), library, held)), median(() => planBay(drawn(), library))];
	});
	printTable(
		"planBay, five walls (median µs)",
		["readings", "under the hand", "let go"],
		times.map((row, i) => [["none", "ten", "ten, one wrong"][i] as string, ...row.map(microseconds)]),
	);
}

/** Corners on an arc, as a bow window has them. */
function roundBay(count: number): Point[] {
	return Array.from({ length: count }, (_, i) => {
		const angle = toRadians(180 - (180 * i) / (count - 1));
		return { x: 250 * count * Math.cos(angle), y: 250 * count * Math.sin(angle) };
	});
}

/** Every run, then diagonals, the short ones first, two and a half readings a corner: 20 of 8 corners. */
function pairsOf(count: number): (readonly [number, number])[] {
	const pairs = Array.from({ length: count - 1 }, (_, step) =>
		Array.from({ length: count - step - 1 }, (_, from) => [from, from + step + 1] as const),
	).flat();
	return pairs.slice(0, Math.round(2.5 * count));
}

/** To the whole millimetre. */
function taped(corners: readonly Point[], from: number, to: number): number {
	const [a, b] = [corners[from] as Point, corners[to] as Point];
	return Math.round(Math.hypot(a.x - b.x, a.y - b.y));
}

/** Gauss–Newton with full matrices; the first corner and the height of the second are fixed. No covariance, no tests, no priors. */
function plainly(
	drawn: readonly Point[],
	distances: readonly { readonly from: number; readonly to: number; readonly value: number }[],
): number[] {
	const places = drawn.flatMap(({ x, y }) => [x, y]);
	for (let round = 0; round < 20; round++) {
		const slopes = Matrix.zeros(distances.length, places.length);
		const misfits = Matrix.zeros(distances.length, 1);
		distances.forEach(({ from, to, value }, k) => {
			const dx = (places[2 * to] as number) - (places[2 * from] as number);
			const dy = (places[2 * to + 1] as number) - (places[2 * from + 1] as number);
			const length = Math.hypot(dx, dy);
			slopes.set(k, 2 * to, dx / length);
			slopes.set(k, 2 * to + 1, dy / length);
			slopes.set(k, 2 * from, -dx / length);
			slopes.set(k, 2 * from + 1, -dy / length);
			misfits.set(k, 0, value - length);
		});
		const free = slopes.subMatrixColumn(places.map((_, i) => i).filter((i) => i > 1 && i !== 3));
		const across = free.transpose();
		const by = solve(across.mmul(free), across.mmul(misfits)).to1DArray();
		let furthest = 0;
		by.forEach((step, i) => {
			const column = i === 0 ? 2 : i + 3;
			places[column] = (places[column] as number) + step;
			furthest = Math.max(furthest, Math.abs(step));
		});
		if (furthest < 1e-6) break;
	}
	return places;
}
