import { toDegrees } from "@baywright/geometry";
import { type BayPlan, cornerName, formatAngle } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

export function cornersText(plan: BayPlan, { figure }: Lengths): string[] {
	if (plan.corners.length === 0) return [];
	const walls = plan.projections.length;
	const rows = plan.corners.map(({ corner, interiorAngle, radius, setBack, sweep, cornerGap, sprung, chosen }) => {
		const start = [cornerName(corner, walls), formatAngle(toDegrees(interiorAngle))];
		// Nothing is bent where the track only springs round a slight turn: there is nothing to mark.
		if (sprung || radius === 0) return [...start, "none", "", "", "", figure(cornerGap), "the track springs round"];
		const marks = [radius, ...setBack, sweep, cornerGap].map(figure);
		return [...start, ...marks, chosen ? "radius set by you" : ""];
	});
	const columns = [
		words("corner"),
		...["angle", "radius", "set-back\nleft wall", "set-back\nright wall", "sweep", "corner\ngap"].map(figures),
		words(""),
	];
	return section("Corners", [
		...table(columns, rows),
		...wrap(
			"Radius and sweep along the centre line; set-back along the wall face, from the corner to where the bend starts; " +
				"corner gap from the corner to the middle of the bend.",
			{ indent: "  " },
		),
	]);
}
