import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check } from "../../properties/bays.ts";
import { faultsOf, fitted, rad } from "./fit-walls.ts";

const corner = (angle: number, projection: number | readonly number[]) => ({
	lengths: [3000, 3000],
	turns: [180 - angle],
	projection,
});
const tight = (radius: number) => ({ leastRadius: { internal: radius, external: radius }, preferredRadius: radius });

describe("an external corner", () => {
	test("of 270° lets radius 225 through at a projection of 76.5 and not a hair less", () => {
		// Design section 5: d = c·cos(δ/2) + R(1 − cos(δ/2)) for clearance 15.
		const least = 15 * Math.SQRT1_2 + 225 * (1 - Math.SQRT1_2);
		expect(least).toBeCloseTo(76.5, 1);
		expect(fitted(corner(270, least + 1e-6), tight(225)).radii).toEqual([225]);
		const [fault] = faultsOf(corner(270, least - 1e-4), tight(225));
		if (fault?.kind !== "no-room-round-corner") throw new Error(`${fault?.kind}`);
		expect(fault.radius).toBe(225);
		expect(fault.greatest).toBeLessThan(225);
		expect(fault.greatest).toBeGreaterThan(225 - 1e-3);
	});

	test("between equal projections has the closed form's greatest radius, by which the preferred one is capped", () => {
		const seen = { capped: 0, free: 0 };
		check(
			fc.tuple(fc.integer({ min: 185, max: 339 }), fc.integer({ min: 20, max: 400 }), fc.integer({ min: 5, max: 19 })),
			([angle, d, c]) => {
				const secant = 1 / Math.cos(rad(angle - 180) / 2);
				// Up to R = d a bend keeps the projection all round.
				const greatest = Math.max(d, (d * secant - c) / (secant - 1));
				const { radii } = fitted(corner(angle, d), { ...tight(10), preferredRadius: 500, clearance: c });
				expect(radii[0]).toBeCloseTo(Math.min(500, greatest), 6);
				seen[greatest < 500 ? "capped" : "free"]++;
			},
			500,
		);
		expect(Math.min(seen.capped, seen.free)).toBeGreaterThan(50);
	});

	test("between unequal projections has the greatest radius that a search along the arc finds", () => {
		let capped = 0;
		check(
			fc.tuple(
				fc.integer({ min: 190, max: 335 }),
				fc.integer({ min: 20, max: 250 }),
				fc.integer({ min: 20, max: 250 }),
				fc.integer({ min: 5, max: 19 }),
			),
			([angle, dl, dr, c]) => {
				const greatest = searchGreatest(rad(angle - 180), dl, dr, c);
				const walls = corner(angle, [dl, dr]);
				const rule = { ...tight(Math.min(dl, dr)), preferredRadius: 600, clearance: c };
				const { radii } = fitted(walls, rule);
				if (greatest < 600) capped++;
				expect(Math.abs((radii[0] as number) - Math.min(600, greatest))).toBeLessThan(1e-3);
			},
			250,
		);
		expect(capped).toBeGreaterThan(60);
	});

	test("is measured from edge to bend: set-backs and gap of the equal 90° pier, R 225 at 80", () => {
		const { path } = fitted(corner(270, 80), tight(225));
		const [, bend] = path.segments;
		if (bend?.kind !== "bend") throw new Error("no bend");
		// Set-back (R − d) tan(δ/2) = 145; gap d/cos − R(1/cos − 1).
		expect(3000 - bend.from.x).toBeCloseTo(145, 9);
		expect(bend.to.y).toBeCloseTo(145, 9);
		expect(bend.length).toBeCloseTo((225 * Math.PI) / 2, 9);
		const gap = 80 * Math.SQRT2 - 225 * (Math.SQRT2 - 1);
		expect(225 - Math.hypot(bend.centre.x - 3000, bend.centre.y)).toBeCloseTo(gap, 9);
	});
});

/** mm of radius; where a bend has once come too near it comes nearer with every mm. */
const STEP = 5;

/**
 * In the frame of the corner: the left wall comes along −x to the origin, the right one leaves turned left by `swing`. The arc is
 * laid tangent to both offset lines for one radius after another from the smaller projection up, until it comes too near.
 */
function searchGreatest(swing: number, dl: number, dr: number, clearance: number): number {
	const away = (radius: number) => {
		// Centre: `radius` less the projection behind either face line. The faces have normals to the room (0, −1) and (sin, −cos).
		const [a, b] = [radius - dl, radius - dr];
		const y = a;
		const x = (y * Math.cos(swing) - b) / Math.sin(swing);
		let least = Number.POSITIVE_INFINITY;
		for (let i = 0; i <= 200; i++) {
			const heading = (swing * i) / 200;
			const px = x + radius * Math.sin(heading);
			const py = y - radius * Math.cos(heading);
			const along = -Math.min(px, 0);
			const inRoom = py < 0 || px * Math.sin(swing) - py * Math.cos(swing) > 0;
			const toLeft = Math.hypot(px + along, py);
			const ahead = Math.max(0, px * Math.cos(swing) + py * Math.sin(swing));
			const toRight = Math.hypot(px - ahead * Math.cos(swing), py - ahead * Math.sin(swing));
			least = Math.min(least, (inRoom ? 1 : -1) * Math.min(toLeft, toRight));
		}
		return least;
	};
	// Of 200 places the nearest is a little further off than the nearest of all: the limit is looked for from a step before.
	const exact = (radius: number) => away(radius) - clearance;
	let radius = Math.min(dl, dr);
	while (radius < 650 && exact(radius) >= 0) radius += STEP;
	if (radius >= 650) return radius;
	return refine(swing, dl, dr, clearance, Math.max(radius - 2 * STEP, 1), radius);
}

/** The place nearest the edge lies where the radius through it does: between two radii the limit is halved out. */
function refine(swing: number, dl: number, dr: number, clearance: number, good: number, bad: number): number {
	let low = good;
	let high = bad;
	for (let i = 0; i < 50; i++) {
		const radius = (low + high) / 2;
		const y = radius - dl;
		const x = (y * Math.cos(swing) - (radius - dr)) / Math.sin(swing);
		if (radius - Math.hypot(x, y) >= clearance) low = radius;
		else high = radius;
	}
	return low;
}
