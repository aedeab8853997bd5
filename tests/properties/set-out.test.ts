import { nearestStation, pointAt, type Segment } from "@baywright/geometry";
import type { BayPlan, Bracket } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Bay, bayOf, check, jobOf, ordinaryBays, planDrawn, planOf } from "./bays.ts";

/** mm; far below any tape. */
const TOLERANCE = 1e-5;
const RUNS = 2000;

interface Fitted {
	readonly bay: Bay;
	readonly plan: BayPlan;
	readonly path: NonNullable<BayPlan["path"]>;
	readonly chain: NonNullable<BayPlan["chain"]>;
}

/** By what was drawn: every law is held to the same bays, so each of them is planned once. */
const planned = new Map<string, Fitted | null>();

function fittedOnce(drawn: unknown): Fitted | null {
	const key = JSON.stringify(drawn);
	const known = planned.get(key);
	if (known !== undefined) return known;
	const job = jobOf(drawn);
	const plan = planOf(job);
	const { path, chain } = plan;
	const fitted = path === null || chain === null ? null : { bay: bayOf(job), plan, path, chain };
	planned.set(key, fitted);
	return fitted;
}

/** Holds a law to every fitted plan among many bays, and makes sure that there are enough. */
function onFitted(law: (fitted: Fitted) => void, runs = RUNS): void {
	let fitted = 0;
	check(
		ordinaryBays,
		(drawn) => {
			const one = fittedOnce(drawn);
			if (one === null) return;
			fitted++;
			law(one);
		},
		runs,
	);
	expect(fitted).toBeGreaterThan(runs / 5);
}

const said = ({ findings }: BayPlan, ...codes: string[]) => findings.some(({ code }) => codes.includes(code));

/** Bends on which no bracket may stand. */
const bareBends = ({ plan, path }: Fitted) =>
	path.segments.filter(
		(segment) =>
			segment.kind === "bend" &&
			!segment.sprung &&
			(plan.system.bracket.carryRadius === null || segment.radius < plan.system.bracket.carryRadius),
	);

const endOf = ({ start, length }: Segment) => start + length;

