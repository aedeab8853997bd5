import { expect, test } from "vitest";
import { markWords } from "../../../packages/app/src/phone/mark-words.ts";
import { stripReadings } from "../../../packages/app/src/phone/strip-readings.ts";
import { marked, planned, rightAngled } from "./marks-right-angled.ts";

/** mm, far below any tape. */
const FINE = 3;

// By hand, for projection 40 and radius 310 in a right angle: set-back 40 + 310 = 350, sweep 310·π/2 = 486.947, middle of the
// bend (40 + 310)/sin 45° − 310 = 184.975 off the corner.
const SWEEP = (310 * Math.PI) / 2;
const GAP = 350 * Math.SQRT2 - 310;

const whole = (mm: number) => mm.toFixed(0);

test("the list goes along the track from the left: wall, bend, wall, bend, wall, joints and brackets as they come", () => {
	const marks = marked(rightAngled());
	const stations = marks.map(({ station }) => station);
	expect(stations).toEqual([...stations].sort((a, b) => a - b));
	// Brackets are numbered as they are met, and the joint is on the front wall between the two bends.
	const brackets = marks.filter(({ kind }) => kind === "bracket").map(({ name }) => name);
	expect(brackets).toEqual(brackets.map((_, i) => `bracket-${i + 1}`));
	const [first, joint, second] = ["bend-1", "joint-1", "bend-2"].map((name) =>
		marks.findIndex((each) => each.name === name),
	);
	expect(first).toBeGreaterThan(0);
	expect(joint).toBeGreaterThan(first as number);
	expect(second).toBeGreaterThan(joint as number);
	// What is before the first bend is on the left wall, what is after the second on the right one.
	for (const [i, mark] of marks.entries()) {
		if (mark.kind !== "bracket") continue;
		expect(mark.place.wall).toBe(i < (first as number) ? 0 : i < (second as number) ? 1 : 2);
	}
});

test("a bracket is taped from the nearer corner, with the other corner's reading under it", () => {
	const marks = marked(rightAngled());
	const pinned = marks.find((mark) => mark.kind === "bracket" && mark.role === "pinned");
	if (pinned?.kind !== "bracket") throw new Error("no pinned bracket");
	expect(pinned.nearer.corner).toBe(0);
	expect(pinned.nearer.mm).toBeCloseTo(300, FINE);
	expect(pinned.further.corner).toBe(1);
	expect(pinned.further.mm).toBeCloseTo(600, FINE);
	const words = markWords(pinned, 3, whole);
	expect(words).toMatchObject({ from: "from the left end", check: "600 from corner 1" });
	expect(words.place).toContain("left wall");
	for (const mark of marks) {
		if (mark.kind !== "bracket" && mark.kind !== "joint") continue;
		expect(mark.nearer.mm).toBeLessThanOrEqual(mark.further.mm);
		expect(mark.nearer.mm + mark.further.mm).toBeCloseTo(mark.place.wall === 1 ? 1800 : 900, FINE);
		expect(mark.curved).toBe(false);
	}
});

test("a bend has its radius, sweep, where it starts and how far its middle is off the corner", () => {
	const bends = marked(rightAngled()).filter((mark) => mark.kind === "bend");
	expect(bends).toHaveLength(2);
	for (const [i, bend] of bends.entries()) {
		expect(bend.corners).toEqual([i + 1]);
		expect(bend.radius).toBeCloseTo(310, FINE);
		expect(bend.sweep).toBeCloseTo(SWEEP, FINE);
		expect(bend.setBack[0]).toBeCloseTo(350, FINE);
		expect(bend.setBack[1]).toBeCloseTo(350, FINE);
		expect(bend.gaps[0]).toBeCloseTo(GAP, FINE);
	}
	// The first bend starts 900 − 350 along the track, of which end hardware takes up 100.
	expect(bends[0]?.station).toBeCloseTo(550, FINE);
	expect(bends[0]?.on?.piece).toBe("A");
	expect(bends[0]?.on?.start).toBeCloseTo(450, FINE);
	expect(markWords(bends[0] as (typeof bends)[number], 3, whole)).toMatchObject({
		title: "Bend 1",
		place: "corner 1, radius 310, starts 350 before corner 1, ends 350 after corner 1",
		from: "sweep",
		check: "middle 185 off corner 1",
	});
});

