import { readFileSync } from "node:fs";
import { prove } from "@baywright/geometry";
import { type Bay, type BayPlan, libraryOf, planBay, readJobText } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { planDrawn } from "../../properties/bays.ts";

const LANTERN = new URL("../../../examples/lantern-room.baywright.json", import.meta.url);

function lantern(follow: "walls" | "smoothest"): { readonly bay: Bay; readonly plan: BayPlan } {
	const read = readJobText(readFileSync(LANTERN, "utf8"));
	if (!read.ok) throw new Error("the example is no job");
	const bay = read.job.bays[0] as Bay;
	const changed = { ...bay, track: { ...bay.track, follow } };
	return { bay: changed, plan: planBay(changed, libraryOf(read.job)) };
}

const bendsOf = ({ path }: BayPlan) => (path?.segments ?? []).filter(({ kind }) => kind === "bend");

/** How far points of the track are off the nearest wall face, from the corners alone. */
function offWalls({ path }: BayPlan, corners: Bay["corners"]): number[] {
	const offs: number[] = [];
	for (const segment of path?.segments ?? []) {
		for (let i = 0; i <= 200; i++) {
			const share = i / 200;
			let x = segment.from.x + (segment.to.x - segment.from.x) * share;
			let y = segment.from.y + (segment.to.y - segment.from.y) * share;
			if (segment.kind !== "straight") {
				const from = Math.atan2(segment.from.y - segment.centre.y, segment.from.x - segment.centre.x);
				const angle = from - segment.turn * share;
				x = segment.centre.x + segment.radius * Math.cos(angle);
				y = segment.centre.y + segment.radius * Math.sin(angle);
			}
			let nearest = Number.POSITIVE_INFINITY;
			for (let wall = 0; wall + 1 < corners.length; wall++) {
				const [ax, ay] = corners[wall] as readonly [number, number];
				const [bx, by] = corners[wall + 1] as readonly [number, number];
				const t = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
				const held = Math.min(Math.max(t, 0), 1);
				nearest = Math.min(nearest, Math.hypot(x - ax - held * (bx - ax), y - ay - held * (by - ay)));
			}
			offs.push(nearest);
		}
	}
	return offs;
}

describe("the smoothest track inside what the brackets reach", () => {
	test("a faceted bow of five shallow corners is five bends along the walls, and one in all", () => {
		expect(bendsOf(lantern("walls").plan)).toHaveLength(5);
		const { plan } = lantern("smoothest");
		expect(bendsOf(plan)).toHaveLength(1);
		// The pair meets in the middle of the one bend.
		expect(plan.findings.map(({ code }) => code)).toEqual(["overlap-on-bend", "holes-in-cable-zones"]);
	});

	test("it stays between the least and the greatest projection everywhere, and holds its proof", () => {
		const { bay, plan } = lantern("smoothest");
		const { min, max } = plan.system.projection;
		const offs = offWalls(plan, bay.corners);
		expect(Math.min(...offs)).toBeGreaterThan(min - 1e-6);
		expect(Math.max(...offs)).toBeLessThan(max + 1e-6);
		if (plan.path === null || plan.chain === null) throw new Error("not fitted");
		const ends = { start: { wall: 0, at: 30 }, end: { wall: 5, at: 390 } };
		const rule = { leastRadius: plan.system.minRadius, clearance: min, projections: plan.projections, ends };
		expect(prove(plan.path, plan.chain, rule)).toEqual([]);
	});

	test("its bend is as wide as the corridor or its legs let it be", () => {
		const { bay, plan } = lantern("smoothest");
		const offs = offWalls(plan, bay.corners);
		// At its widest it touches one limit, or its legs have no more room.
		const straights = plan.path?.segments.filter(({ kind }) => kind === "straight").map(({ length }) => length) ?? [];
		const full = Math.min(...straights) - (plan.system.endTakeUp + plan.system.straightBesideBend) < 1e-6;
		expect(full || Math.max(...offs) > plan.system.projection.max - 1e-3).toBe(true);
	});
});

describe("the smoothest track while a bay is dragged", () => {
	test("of two mirror images the choice stays the same from one millimetre to the next", () => {
		// Six walls alike that turn by 20.25° to 22.25° at every corner: two bends, and as good the one way round as the other.
		const chosen: string[] = [];
		for (let step = 0; step <= 40; step++) {
			const lengths = [600, 300, 300, 300, 300, 600];
			const turn = ((20.25 + step / 20) * Math.PI) / 180;
			let at: [number, number] = [0, 0];
			const corners = [at];
			lengths.forEach((length, wall) => {
				at = [at[0] + length * Math.cos(-turn * wall), at[1] + length * Math.sin(-turn * wall)];
				corners.push(at);
			});
			const { path } = planDrawn({ id: "b", corners, track: { system: "light-corded", follow: "smoothest" } });
			const bends = path?.segments.flatMap((one) => (one.kind === "bend" ? [one.corners.join("+")] : [])) ?? [];
			chosen.push(bends.join(" "));
		}
		expect(chosen[0]).not.toBe("");
		expect(new Set(chosen).size).toBe(1);
	});
});
