import type { BayPlan, CornerSetOut } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { cornerGroups, groupTitle } from "../../../packages/app/src/panels/corner-groups.ts";

type Part = Pick<CornerSetOut, "corner" | "corners" | "kind" | "setBack">;

const plan = (...corners: readonly Part[]) => ({ corners: corners as unknown as BayPlan["corners"] });
const bend = (corner: number): Part => ({ corner, corners: [corner], kind: "bend", setBack: [100, 100] });
const half = (corner: number, setBack: Part["setBack"]): Part => ({
	corner,
	corners: [corner],
	kind: "reverse",
	setBack,
});
const bridge = (...corners: number[]): Part[] =>
	corners.map((corner) => ({ corner, corners, kind: "bridge", setBack: [null, null] }));

describe("corners that are read together", () => {
	it("are those of one bend, and the two halves of a reverse bend", () => {
		const groups = cornerGroups(
			plan(
				bend(1),
				...bridge(2, 3, 4),
				half(5, [80, null]),
				half(6, [null, 80]),
				half(7, [90, null]),
				half(8, [null, 90]),
			),
			8,
		);
		expect(groups.map(groupTitle).slice(1)).toEqual([
			"one bend, corners 2–4",
			"reverse bend, corners 5–6",
			"reverse bend, corners 7–8",
		]);
		expect(groups.map(({ corners }) => corners)).toEqual([[1], [2, 3, 4], [5, 6], [7, 8]]);
	});

	it("are each alone where nothing is fitted, or the track ends before them", () => {
		expect(cornerGroups(plan(), 2).map(({ corners }) => corners)).toEqual([[1], [2]]);
		expect(cornerGroups(plan(...bridge(2, 3)), 4).map(({ corners }) => corners)).toEqual([[1], [2, 3], [4]]);
	});
});
