import { fitTrack, readChain, type WallFace } from "@baywright/geometry";
import fc from "fast-check";
import { expect, test } from "vitest";
import { awayFromWalls } from "../oracles/corridor.ts";
import { part } from "./any-bay.ts";
import { check } from "./bays.ts";

const CLEARANCE = 15;

/**
 * A step in a wall, and in front of it the end of another wall that comes back out of the room behind it. The track runs along the first
 * three walls only: whoever looks at those alone does not see the other.
 */
const faced = fc.tuple(part, part, part).map(([deep, beside, short]): [number, number][] => {
	const depth = 150 + 250 * deep;
	const x = 350 + 450 * beside;
	return [
		[0, 0],
		[500, 0],
		[500, -depth],
		[1300, -depth],
		[1300, -depth - 500],
		[x, -depth - 500],
		[x, -depth * (0.3 + short)],
	];
});

test("a reverse bend is clear of every wall near it, not only of the three it passes", () => {
	let reverses = 0;
	check(
		faced,
		(corners) => {
			const chain = readChain(corners.map(([x, y]) => ({ x, y })));
			if (!chain.ok) return;
			const { walls } = chain.value;
			const ends = {
				start: { wall: 0, at: 0 },
				end: { wall: 2, at: (walls[2] as WallFace).length },
			};
			const track = fitTrack(
				chain.value,
				walls.map(() => 40),
				ends,
				{
					leastRadius: { internal: 100, external: 120 },
					preferredRadius: 200,
					straightBesideBend: 20,
					endStraight: 0,
					clearance: CLEARANCE,
					setRadii: new Map(),
				},
			);
			if (!track.ok) return;
			for (const segment of track.value.path.segments) {
				const ofReverse = segment.kind === "bend" ? segment.reverse : segment.kind === "straight" && segment.crosses;
				if (!ofReverse) continue;
				reverses++;
				const { face, edge } = awayFromWalls(segment, corners, 1);
				expect(Math.min(face[0], edge[0])).toBeGreaterThan(CLEARANCE - 1e-6);
			}
		},
		3000,
	);
	expect(reverses).toBeGreaterThan(1000);
});