describe("pieces and marks", () => {
	test("add up to the track, and every mark reads the same from both cut ends and lies on its piece", () => {
		onFitted(({ plan: { pieces, joints, brackets, system }, path }) => {
			const sum = (of: "finishedLength" | "cutLength") => pieces.reduce((total, piece) => total + piece[of], 0);
			expect(Math.abs(sum("finishedLength") - path.length)).toBeLessThan(TOLERANCE);
			expect(Math.abs(sum("cutLength") - (path.length - 2 * system.endTakeUp))).toBeLessThan(TOLERANCE);
			expect(pieces).toHaveLength(joints.length + 1);
			pieces.forEach((piece, i) => {
				expect(piece.from).toBe(i === 0 ? 0 : joints[i - 1]?.station);
				expect(piece.cutLength).toBeGreaterThan(0);
				const cutAt = piece.from + (i === 0 ? system.endTakeUp : 0);
				for (const { kind, of, fromLeft, fromRight } of piece.marks) {
					expect(Math.abs(fromLeft + fromRight - piece.cutLength)).toBeLessThan(TOLERANCE);
					expect(Math.min(fromLeft, fromRight)).toBeGreaterThan(-TOLERANCE);
					if (kind === "bracket")
						expect(Math.abs((brackets[of]?.station as number) - cutAt - fromLeft)).toBeLessThan(TOLERANCE);
					if (kind === "joint")
						expect(Math.abs((joints[of]?.station as number) - cutAt - fromLeft)).toBeLessThan(TOLERANCE);
				}
			});
		});
	});

	test("every bend start, middle and end, every joint and every bracket off the end hardware is marked", () => {
		onFitted((fitted) => {
			const { plan, path } = fitted;
			const count = (kind: string) =>
				new Set(plan.pieces.flatMap(({ marks }) => marks.filter((mark) => mark.kind === kind).map(({ of }) => of)))
					.size;
			const made = path.segments.filter((segment) => segment.kind === "bend" && !segment.sprung).length;
			for (const kind of ["bend-start", "bend-middle", "bend-end"]) expect(count(kind)).toBe(made);
			expect(count("joint")).toBe(plan.joints.length);
			const { endTakeUp } = plan.system;
			const onPieces = plan.brackets.filter(
				({ station }) => station >= endTakeUp && station <= path.length - endTakeUp,
			);
			expect(count("bracket")).toBe(onPieces.length);
		});
	});

	test("stock bought holds all that is cut from it", () => {
		onFitted(({ plan: { pieces, stock, system, findings } }) => {
			if (stock.buy.length === 0) return;
			const cut = stock.cuts.flatMap((length) => length.pieces);
			const refused = findings.flatMap(({ code, where }) => (code === "piece-too-short" ? [where.piece] : []));
			const wanted = pieces.map(({ name }) => name).filter((name) => !refused.includes(name));
			expect(cut.map(({ piece }) => piece).sort()).toEqual(wanted.sort());
			for (const length of stock.cuts) {
				const used = length.pieces.reduce((sum, piece) => sum + piece.length, 0);
				expect(used + system.kerf * (length.pieces.length - 1)).toBeLessThan(length.stock + TOLERANCE);
				expect(length.offcut).toBeGreaterThan(-TOLERANCE);
			}
			const bought = stock.buy.reduce((sum, { length, count }) => sum + length * count, 0);
			expect(bought).toBe(stock.cuts.reduce((sum, { stock: length }) => sum + length, 0));
		});
	});

	test("with joints left to the plan no piece is longer than the longest stock unless it is refused", () => {
		onFitted(({ bay, plan }) => {
			if (said(plan, "piece-too-short")) return;
			const longest = Math.max(...plan.system.stock.map(({ length }) => length));
			const over = plan.pieces.some(({ cutLength }) => cutLength > longest + TOLERANCE);
			expect(said(plan, "piece-longer-than-stock")).toBe(over);
			if (bay.track.joints !== "auto") return;
			// No fewer joints would do: n pieces of the longest stock reach no further.
			if (!over && plan.joints.length > 0) {
				const cut = plan.pieces.reduce((sum, { cutLength }) => sum + cutLength, 0);
				if (plan.findings.every(({ code }) => code !== "no-place-for-bracket"))
					expect(plan.joints.length).toBeGreaterThanOrEqual(Math.ceil(cut / longest - 1e-9) - 1);
			}
		});
	});
});

