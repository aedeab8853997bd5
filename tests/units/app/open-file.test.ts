import { newJob, plainBay } from "@baywright/editor";
import { serialiseJob } from "@baywright/setout";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { desk } from "../../../packages/app/src/desk/desk.ts";
import { screen } from "../../../packages/app/src/desk/screen.ts";
import { rememberBayAtHand } from "../../../packages/app/src/storage/bay-at-hand.ts";
import { receiveFile } from "../../../packages/app/src/storage/job-file.ts";

const square = newJob(plainBay("square"));

beforeEach(() => {
	screen.setState({ started: true, sheet: null });
	desk.getState().restore(square);
});

afterEach(() => vi.unstubAllGlobals());

test("a job file without bays is refused with its reason, and the desk stays as it is", async () => {
	const forget = rememberBayAtHand();
	const before = desk.getState().job;
	await receiveFile(new File(['{"format":"baywright-job","version":1,"bays":[]}'], "none.baywright.json"));
	forget();
	expect(screen.getState().sheet).toEqual({
		kind: "problems",
		file: "none.baywright.json",
		lines: ["bays: found an empty list, allowed one bay or more"],
	});
	expect(desk.getState().job).toBe(before);
});

test("one with a bay is opened", async () => {
	const other = { ...square, title: "Another" };
	vi.stubGlobal("window", { scrollTo: () => undefined });
	await receiveFile(new File([serialiseJob(other)], "other.baywright.json"));
	expect(desk.getState().job.title).toBe("Another");
});
