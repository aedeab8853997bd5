import type { Desk } from "@baywright/editor";
import { angleOf, isSelected } from "@baywright/editor";
import { type BayPlan, type CornerSetOut, formatAngle } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { setBendRadius } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { bayOnTable, planOnTable, useBay, useLength, usePlan } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { PlusMinus } from "../fields/plus-minus.tsx";
import { bringIntoView } from "./bring-into-view.ts";

interface RowProps {
	readonly corner: number;
	/** Radius and sweep are those of the bend that the corner before shares, and stand there. */
	readonly shares: boolean;
}

function angleAt(state: Desk, corner: number): number {
	const { corners, walls } = bayOnTable(state);
	return angleOf(corners, corner, walls);
}

/** One corner's figures; selected, also the field for its radius. */
export function CornerRow({ corner, shares }: RowProps) {
	const chosen = useDesk(
		({ selection }) => isSelected(selection, "corner", corner) || isSelected(selection, "bend", corner),
	);
	const pointed = useDesk(({ hover }) => isSelected(hover, "corner", corner) || isSelected(hover, "bend", corner));
	const set = useBay((bay) => bay.track.bends.some((bend) => bend.corner === corner));
	const sprung = usePlan((plan) => fittedAt(plan, corner)?.sprung ?? false);
	const uneven = usePlan((plan) => isUneven(fittedAt(plan, corner)?.setBack));
	const { select, point } = desk.getState();
	const toggle = () => select(chosen ? null : { kind: "corner", index: corner });
	const row = useRef<HTMLTableRowElement>(null);
	useEffect(() => {
		if (chosen && row.current) bringIntoView(row.current);
	}, [chosen]);

	return (
		<>
			<tr
				ref={row}
				className={`row${chosen ? " chosen" : ""}${pointed ? " pointed" : ""}`}
				onClick={toggle}
				onPointerEnter={() => point({ kind: "corner", index: corner })}
				onPointerLeave={() => point(null)}
			>
				<th scope="row">
					<Button className="place" aria-label={`Corner ${corner}`} aria-expanded={chosen} onPress={toggle}>
						{corner}
					</Button>
				</th>
				<td>
					<Figure of={(state) => angleAt(state, corner)} format={formatAngle} />
				</td>
				{sprung ? (
					<td className="springs" colSpan={3}>
						springs, no bend
					</td>
				) : (
					<>
						<td className={set ? "set" : "unset"}>
							{shares ? null : <Figure of={(state) => fittedAt(planOnTable(state), corner)?.radius} />}
						</td>
						<td>
							<Figure of={(state) => fittedAt(planOnTable(state), corner)?.setBack[0] ?? undefined} />
							<PlusMinus of={(plan) => sdAt(plan, corner, 0)} />
							{uneven ? (
								<>
									<span className="hidden"> on the left, on the right </span>
									<Figure
										className="under"
										of={(state) => fittedAt(planOnTable(state), corner)?.setBack[1] ?? undefined}
									/>
									<PlusMinus of={(plan) => sdAt(plan, corner, 1)} />
								</>
							) : null}
						</td>
						<td>{shares ? null : <Figure of={(state) => fittedAt(planOnTable(state), corner)?.sweep} />}</td>
					</>
				)}
				<td>
					<Figure of={(state) => fittedAt(planOnTable(state), corner)?.cornerGap} />
				</td>
			</tr>
			{chosen ? (
				<tr className="detail chosen">
					<td colSpan={6}>
						{sprung ? (
							<p className="quiet">The track springs round so slight a turn: there is no radius to set.</p>
						) : (
							<RadiusOf corner={corner} />
						)}
					</td>
				</tr>
			) : null}
		</>
	);
}

/** The radius of one corner: typed, or left to be chosen. */
function RadiusOf({ corner }: { readonly corner: number }) {
	const bay = useDesk((state) => state.bay);
	const set = useBay((on) => on.track.bends.find((bend) => bend.corner === corner)?.radius ?? null);
	const fitted = usePlan((plan) => fittedAt(plan, corner));
	const show = useLength();
	const setRadius = (mm: number | null) =>
		desk
			.getState()
			.change(
				mm === null ? `radius of corner ${corner} left to choose` : `radius of corner ${corner}`,
				setBendRadius(desk.getState().job, bay, corner, mm),
			);
	return (
		<div className="radius-of">
			<LengthField
				label={`Radius of corner ${corner}`}
				value={set}
				instead={fitted?.radius ?? null}
				commit={setRadius}
				clear={() => setRadius(null)}
			/>
			{fitted === undefined ? null : (
				<p className="quiet">
					{show(Math.ceil(fitted.least))} to {show(Math.floor(fitted.greatest))} will fit.{" "}
					{set === null ? "Chosen for you." : "Empty it to have it chosen for you."}
				</p>
			)}
		</div>
	);
}

function fittedAt(plan: BayPlan, corner: number): CornerSetOut | undefined {
	return plan.corners.find((each) => each.corner === corner);
}

const sdAt = (plan: BayPlan, corner: number, side: 0 | 1): number | null => fittedAt(plan, corner)?.sd[side] ?? null;

/** Set-backs that differ by less than this are one figure to a tape, mm. */
const SAME_ON_TAPE = 0.25;

function isUneven(setBack: readonly [number | null, number | null] | undefined): boolean {
	const [left = null, right = null] = setBack ?? [];
	return left === null || right === null ? left !== right : Math.abs(left - right) > SAME_ON_TAPE;
}
