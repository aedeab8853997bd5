import type { BayPlan } from "@baywright/setout";
import { expect, test } from "vitest";
import { anyCorners, baysOf, bowed, drawnAt } from "./any-bay.ts";
import { check, planDrawn } from "./bays.ts";

const origin = { x: 0, y: 0, heading: 0 };

/** mm. */
const TOLERANCE = 1e-4;

const said = ({ findings }: BayPlan, code: string, wall: number) =>
	findings.some((finding) => finding.code === code && finding.where.wall === wall);

test("along every bow brackets stand only where its radius carries them or a warning says that it does not", () => {
	let tight = 0;
	let bare = 0;
	check(
		baysOf(bowed),
		(bay) => {
			const plan = planDrawn(drawnAt(bay, anyCorners(bay, origin)));
			if (plan.path === null) return;
			const { carryRadius, width } = plan.system.bracket;
			for (const segment of plan.path.segments) {
				if (segment.kind !== "bow" || carryRadius === null || segment.radius >= carryRadius) continue;
				tight++;
				const [from, to] = [
					segment.start - width / 2 + TOLERANCE,
					segment.start + segment.length + width / 2 - TOLERANCE,
				];
				const on = plan.brackets.filter(({ station }) => station > from && station < to).length;
				expect(said(plan, "brackets-on-tight-bow", segment.wall)).toBe(on > 0);
				if (on === 0) bare++;
			}
		},
		3000,
	);
	expect(tight).toBeGreaterThan(200);
	expect(bare).toBeGreaterThan(20);
}, 60_000);

test("every bow is marked on its pieces, within their cut ends", () => {
	let marked = 0;
	check(
		baysOf(bowed),
		(bay) => {
			const plan = planDrawn(drawnAt(bay, anyCorners(bay, origin)));
			if (plan.path === null) return;
			const { endTakeUp } = plan.system;
			const right = plan.path.length - endTakeUp;
			const marks = plan.pieces.flatMap((piece) => piece.marks.map((mark) => ({ ...mark, cut: piece.cutLength })));
			for (const { wall, from, to } of plan.bows) {
				const own = marks.filter(({ bow, of }) => bow && of === wall);
				if (Math.min(to, right) - Math.max(from, endTakeUp) < TOLERANCE) continue;
				marked++;
				expect([...new Set(own.map(({ kind }) => kind))].sort()).toEqual(["bend-end", "bend-middle", "bend-start"]);
				for (const { fromLeft, fromRight, cut } of own) {
					expect(Math.min(fromLeft, fromRight)).toBeGreaterThan(-TOLERANCE);
					expect(Math.abs(fromLeft + fromRight - cut)).toBeLessThan(TOLERANCE);
				}
			}
		},
		1000,
	);
	expect(marked).toBeGreaterThan(300);
}, 60_000);
