import { isSelected } from "@baywright/editor";
import { capital, wallName } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { PlusMinus, useTaped } from "../fields/plus-minus.tsx";
import { BracketLine } from "./bracket-line.tsx";
import { BracketPin } from "./bracket-pin.tsx";
import { bringIntoView } from "./bring-into-view.ts";
import { Section } from "./section.tsx";

/** Where to drill, read by a tape along the wall face from the corner on either side. */
export function BracketsPanel({ open = false }: { readonly open?: boolean }) {
	const count = usePlan((plan) => plan.brackets.length);
	const isTaped = useTaped();
	return (
		<Section title="Brackets" holds={HOLDS} gist={String(count)} open={open} id="brackets">
			{count === 0 ? (
				<p className="quiet">No brackets until the track fits.</p>
			) : (
				<>
					<p className="quiet">
						Taped along the wall face, from the corner at its left and at its right{isTaped ? ", ± at 95 %" : null}.
					</p>
					<table className="figures brackets">
						<thead>
							<tr>
								<th scope="col">
									<span className="hidden">bracket</span>
								</th>
								<th scope="col" className="word">
									wall
								</th>
								<th scope="col">from left</th>
								<th scope="col">from right</th>
							</tr>
						</thead>
						<tbody>
							{Array.from({ length: count }, (_, index) => (
								// biome-ignore lint/suspicious/noArrayIndexKey: a bracket is known by its index
								<BracketRow key={index} index={index} />
							))}
						</tbody>
					</table>
				</>
			)}
		</Section>
	);
}

function BracketRow({ index }: { readonly index: number }) {
	const chosen = useDesk((state) => isSelected(state.selection, "bracket", index));
	const wall = usePlan((plan) => plan.brackets[index]?.wall ?? 0);
	const walls = useBay((bay) => bay.corners.length - 1);
	const name = capital(wallName(wall, walls));
	const role = usePlan((plan) => plan.brackets[index]?.role ?? "field");
	const row = useRef<HTMLTableRowElement>(null);
	useEffect(() => {
		if (chosen && row.current) bringIntoView(row.current);
	}, [chosen]);
	return (
		<>
			<BracketLine index={index} line={row}>
				<td className="word">
					{name} <span className="under">{ROLES[role]}</span>
				</td>
				<td>
					<Figure of={(state) => planOnTable(state).brackets[index]?.fromLeftCorner} />
					<PlusMinus of={(plan) => plan.brackets[index]?.sd[0]} />
				</td>
				<td>
					<Figure of={(state) => planOnTable(state).brackets[index]?.fromRightCorner} />
					<PlusMinus of={(plan) => plan.brackets[index]?.sd[1]} />
				</td>
			</BracketLine>
			{chosen ? (
				<tr className="detail chosen" data-row="">
					<td colSpan={4}>
						<BracketPin bracket={index} />
					</td>
				</tr>
			) : null}
		</>
	);
}

const ROLES = {
	end: "at the end",
	bend: "beside a bend",
	joint: "at a joint",
	companion: "beside a joint",
	field: "between",
	pinned: "pinned",
} as const;

const HOLDS = ["bracket"] as const;