test("a joint in the middle of the front wall reads the same from either corner", () => {
	const joint = marked(rightAngled()).find(({ kind }) => kind === "joint");
	if (joint?.kind !== "joint") throw new Error("no joint");
	expect(joint.nearer.mm).toBeCloseTo(900, FINE);
	expect(markWords(joint, 3, whole)).toMatchObject({ title: "Joint 1", from: "from either corner", check: "" });
});

test("on a bowed wall the tape follows the curve", () => {
	// Chord 1800, rise 100: ρ = (900² + 100²)/200 = 4100, and the face is 2ρ·asin(900/ρ) long.
	const radius = (900 ** 2 + 100 ** 2) / 200;
	const face = 2 * radius * Math.asin(900 / radius);
	const bay = rightAngled({ walls: [{}, { rise: 100 }] }, { joints: "none", brackets: [{ wall: 1, at: 600 }] });
	const marks = marked(bay);
	const onBow = marks.filter((mark) => mark.kind === "bracket" && mark.place.wall === 1);
	expect(onBow.length).toBeGreaterThan(2);
	for (const mark of onBow) {
		if (mark.kind !== "bracket") continue;
		expect(mark.curved).toBe(true);
		expect(mark.nearer.mm + mark.further.mm).toBeCloseTo(face, 2);
		expect(markWords(mark, 3, whole).place).toContain("front wall, along the curve");
	}
	const pinned = onBow.find((mark) => mark.kind === "bracket" && mark.role === "pinned");
	expect(pinned?.kind === "bracket" && pinned.nearer.mm).toBeCloseTo(600, 1);
	const bow = marks.find(({ kind }) => kind === "bow");
	// Bowed away from the room, the track runs inside the face: ρ − 40.
	expect(bow?.kind === "bow" && bow.radius).toBeCloseTo(radius - 40, FINE);
});

test("a refused plan has no marks", () => {
	const bay = rightAngled({}, { bends: [{ corner: 1, radius: 100 }] });
	expect(planned(bay).path).toBeNull();
	expect(marked(bay)).toEqual([]);
});

test("the strip is read from either cut end, the far end's marks first from the right", () => {
	const plan = planned(rightAngled({}, { joints: "none", end: { wall: 2, at: 800 } }));
	const [piece] = plan.pieces;
	if (piece === undefined) throw new Error("no piece");
	const bends = (from: "left" | "right") => stripReadings(plan, piece, from).filter(({ kind }) => kind !== "bracket");
	// From the left: 900 − 350 − 100 to the first bend, then its sweep, then 1800 − 700 to the second. From the right the end
	// stands at 800, so 800 − 350 − 100.
	const left = [450, 450 + SWEEP / 2, 450 + SWEEP, 1550 + SWEEP, 1550 + 1.5 * SWEEP, 1550 + 2 * SWEEP];
	const right = [350, 350 + SWEEP / 2, 350 + SWEEP, 1450 + SWEEP, 1450 + 1.5 * SWEEP, 1450 + 2 * SWEEP];
	for (const [end, by] of [
		["left", left],
		["right", right],
	] as const) {
		const seen = bends(end);
		expect(seen.map(({ mm }) => Math.round(mm * 100))).toEqual(by.map((mm) => Math.round(mm * 100)));
		expect(seen[0]?.words).toBe(`bend starts, corner ${end === "left" ? 1 : 2}`);
		expect(seen.at(-1)?.words).toBe(`bend ends, corner ${end === "left" ? 2 : 1}`);
		expect(seen.map(({ bent }) => bent)).toEqual([true, true, false, true, true, false]);
	}
});
