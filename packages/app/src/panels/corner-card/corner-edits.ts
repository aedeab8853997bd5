import { angleOf, type Desk } from "@baywright/editor";
import { formatAngle, formatLength, type Operation, wallName } from "@baywright/setout";
import { setAngle, setBendRadius } from "../../desk/changes.ts";
import { bayOnTable, planOnTable } from "../../desk/on-table.ts";
import type { CardInput } from "./card-input.ts";

export interface Edit {
	readonly word: string;
	readonly operations: readonly Operation[];
}

/** Figures that agree this closely are the same on a tape (mm) or a bevel (degrees). */
const SAME = 0.05;

/** What would have to be set for a corner of the bay to stand as the card says. */
export function cornerEdits(state: Desk, input: CardInput, corner: number | null): readonly Edit[] {
	if (corner === null) return [];
	const bay = bayOnTable(state);
	const plan = planOnTable(state);
	const show = (mm: number) => formatLength(mm, state.shown.display.length, { unit: true });
	const list: Edit[] = [];
	const radius = plan.corners.find((each) => each.corner === corner)?.radius;
	if (radius === undefined || Math.abs(radius - input.radius) > SAME)
		list.push({
			word: `radius ${show(input.radius)}`,
			operations: setBendRadius(state.job, state.bay, corner, input.radius),
		});
	for (const [wall, projection] of [
		[corner - 1, input.left],
		[corner, input.right],
	] as const)
		if (Math.abs((plan.projections[wall] ?? Number.NaN) - projection) > SAME)
			list.push({
				word: `projection ${show(projection)} on the ${wallName(wall, bay.corners.length - 1)}`,
				operations: [{ op: "replace", path: `/bays/${state.bay}/walls/${wall}/projection`, value: projection }],
			});
	if (Math.abs(angleOf(bay.corners, corner, bay.walls) - input.angle) > SAME)
		list.push({
			word: `angle ${formatAngle(input.angle)}`,
			operations: setAngle(state.job, state.bay, corner, input.angle),
		});
	return list;
}