describe("brackets", () => {
	test("stand in order, on the path, and are taped as its place says", () => {
		onFitted(({ plan, path, chain }) => {
			plan.brackets.forEach((bracket, i) => {
				expect(bracket.station).toBeGreaterThanOrEqual(plan.brackets[i - 1]?.station ?? 0);
				expect(bracket.station).toBeLessThanOrEqual(path.length + TOLERANCE);
				const place = pointAt(path, bracket.station)?.at;
				expect(Math.hypot((place?.x as number) - bracket.at.x, (place?.y as number) - bracket.at.y)).toBeLessThan(
					TOLERANCE,
				);
				const taped = onWall(chain, bracket.wall, bracket.at);
				expect(Math.abs(taped.along - bracket.fromLeftCorner)).toBeLessThan(TOLERANCE);
				expect(Math.abs(taped.off - bracket.projection)).toBeLessThan(TOLERANCE);
				expect(Math.abs(taped.long - bracket.fromLeftCorner - bracket.fromRightCorner)).toBeLessThan(TOLERANCE);
			});
		});
	});

	test("leave no gap over the spacing, except round a bend or where a finding says so", () => {
		onFitted((fitted) => {
			const { plan } = fitted;
			const { maxSpacing, acrossBendMax, endMax } = plan.system.bracket;
			if (said(plan, "bracket-gap-too-wide", "no-place-for-bracket")) return;
			const bends = bareBends(fitted);
			gapsOf(plan.brackets).forEach(([from, to]) => {
				const across = bends.some(({ start, length }) => start + length > from && start < to);
				if (!across) expect(to - from).toBeLessThan(maxSpacing + TOLERANCE);
				else if (acrossBendMax !== null && !said(plan, "brackets-too-far-across-bend"))
					expect(to - from).toBeLessThan(acrossBendMax + TOLERANCE);
			});
			const { endTakeUp } = plan.system;
			expect(plan.brackets[0]?.station).toBeLessThan(endTakeUp + endMax + TOLERANCE);
			expect(plan.brackets.at(-1)?.station).toBeGreaterThan(
				(fitted.path.length as number) - endTakeUp - endMax - TOLERANCE,
			);
		});
	});

	test("have one within reach of each end of every bend that carries none, or a finding", () => {
		onFitted((fitted) => {
			const { plan } = fitted;
			const { besideBendMax } = plan.system.bracket;
			if (said(plan, "no-place-for-bracket")) return;
			for (const bend of bareBends(fitted)) {
				const near = (low: number, high: number) =>
					plan.brackets.some(({ station }) => station >= low - TOLERANCE && station <= high + TOLERANCE);
				expect(near(bend.start - besideBendMax, bend.start)).toBe(true);
				expect(near(endOf(bend), endOf(bend) + besideBendMax)).toBe(true);
			}
		});
	});

	test("stand at every joint, with a companion each side or a finding", () => {
		onFitted(({ plan }) => {
			const { jointCompanion, width } = plan.system.bracket;
			for (const { station } of plan.joints) {
				expect(plan.brackets.some((bracket) => Math.abs(bracket.station - station) < TOLERANCE)).toBe(true);
				if (said(plan, "no-place-for-bracket")) continue;
				for (const side of [-1, 1]) {
					const companion = plan.brackets.some((bracket) => {
						const off = side * (bracket.station - station);
						return off > width - TOLERANCE && off < jointCompanion + TOLERANCE;
					});
					expect(companion).toBe(true);
				}
			}
		});
	});

	test("never stand where none may, pins and questioned joints apart", () => {
		let looked = 0;
		onFitted((fitted) => {
			const { plan } = fitted;
			for (const bracket of plan.brackets) {
				if (bracket.role === "pinned" || (bracket.role === "joint" && said(plan, "joint-badly-placed"))) continue;
				looked++;
				expect(whyNot(fitted, bracket)).toBeNull();
			}
		});
		expect(looked).toBeGreaterThan(3000);
	});

	test("keep their own width apart, pins and joints apart", () => {
		onFitted(({ plan }) => {
			const fixed = ({ role }: Bracket) => role === "pinned" || role === "joint";
			plan.brackets.slice(1).forEach((bracket, i) => {
				const before = plan.brackets[i] as Bracket;
				if (fixed(bracket) && fixed(before)) return;
				expect(bracket.station - before.station).toBeGreaterThan(plan.system.bracket.width - 1e-4);
			});
		});
	});

	test("are missed beside a bend only where none within reach is there or may be there", () => {
		let missed = 0;
		onFitted((fitted) => {
			for (const { code, figures } of fitted.plan.findings) {
				if (code !== "no-place-for-bracket" || figures.role !== "bend") continue;
				missed++;
				const there = fitted.plan.brackets.some(
					({ station, role }) =>
						role !== "pinned" && station > Number(figures.from) + 1e-4 && station < Number(figures.to) - 1e-4,
				);
				expect(there).toBe(false);
			}
		});
		expect(missed).toBeGreaterThan(5);
	});

	test("a bend's bracket that finds no place leaves the rest of its straight as well hung as ever", () => {
		const corners = [
			[0, 0],
			[0, 3000],
			[2500, 3000],
			[2500, 0],
		];
		const plan = planDrawn({ id: "b", corners, walls: [{ noDrill: [[2300, 3000]] }] });
		expect(said(plan, "no-place-for-bracket")).toBe(true);
		// The left leg can be drilled up to 2300 from its left end, where the track starts too.
		const onLeft = plan.brackets.filter(({ wall }) => wall === 0).map(({ fromLeftCorner }) => fromLeftCorner);
		expect(onLeft.at(-1)).toBeGreaterThan(2300 - 1);
		gapsOf(plan.brackets.filter(({ wall }) => wall === 0)).forEach(([from, to]) => {
			expect(to - from).toBeLessThan(plan.system.bracket.maxSpacing + TOLERANCE);
		});
	});

	test("stand off an internal corner that the track only ends in", () => {
		const corners = [
			[0, 0],
			[0, 1500],
			[2500, 1500],
			[2500, 0],
		];
		const track = { system: "flexible", start: { wall: 1, at: 15 }, end: { wall: 1, at: 2485 } };
		const { brackets } = planDrawn({ id: "b", corners, track });
		expect(brackets[0]?.fromLeftCorner).toBeGreaterThan(50 - TOLERANCE);
		expect(brackets.at(-1)?.fromRightCorner).toBeGreaterThan(50 - TOLERANCE);
	});
});

