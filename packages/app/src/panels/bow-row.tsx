import { isSelected } from "@baywright/editor";
import { type BayPlan, type BowSetOut, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { planOnTable, useBay } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";

/** Where the track is bent along one bowed wall: named, with the stations of its ends, above its radius and sweep. */
export function BowRow({ wall }: { readonly wall: number }) {
	const chosen = useDesk((state) => isSelected(state.selection, "bow", wall));
	const name = useBay((bay) => wallName(wall, bay.walls.length));
	const { select } = desk.getState();
	const toggle = () => select(chosen ? null : { kind: "bow", index: wall });
	return (
		<tbody className="of-one">
			<tr className="together">
				<th scope="rowgroup" colSpan={6}>
					<span className="stretch">
						<Figure of={(state) => bowOn(planOnTable(state), wall)?.from} /> to{" "}
						<Figure of={(state) => bowOn(planOnTable(state), wall)?.to} /> of the track
					</span>
					bow, {name}
				</th>
			</tr>
			<tr className={chosen ? "row chosen" : "row"} onClick={toggle}>
				<th scope="row">
					<Button className="place" aria-label={`Bow of the ${name}`} aria-expanded={chosen} onPress={toggle}>
						<svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
							<path
								d="M2 11.5 A7.5 7.5 0 0 1 14 11.5"
								fill="none"
								stroke="currentColor"
								strokeWidth="2.25"
								strokeLinecap="round"
							/>
						</svg>
					</Button>
				</th>
				<td />
				<td>
					<Figure of={(state) => bowOn(planOnTable(state), wall)?.radius} />
				</td>
				<td />
				<td>
					<Figure of={(state) => bowOn(planOnTable(state), wall)?.sweep} />
				</td>
				<td />
			</tr>
		</tbody>
	);
}

const bowOn = ({ bows }: BayPlan, wall: number): BowSetOut | undefined => bows.find((bow) => bow.wall === wall);
