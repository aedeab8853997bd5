import { emptyBay, newJob, plainBay, plainBays, plainJob, plansOf } from "@baywright/editor";
import { parseJob, severityOf } from "@baywright/setout";
import { expect, test } from "vitest";

test.each(plainBays.map((bay) => [bay.id, bay] as const))("%s hangs a track with nothing to warn of", (id) => {
	const [plan] = plansOf(newJob(plainBay(id)));
	expect(plan?.pieces.length).toBeGreaterThan(0);
	expect(plan?.findings.filter(({ code }) => severityOf(code) !== "note")).toEqual([]);
});

test("the plain bays have the walls and angles that their words promise", () => {
	const shapes = plainBays.map(({ id, corners, rises }) => {
		const headings = corners.slice(1).map(([x, y], i) => {
			const [x0, y0] = corners[i] as readonly [number, number];
			return { run: Math.round(Math.hypot(x - x0, y - y0)), way: (Math.atan2(y - y0, x - x0) * 180) / Math.PI };
		});
		const angles = headings.slice(1).map(({ way }, i) => Math.round(180 - ((headings[i]?.way ?? 0) - way)));
		return { id, runs: headings.map(({ run }) => run), angles, rises };
	});
	expect(shapes).toEqual([
		{ id: "recess", runs: [2000], angles: [], rises: [] },
		{ id: "square", runs: [700, 1800, 700], angles: [90, 90], rises: [] },
		{ id: "splayed", runs: [900, 1800, 900], angles: [135, 135], rises: [] },
		{ id: "five-sided", runs: [600, 800, 1200, 800, 600], angles: [135, 135, 135, 135], rises: [] },
		{ id: "bow", runs: [2400], angles: [], rises: [300] },
		{ id: "l-shaped", runs: [1200, 2200], angles: [90], rises: [] },
	]);
});

test("every opening has a sill and a head", () => {
	for (const { openings } of plainBays) {
		expect(openings.length).toBeGreaterThan(0);
		for (const { sill, head } of openings) expect([sill, head]).toEqual([600, 2050]);
	}
});

test("an empty bay is a good job with no corners", () => {
	const job = newJob(emptyBay());
	expect(job.bays[0]?.corners).toEqual([]);
	expect(parseJob(JSON.parse(JSON.stringify(job)))).toEqual({ ok: true, job });
});

test("a new job is the plain square bay", () => {
	expect(plainJob()).toEqual(newJob(plainBay("square")));
});