const gapsOf = (brackets: readonly Bracket[]) =>
	brackets.slice(1).map(({ station }, i) => [brackets[i]?.station as number, station] as const);

function onWall({ corners }: Fitted["chain"], wall: number, p: { readonly x: number; readonly y: number }) {
	const [a, b] = [corners[wall], corners[wall + 1]] as [typeof p, typeof p];
	const long = Math.hypot(b.x - a.x, b.y - a.y);
	const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
	return { along: (p.x - a.x) * ux + (p.y - a.y) * uy, off: (p.x - a.x) * uy - (p.y - a.y) * ux, long };
}

/** The rule that forbids a bracket here, worked out from the drawing alone; null where there is none. */
function whyNot(fitted: Fitted, { station, wall, at }: Bracket): string | null {
	const { bay, plan, path, chain } = fitted;
	const { system, height } = plan;
	const half = system.bracket.width / 2;
	const inside = (from: number, x: number, to: number) => x > from + TOLERANCE && x < to - TOLERANCE;
	if (station < system.endTakeUp + half - TOLERANCE) return "left end hardware";
	if (station > path.length - system.endTakeUp - half + TOLERANCE) return "right end hardware";
	if (bareBends(fitted).some((bend) => inside(bend.start - half, station, endOf(bend) + half))) return "bend";
	const { along, long } = onWall(chain, wall, at);
	// Just where a bend passes from one wall to the next it may be fixed to either.
	const passesOver = path.segments.some(
		({ kind, start, length }) => kind === "bend" && Math.abs(start + length / 2 - station) < 0.01,
	);
	if (passesOver || Math.min(along, long - along) < 0.01) return null;
	if (bay.walls[wall]?.noDrill.some(([from, to]) => inside(from, along, to))) return "no drill";
	if (bay.track.mounting !== "wall") return null;
	for (const { wall: on, from, to, bottom, top } of bay.obstacles) {
		// A plate reaches 50 above and below the track.
		const atHeight = height === null || ((bottom ?? 0) <= height + 50 && (top ?? 1e9) >= height - 50);
		if (on === wall && atHeight && inside(from - half, along, to + half)) return "obstacle";
	}
	const internal = (corner: number) =>
		corner > 0 && corner < chain.turns.length - 1 && (chain.turns[corner] as number) >= (3 * Math.PI) / 180;
	if (internal(wall) && inside(-1e9, along, 50)) return "left corner";
	if (internal(wall + 1) && inside(long - 50, along, 1e9)) return "right corner";
	return null;
}

describe("stack-back and glass", () => {
	test("stacks lie on the track and apart, and the glass left clear is some part of the glass", () => {
		onFitted(({ bay, plan: { stackBack, glass }, path }) => {
			for (const { from, to } of stackBack) {
				expect(from).toBeGreaterThanOrEqual(0);
				expect(to).toBeLessThanOrEqual(path.length);
				expect(to - from).toBeGreaterThan(0);
			}
			if (stackBack.length === 2)
				expect(stackBack[1]?.from).toBeGreaterThanOrEqual((stackBack[0]?.to as number) - TOLERANCE);
			const total = bay.openings.reduce((sum, { from, to }) => sum + to - from, 0);
			expect(Math.abs(glass.total - total)).toBeLessThan(TOLERANCE);
			expect(glass.clearOpen).toBeGreaterThanOrEqual(0);
			expect(glass.clearOpen).toBeLessThanOrEqual(glass.total + TOLERANCE);
			for (const opening of glass.openings) {
				expect(opening.clearOpen).toBeGreaterThanOrEqual(0);
				expect(opening.clearOpen).toBeLessThanOrEqual(opening.width);
			}
		});
	});
});

