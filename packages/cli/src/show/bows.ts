import { toDegrees } from "@baywright/geometry";
import { type BayPlan, formatAngle, wallName } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

/** Where the piece is bent along a bowed wall. */
export function bowsText({ bows, projections }: BayPlan, { figure }: Lengths): string[] {
	if (bows.length === 0) return [];
	const rows = bows.map(({ wall, radius, turn, sweep, from, to }) => [
		wallName(wall, projections.length),
		turn > 0 ? "away from the room" : "into the room",
		formatAngle(toDegrees(Math.abs(turn))),
		...[radius, sweep, from, to].map(figure),
	]);
	const columns = [
		words("wall"),
		words("bows"),
		...["turns by", "radius", "sweep", "starts at", "ends at"].map(figures),
	];
	return section("Bows", [
		...table(columns, rows),
		...wrap(
			"Radius and sweep along the centre line, sweep along the curve; start and end along the track from its finished left end.",
			{ indent: "  " },
		),
	]);
}
