import type { Selection } from "@baywright/editor";
import { toDegrees, toRadians } from "@baywright/geometry";
import { cornerCard, RIGHT_ANGLE_RULE } from "@baywright/setout";
import { useCallback, useState } from "react";
import { desk, useDesk } from "../../desk/desk.ts";
import { planOnTable } from "../../desk/on-table.ts";
import { useScreen } from "../../desk/screen.ts";
import { CardFields } from "./card-fields.tsx";
import type { CardInput } from "./card-input.ts";
import { CornerDrawing } from "./corner-drawing.tsx";
import { CornerFigures } from "./corner-figures.tsx";
import { UseOnCorner } from "./use-on-corner.tsx";

/** One odd corner worked out at the wall: angle, projection and radius in, everything to mark out. */
export function CornerCard({ corner }: { readonly corner: number | "odd" | null }) {
	const started = useScreen((state) => state.started);
	const onTable = useDesk((state) =>
		targetCorner(state.selection, corner, state.shown.bays[state.bay]?.corners.length ?? 0),
	);
	const target = started ? onTable : null;
	const [input, setInput] = useState<CardInput>(() => inputFrom(target));
	const [refusals, setRefusals] = useState(0);
	const countRefused = useCallback((refused: boolean) => setRefusals((count) => count + (refused ? 1 : -1)), []);
	const unsure = refusals > 0;
	const card = cornerCard({
		angle: toRadians(input.angle),
		left: input.left,
		right: input.right,
		radius: input.radius,
		brackets: input.bracket,
	});
	return (
		<div className="card">
			<CardFields input={input} onChange={(part) => setInput({ ...input, ...part })} onRefused={countRefused} />
			<div className={unsure ? "card-drawing unsure" : "card-drawing"}>
				<CornerDrawing input={input} card={card} />
			</div>
			<CornerFigures input={input} card={card} unsure={unsure} />
			{target === null ? null : <UseOnCorner input={input} corner={target} unsure={unsure} />}
		</div>
	);
}

/** The corner asked for, else the selected one, else the first; null in a bay without corners and for an odd corner of none. */
function targetCorner(selection: Selection | null, asked: number | "odd" | null, corners: number): number | null {
	if (asked === "odd") return null;
	const last = corners - 2;
	const wanted = asked ?? (selection?.kind === "corner" ? selection.index : 1);
	if (wanted >= 1 && wanted <= last) return wanted;
	return last >= 1 ? 1 : null;
}

function inputFrom(corner: number | null): CardInput {
	const plan = planOnTable(desk.getState());
	const fitted = plan.corners.find((each) => each.corner === corner);
	const turn = corner === null ? undefined : plan.chain?.turns[corner];
	const projection = (wall: number) => plan.projections[wall] ?? plan.system.projection.default;
	const internal = turn !== undefined && turn > 0;
	return {
		angle: internal ? Math.round(toDegrees(Math.PI - turn) * 10) / 10 : 90,
		left: projection((corner ?? 0) - 1),
		right: projection(corner ?? -1),
		radius: fitted === undefined || fitted.sprung ? plan.system.preferredRadius : Math.floor(fitted.radius * 10) / 10,
		bracket: RIGHT_ANGLE_RULE.brackets,
	};
}
