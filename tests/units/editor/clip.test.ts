import { addBay, clipOf, clipText, emptyBay, newJob, paste, plainBay, plainJob, readClip } from "@baywright/editor";
import { builtInSystems, type Job, parseJob, type TrackSystem } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";

const OPENING = { kind: "opening", index: 0 } as const;

const good = (job: Job) => parseJob(JSON.parse(JSON.stringify(job))).ok;

function copied(job: Job, selection: Parameters<typeof clipOf>[2] = null) {
	const clip = clipOf(job, 0, selection);
	if (clip === null) throw new Error("nothing was copied");
	const read = readClip(clipText(clip));
	if (!read.ok) throw new Error(read.message);
	expect(read.clip).toEqual(clip);
	return read.clip;
}

function pasted(...args: Parameters<typeof paste>) {
	const done = paste(...args);
	if (!done.ok) throw new Error(done.message);
	expect(good(done.job)).toBe(true);
	return done;
}

test("an opening is pasted on the wall that is chosen, as near its own place as there is room", () => {
	const job = newJob(plainBay("five-sided"));
	const clip = copied(job, OPENING);
	const done = pasted(job, 0, clip, 0);
	expect(done.job.bays[0]?.openings.at(-1)).toEqual({
		wall: 0,
		from: 40,
		to: 600,
		sill: 600,
		head: 2050,
		sillDepth: 0,
	});
	expect(done.selection).toEqual({ kind: "opening", index: 3 });
	expect(done.label).toBe("paste an opening");
});

test("a place that is taken gives way to the nearest free one", () => {
	const bay = plainBay("recess");
	const job = newJob({ ...bay, openings: [{ wall: 0, from: 700, to: 1200, sill: 600, head: 2050, sillDepth: 0 }] });
	// Free are 0 to 700 and 1200 to 2000: beside it on either side, 500 away, and at the wall's end.
	const { openings } = pasted(job, 0, copied(job, OPENING), null).job.bays[0] as Job["bays"][number];
	expect(openings[1]).toMatchObject({ from: 1200, to: 1700 });
});

test("a wall without room is named, with the width that it would need", () => {
	const job = plainJob();
	expect(paste(job, 0, copied(job, OPENING), 0)).toEqual({
		ok: false,
		message: "The left wall has no room for the opening, which is 1500 mm wide.",
	});
	expect(paste(job, 0, copied(job, OPENING), null)).toMatchObject({ ok: false });
});

test("a bay without the wall, or without any, is told so", () => {
	const job = plainJob();
	const clip = copied(job, OPENING);
	const one = addBay(job, plainBay("recess")).job;
	expect(paste(one, 1, clip, null)).toMatchObject({ ok: false, message: /no wall to match/ });
	expect(paste(newJob(emptyBay()), 0, clip, null)).toMatchObject({
		ok: false,
		message: /no wall to put the opening on/,
	});
});

test("things pasted again and again never overlap, and stop when the wall is full", () => {
	fc.assert(
		fc.property(fc.integer({ min: 60, max: 900 }), fc.integer({ min: 0, max: 1100 }), (width, from) => {
			let job = newJob({
				...plainBay("recess"),
				openings: [{ wall: 0, from, to: from + width, sill: null, head: null, sillDepth: 0 }],
			});
			const clip = copied(job, OPENING);
			for (let i = 0; ; i++) {
				const done = paste(job, 0, clip, null);
				if (!done.ok) break;
				expect(i).toBeLessThan(2000 / width);
				job = done.job;
			}
			const sorted = (job.bays[0]?.openings ?? []).toSorted((a, b) => a.from - b.from);
			expect(sorted.every((it, i) => i === 0 || it.from >= (sorted[i - 1]?.to ?? 0) - 1e-6)).toBe(true);
			expect(sorted[0]?.from).toBeGreaterThanOrEqual(0);
			expect(sorted.at(-1)?.to).toBeLessThanOrEqual(2000 + 1e-6);
		}),
	);
});

test("an obstacle keeps its kind and size", () => {
	const socket = { kind: "socket", wall: 1, from: 300, to: 386, bottom: 450, top: 536, depth: 10 } as const;
	const job = newJob({ ...plainBay("square"), obstacles: [socket] });
	const done = pasted(job, 0, copied(job, { kind: "obstacle", index: 0 }), null);
	expect(done.job.bays[0]?.obstacles).toEqual([socket, { ...socket, from: 386, to: 472 }]);
});

test("a whole bay goes to another job with the system that it hangs on", () => {
	const own: TrackSystem = { ...(builtInSystems[0] as TrackSystem), id: "mine", name: "Mine" };
	const bay = plainBay("bow");
	const job: Job = {
		...newJob(bay),
		systems: [own],
		bays: [{ ...bay, track: { ...bay.track, system: "mine" } }],
	};
	expect(good(job)).toBe(true);
	const clip = copied(job, { kind: "wall", index: 0 });
	const done = pasted(plainJob(), 0, clip, null);
	expect(done.bay).toBe(1);
	expect(done.job.systems).toEqual([own]);
	expect(done.job.bays[1]).toEqual({ ...job.bays[0], id: "bay-2", name: "Bay 2" });
	// A second time nothing is there twice.
	expect(pasted(done.job, 0, clip, null).job.systems).toHaveLength(1);
});

const envelope = (part: object) => JSON.stringify({ format: "baywright-clip", version: 1, ...part });

test.each([
	["words", "Kitchen, 2400 wide", /nothing was pasted/],
	["a number", "12", /nothing was pasted/],
	["other JSON", '{"format":"baywright-job","version":1}', /nothing was pasted/],
	["a later version", '{"format":"baywright-clip","version":2}', /version 2: 1 is read here/],
	["another kind", envelope({ kind: "track" }), /is "track": an opening, an obstacle or a bay/],
	["no opening", envelope({ kind: "opening" }), /wall undefined: the number of a wall/],
	["a wall of no number", envelope({ kind: "opening", opening: { wall: -1, from: 0, to: 1 } }), /wall -1/],
	[
		"a wide word",
		envelope({ kind: "opening", opening: { wall: 0, from: "wide", to: 900 } }),
		/damaged: from: found "wide", allowed a number of mm/,
	],
	[
		"its ends crossed",
		envelope({ kind: "opening", opening: { wall: 3, from: 900, to: 100 } }),
		/damaged: to: found 100, allowed more than from/,
	],
	[
		"an unknown kind",
		envelope({ kind: "obstacle", obstacle: { kind: "cat", wall: 0, from: 0, to: 9 } }),
		/damaged: kind: found "cat"/,
	],
	["a bay of nothing", envelope({ kind: "bay", bay: {} }), /damaged: id: /],
	[
		"a bay on no system",
		envelope({ kind: "bay", bay: { ...plainBay(), track: { system: "gone" } } }),
		/damaged: track\.system: found "gone"/,
	],
])("%s is refused in one plain line", (_, text, line) => {
	const read = readClip(text);
	expect(read).toMatchObject({ ok: false, message: expect.stringMatching(line) });
	expect(read.ok ? "" : read.message).not.toContain("\n");
});

test("nothing that is no clip is ever taken for one", () => {
	fc.assert(
		fc.property(fc.anything(), (thing) => {
			const text = JSON.stringify({ format: "baywright-clip", version: 1, kind: "obstacle", obstacle: thing }) ?? "";
			const read = readClip(text);
			if (read.ok) expect(paste(plainJob(), 0, read.clip, 1).ok).toBeDefined();
			else expect(read.message).toMatch(/copied/);
		}),
	);
});