describe("along the path", () => {
	test("its length is that of a fine chain of chords", () => {
		onFitted(({ path }) => {
			const steps = 400;
			let length = 0;
			let before = pointAt(path, 0)?.at;
			for (let i = 1; i <= steps; i++) {
				const at = pointAt(path, (path.length * i) / steps)?.at;
				length += Math.hypot((at?.x as number) - (before?.x as number), (at?.y as number) - (before?.y as number));
				before = at;
			}
			// A chord falls short of an arc s of radius r by s³/24r²; one that spans a join by no more than of the tightest bend.
			const tightest = Math.min(
				1e9,
				...path.segments.flatMap((each) => (each.kind === "straight" ? [] : [each.radius])),
			);
			const short = steps * ((path.length / steps) ** 3 / (24 * tightest ** 2));
			expect(length).toBeLessThan(path.length + TOLERANCE);
			expect(length).toBeGreaterThan(path.length - short - TOLERANCE);
		}, 1000);
	});

	test("the nearest station is at least as near as any of a dense sample", () => {
		let seed = 1;
		const random = () => {
			seed = (seed * 48_271) % 2_147_483_647;
			return seed / 2_147_483_647;
		};
		onFitted(({ path }) => {
			const on = pointAt(path, random() * path.length)?.at as { x: number; y: number };
			const p = { x: on.x + (random() - 0.5) * 2000, y: on.y + (random() - 0.5) * 2000 };
			const nearest = nearestStation(path, p);
			const step = path.length / 500;
			let sampled = Number.POSITIVE_INFINITY;
			for (let i = 0; i <= 500; i++) {
				const at = pointAt(path, i * step)?.at;
				sampled = Math.min(sampled, Math.hypot((at?.x as number) - p.x, (at?.y as number) - p.y));
			}
			expect(nearest?.distance).toBeLessThan(sampled + TOLERANCE);
			expect(nearest?.distance).toBeGreaterThan(sampled - step);
			const there = pointAt(path, nearest?.station as number)?.at;
			expect(
				Math.abs(Math.hypot((there?.x as number) - p.x, (there?.y as number) - p.y) - (nearest?.distance as number)),
			).toBeLessThan(TOLERANCE);
		}, 1000);
	});
});

test("obstacles at track height are refused exactly where a dense sample of the track comes too near", () => {
	const boxes = fc.record({
		wall: fc.nat(2),
		from: fc.integer({ min: 0, max: 2400 }),
		long: fc.integer({ min: 10, max: 2500 }),
		depth: fc.integer({ min: 1, max: 400 }),
	});
	const corners = [
		[0, 0],
		[0, 1800],
		[2500, 1800],
		[2500, 0],
	] as const;
	let refused = 0;
	let clear = 0;
	check(
		boxes,
		({ wall, from, long, depth }) => {
			const length = wall === 1 ? 2500 : 1800;
			const to = Math.min(from + long, length);
			if (from >= to) return;
			const plan = planDrawn({
				id: "b",
				corners,
				obstacles: [{ wall, from, to, depth }],
				track: { start: { wall: 0, at: 300 }, end: { wall: 2, at: 1500 } },
			});
			if (plan.path === null || plan.chain === null) throw new Error("refused");
			let nearest = Number.POSITIVE_INFINITY;
			const steps = 3000;
			for (let i = 0; i <= steps; i++) {
				const p = pointAt(plan.path, (plan.path.length * i) / steps)?.at as { x: number; y: number };
				const { along, off } = onWall(plan.chain, wall, p);
				const aside = Math.max(from - along, along - to, 0);
				const before = Math.max(off - depth, -off, 0);
				nearest = Math.min(nearest, Math.hypot(aside, before));
			}
			const step = plan.path.length / steps;
			const found = said(plan, "obstacle-in-the-way");
			if (nearest < plan.system.clearance - 1e-6) expect(found).toBe(true);
			if (nearest > plan.system.clearance + step) expect(found).toBe(false);
			if (found) refused++;
			else clear++;
		},
		1500,
	);
	expect(Math.min(refused, clear)).toBeGreaterThan(100);
});
