import { describe, expect, test } from "vitest";
import { parseJob } from "../../../packages/setout/src/job/parse.ts";
import { builtInSystems } from "../../../packages/setout/src/library/built-in.ts";
import { findSystem, libraryOf } from "../../../packages/setout/src/library/library.ts";
import { trackSystemSchema } from "../../../packages/setout/src/library/system.ts";
import { leastJob, leastSystem } from "./sample.ts";

const jobWith = (...systems: unknown[]) => {
	const parsed = parseJob({ ...leastJob(), systems, region: "AU" });
	if (!parsed.ok) throw new Error("refused");
	return parsed.job;
};

describe("built-in systems", () => {
	test("are the ones a job can name, each once", () => {
		const ids = builtInSystems.map(({ id }) => id);
		expect(ids).toEqual(expect.arrayContaining(["light-corded", "heavy-hand-drawn", "flexible", "ceiling-channel"]));
		expect(new Set(ids).size).toBe(ids.length);
	});

	test.each(builtInSystems.map((system) => [system.id, system] as const))("%s agrees with itself", (_, system) => {
		expect(trackSystemSchema.parse(system)).toEqual(system);
		const { projection, minRadius, bracket } = system;
		expect(projection.default).toBeGreaterThanOrEqual(projection.min);
		expect(projection.default).toBeLessThanOrEqual(projection.max);
		expect(system.clearance).toBeLessThan(projection.min);
		expect(system.clearance).toBeGreaterThanOrEqual(system.profile.width / 2);
		expect(system.preferredRadius).toBeGreaterThanOrEqual(Math.max(minRadius.internal, minRadius.external));
		expect(bracket.besideBendMax).toBeGreaterThanOrEqual(bracket.width / 2);
		expect(bracket.jointCompanion).toBeLessThan(bracket.maxSpacing);
		expect(system.straightBesideBend).toBeGreaterThanOrEqual(bracket.width / 2);
	});

	test("light-corded keeps to the usual figures for a right-angled corner", () => {
		// Common practice, no source: least radius 225, brackets at most 380 apart, companions 150 beside a joint,
		// 100 for each end pulley; projection 40 and radius 310 are what put the brackets 350 from the corner.
		expect(findSystem(jobWith(), "light-corded")).toMatchObject({
			minRadius: { internal: 225 },
			preferredRadius: 310,
			projection: { default: 40 },
			bracket: { maxSpacing: 380, jointCompanion: 150 },
			endTakeUp: 100,
			corded: true,
		});
	});
});

describe("a job's library", () => {
	test("has the job's own systems first and hides the built-in one of the same id", () => {
		const library = libraryOf(jobWith({ ...leastSystem(), id: "flexible", name: "Mine" }));
		expect(library.systems[0]?.name).toBe("Mine");
		expect(library.systems.filter(({ id }) => id === "flexible")).toHaveLength(1);
		expect(library.systems).toHaveLength(builtInSystems.length);
		expect(library.region).toBe("AU");
	});

	test("finds a system of the job before a built-in one, and nothing where there is none", () => {
		const job = jobWith({ ...leastSystem(), id: "flexible", name: "Mine" });
		expect(findSystem(job, "flexible")?.name).toBe("Mine");
		expect(findSystem(job, "light-corded")?.name).toBe("Light corded");
		expect(findSystem(job, "nope")).toBeUndefined();
	});

	test("a system with only its required keys has cautious defaults", () => {
		expect(libraryOf(jobWith(leastSystem())).systems[0]).toMatchObject({
			joint: null,
			kerf: 3,
			endTakeUp: 0,
			bracket: { maxSpacing: 400, acrossBendMax: null, maxLoad: null, carryRadius: null },
			stock: [{ length: 3000, cost: null }],
		});
	});
});
