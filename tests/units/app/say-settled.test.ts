import { newJob, plainBay, runOf } from "@baywright/editor";
import { beforeEach, expect, test } from "vitest";
import { setRun } from "../../../packages/app/src/desk/changes.ts";
import { desk } from "../../../packages/app/src/desk/desk.ts";
import { screen } from "../../../packages/app/src/desk/screen.ts";
import { showLength } from "../../../packages/app/src/fields/read-length.ts";
import { saySettled } from "../../../packages/app/src/panels/say-settled.ts";
import { jobOf } from "../editor/sample-bay.ts";

let said: string[] = [];
beforeEach(() => {
	said = [];
	screen.setState({ say: (text: string) => void said.push(text) });
});

/** What is said once a run of `mm` is typed for the first wall. */
function typeRun(job: Parameters<ReturnType<typeof desk.getState>["restore"]>[0], mm: number): string[] {
	desk.getState().restore(job);
	const refused = desk.getState().change("run", setRun(desk.getState().job, 0, 0, mm));
	saySettled(
		refused,
		mm,
		({ corners }) => runOf(corners, 0),
		(figure) => showLength(figure, "mm"),
	);
	return said;
}

// A slanted first wall, whose run comes back as 501.49993 of 501.5, for corners are kept to the thousandth.
const SLANTED = [
	[0, 0],
	[700, 713],
	[2400, 713],
	[3100, 0],
] as const;

test("of a drawn bay nothing is said, whatever is typed", () => {
	for (let mm = 500.05; mm < 505; mm += 0.05) typeRun(jobOf({ corners: SLANTED }), mm);
	typeRun(newJob(plainBay("square")), 1234.5);
	expect(said).toEqual([]);
});

test("of a taped bay nothing is said where the others leave it as typed", () => {
	const readings = [{ kind: "run", wall: 0, value: 999 }];
	for (let mm = 500.05; mm < 505; mm += 0.05) typeRun(jobOf({ corners: SLANTED, readings }), mm);
	expect(said).toEqual([]);
});

test("where they settle elsewhere it is said, to the tenth as the field shows it", () => {
	// A right angle with sides 400 and 300 and 500 across it; the run is typed as 401.
	const readings = [
		{ kind: "run", wall: 0, value: 400, sd: 1 },
		{ kind: "run", wall: 1, value: 300, sd: 1 },
		{ kind: "angle", corner: 1, value: 90, sd: 0.01 },
		{ kind: "diagonal", from: 0, to: 2, value: 500, sd: 1 },
	];
	const corners = [
		[0, 0],
		[0, 400],
		[300, 400],
	];
	// Least squares by hand: the diagonal has slopes 0.8 and 0.6, so that of the 0.8 it is out half goes: 401 - 0.8 × 0.8 / 2 = 400.68.
	expect(typeRun(jobOf({ corners, readings }), 401)).toEqual([
		"401 is taken as a reading: with the others it comes to 400.7",
	]);
});
