import { type BayPlan, type BracketRole, wallName } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

const ROLES: Readonly<Record<BracketRole, string>> = {
	end: "near the end",
	bend: "beside a bend",
	joint: "at a joint",
	companion: "beside a joint",
	field: "between",
	pinned: "pinned by you",
};

export function bracketsText(plan: BayPlan, { figure, sure }: Lengths): string[] {
	if (plan.brackets.length === 0) return [];
	const walls = plan.projections.length;
	const rows = plan.brackets.map(({ wall, fromLeftCorner, fromRightCorner, sd, projection, role }, i) => [
		String(i + 1),
		wallName(wall, walls),
		sure(fromLeftCorner, sd[0]),
		sure(fromRightCorner, sd[1]),
		figure(projection),
		ROLES[role],
	]);
	const columns = [
		figures("no."),
		words("wall"),
		figures("from the wall's\nleft corner"),
		figures("from the wall's\nright corner"),
		figures("projection"),
		words("what for"),
	];
	return section("Brackets", [
		...table(columns, rows),
		...wrap(
			`Tape along the wall face from the corner at either end of that wall; both readings give the same place.${onCurves(plan)}`,
			{ indent: "  " },
		),
	]);
}

/** On a bowed wall a tape follows the face, which a run from corner to corner does not. */
function onCurves({ bows, projections }: BayPlan): string {
	const walls = bows.map(({ wall }) => `the ${wallName(wall, projections.length)}`);
	return walls.length === 0 ? "" : ` On ${walls.join(" and ")} hold the tape along the curve of the face.`;
}

export function jointsText(plan: BayPlan, { figure }: Lengths): string[] {
	if (plan.joints.length === 0) return [];
	const walls = plan.projections.length;
	const rows = plan.joints.map(({ wall, at, station }, i) => [
		String(i + 1),
		wallName(wall, walls),
		figure(at),
		figure(station),
	]);
	const columns = [
		figures("no."),
		words("wall"),
		figures("from the wall's\nleft corner"),
		figures("from the track's\nfinished left end"),
	];
	return section("Joints", table(columns, rows));
}
