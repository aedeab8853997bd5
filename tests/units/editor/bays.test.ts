import { addBay, canRemoveBay, duplicateBay, plainBay, plainJob, removeBay, renameBay } from "@baywright/editor";
import { parseJob } from "@baywright/setout";
import { expect, test } from "vitest";

test("bays added get ids and names of their own, and the job stays a good one", () => {
	let job = plainJob();
	for (let i = 0; i < 3; i++) job = addBay(job, plainBay("bow")).job;
	expect(job.bays.map(({ id }) => id)).toEqual(["bay-1", "bay-2", "bay-3", "bay-4"]);
	expect(job.bays.map(({ name }) => name)).toEqual(["Bay", "Bay 2", "Bay 3", "Bay 4"]);
	expect(parseJob(JSON.parse(JSON.stringify(job))).ok).toBe(true);
});

test("a copy stands right behind its bay and differs in id and name alone", () => {
	const two = addBay(plainJob(), plainBay("bow")).job;
	const { job, bay } = duplicateBay(two, 0);
	expect(bay).toBe(1);
	expect(job.bays.map(({ walls }) => walls.length)).toEqual([3, 3, 1]);
	expect(job.bays[1]).toEqual({ ...job.bays[0], id: "bay-3", name: "Bay 3" });
});

test("a nameless bay is copied without a name", () => {
	const job = renameBay(plainJob(), 0, "");
	expect(duplicateBay(job, 0).job.bays.map(({ name }) => name)).toEqual(["", ""]);
});

test("a job keeps its last bay", () => {
	const one = plainJob();
	expect(canRemoveBay(one)).toBe(false);
	expect(removeBay(one, 0)).toBe(one);
	const two = addBay(one, plainBay("bow")).job;
	expect(removeBay(two, 0).bays.map(({ id }) => id)).toEqual(["bay-2"]);
	expect(removeBay(two, 2)).toBe(two);
});

test("a name that stays the same changes nothing", () => {
	const job = plainJob();
	expect(renameBay(job, 0, "Bay")).toBe(job);
	expect(renameBay(job, 0, "Stair window").bays[0]?.name).toBe("Stair window");
});
