import { toDegrees } from "@baywright/geometry";
import { type BayPlan, type CornerSetOut, cornerName, formatAngle, wallName } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

export function cornersText(plan: BayPlan, { figure, sure }: Lengths): string[] {
	if (plan.corners.length === 0) return [];
	const walls = plan.projections.length;
	const rows = plan.corners.map((set) => {
		const { corner, interiorAngle, radius, setBack, sd, sweep, cornerGap, sprung } = set;
		const start = [cornerName(corner, walls), formatAngle(toDegrees(interiorAngle))];
		// Nothing is bent where the track only springs round a slight turn: there is nothing to mark.
		if (sprung || radius === 0) return [...start, "none", "", "", "", figure(cornerGap), "the track springs round"];
		const backs = setBack.map((mm, side) => (mm === null ? "–" : sure(mm, sd[side] ?? null)));
		const marks = [figure(radius), ...backs, figure(sweep), figure(cornerGap)];
		return [...start, ...marks, remark(set)];
	});
	const columns = [
		words("corner"),
		...["angle", "radius", "set-back\nleft wall", "set-back\nright wall", "sweep", "corner\ngap"].map(figures),
		words(""),
	];
	return section("Corners", [
		...table(columns, rows),
		...wrap(
			`Radius and sweep along the centre line; set-back along the wall face${plan.bows.length > 0 ? " (on a bowed wall along the curve)" : ""}, from the corner to where the bend starts; corner gap from the corner to the middle of the bend${plan.bridged.length > 0 ? ", or to the nearest point of one bend past several corners" : ""}.`,
			{ indent: "  " },
		),
		...bridgedText(plan, figure),
	]);
}

function remark({ kind, corners, chosen }: CornerSetOut): string {
	if (kind === "reverse") return "reverse bend";
	if (kind === "bridge") return `one bend, corners ${corners[0]}–${corners.at(-1)}`;
	return chosen ? "radius set by you" : "";
}

/** Stand-offs below this (mm) are not worth a line. */
const LEAST_SAID = 0.5;

/** Facets too short for bends of their own: how far the one bend stands off the track that would follow them. */
function bridgedText({ bridged, projections }: BayPlan, figure: Lengths["figure"]): string[] {
	return bridged.flatMap(({ wall, standOff }) => {
		if (Math.abs(standOff) < LEAST_SAID) return [];
		return wrap(
			`The bend past the ${wallName(wall, projections.length)} runs ${figure(Math.abs(standOff))} ` +
				`${standOff < 0 ? "nearer to it" : "further off it"} than the track along the other walls.`,
			{ indent: "  " },
		);
	});
}
