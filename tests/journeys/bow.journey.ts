import {
	cornerRow,
	cut,
	exampleFile,
	expect,
	lastOnStrip,
	onPage,
	openExample,
	test,
	toStage,
	view,
	watchWriting,
} from "./app.ts";
import { isClearOfHalf, whole } from "./by-hand.ts";

// Saltmarsh House: light corded track, projection 40, radius 310, from 60 on the first wall to 840 on the last; 100 mm for
// each end pulley (common practice, no source).
const corners: readonly Corner[] = exampleFile("saltmarsh-house").bays[0].corners;
const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };

test("the front wall pulled out by its grip becomes a bow, with the cut length worked out by hand; undo straightens it", async ({
	page,
}) => {
	await watchWriting(page);
	await openExample(page, "Saltmarsh House");
	await toStage(page, "Track");
	await expect(cut(page)).toHaveText("3187");
	const [left, right] = [corners[1] as Corner, corners[2] as Corner];
	const { scale } = await view(page);
	// The grip stands in the middle of the wall's outer line, 110 mm as drawn.
	const from = await onPage(page, [(left[0] + right[0]) / 2, left[1] + 110]);
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(from.x - 12, from.y - 50, { steps: 4 });
	await page.mouse.move(from.x + 5, from.y - 34, { steps: 4 });
	const out = 34 / scale;
	expect(isClearOfHalf(out)).toBe(true);
	const rise = Math.round(out);
	expect(rise).toBeGreaterThan(50);
	const byHand = bowedCut(corners, rise);
	expect(Math.abs(byHand.cut - 3187)).toBeGreaterThan(10);
	expect([byHand.cut, ...byHand.sweeps].every(isClearOfHalf)).toBe(true);

	const showsBow = async () => {
		await expect(cut(page)).toHaveText(whole(byHand.cut));
		for (const [i, sweep] of byHand.sweeps.entries()) {
			const angle = byHand.angles[i] as number;
			const cells = cornerRow(page, i + 1);
			await expect(cells.nth(0)).toHaveText(`${angle.toFixed(1)}°`);
			await expect(cells.nth(1)).toHaveText("310");
			await expect(cells.nth(3)).toHaveText(whole(sweep));
		}
		await expect.poll(() => lastOnStrip(page)).toBe(whole(byHand.cut));
	};
	await showsBow();
	await page.mouse.up();
	await showsBow();
	await toStage(page, "Survey");
	await expect(page.getByRole("textbox", { name: "Rise", exact: true })).toHaveValue(String(rise));
	await toStage(page, "Track");

	const undo = page.getByRole("button", { name: /^Undo/ });
	await expect(undo).toHaveAccessibleName("Undo: bow the front wall");
	await undo.click();
	await expect(cut(page)).toHaveText("3187");
	await expect(cornerRow(page, 1)).toContainText(["135.0°", "310", "145", "243"]);
	await expect(undo).toBeDisabled();
	await page.getByRole("button", { name: "Redo: bow the front wall" }).click();
	await showsBow();
});

type Corner = readonly [x: number, y: number];

/**
 * A bay of three walls whose middle one bows away from the room. A bend stands where the centre of its circle is
 * projection + radius off both faces: where a line beside the straight wall crosses a circle inside the arc.
 */
function bowedCut([a, b, c, d]: readonly Corner[] | readonly [Corner, Corner, Corner, Corner], rise: number) {
	const [p0, p1, p2, p3] = [a, b, c, d] as [Corner, Corner, Corner, Corner];
	const chord = Math.hypot(p2[0] - p1[0], p2[1] - p1[1]);
	// ρ = (c²/4 + h²)/2h: the circle through a chord's ends and a point h off its middle, by the theorem of crossing chords.
	const rho = (chord ** 2 / 4 + rise ** 2) / (2 * rise);
	const [ux, uy] = unit(p1, p2);
	// From the middle of the chord into the room, which lies on the right.
	const centre: Corner = [(p1[0] + p2[0]) / 2 + uy * (rho - rise), (p1[1] + p2[1]) / 2 - ux * (rho - rise)];
	const inside = track.projection + track.radius;
	const left = bendBeside(p0, p1, centre, rho - inside, inside, p1);
	const right = bendBeside(p2, p3, centre, rho - inside, inside, p2);
	// Travelled clockwise round the centre: the heading is a quarter turn to the right of the ray.
	const turnLeft = turn(heading(p0, p1), ray(centre, left.centre) - 90);
	const turnRight = turn(ray(centre, right.centre) - 90, heading(p2, p3));
	const swept = turn(ray(centre, left.centre), ray(centre, right.centre));
	const arc = (rho - track.projection) * rad(swept);
	const sweeps = [turnLeft, turnRight].map((degrees) => track.radius * rad(degrees));
	return {
		cut:
			left.along -
			track.start +
			(sweeps[0] as number) +
			arc +
			(sweeps[1] as number) +
			(track.end - right.along) -
			track.takeUp,
		sweeps,
		/** Between the face of the straight wall and that of the arc where they meet. */
		angles: [180 - turn(heading(p0, p1), ray(centre, p1) - 90), 180 - turn(ray(centre, p2) - 90, heading(p2, p3))],
	};
}

/** Where the line `off` mm to the right of a wall crosses a circle, of the two places the one nearer to the corner. */
function bendBeside(from: Corner, to: Corner, [cx, cy]: Corner, radius: number, off: number, corner: Corner) {
	const [ux, uy] = unit(from, to);
	const [x, y] = [from[0] + uy * off, from[1] - ux * off];
	const middle = (cx - x) * ux + (cy - y) * uy;
	const half = Math.sqrt(radius ** 2 - ((cx - x) * uy - (cy - y) * ux) ** 2);
	const places = [middle - half, middle + half].map((along) => {
		const centre: Corner = [x + ux * along, y + uy * along];
		return { along, centre, away: Math.hypot(centre[0] - corner[0], centre[1] - corner[1]) };
	});
	return places.sort((a, b) => a.away - b.away)[0] as (typeof places)[number];
}

function unit(from: Corner, to: Corner): Corner {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
/** Degrees, left from the x axis. */
const heading = ([x, y]: Corner, [toX, toY]: Corner): number => (Math.atan2(toY - y, toX - x) * 180) / Math.PI;
const ray = heading;
/** Degrees to the right from one heading to another, under half a turn. */
const turn = (from: number, to: number): number => ((((from - to + 180) % 360) + 360) % 360) - 180;
