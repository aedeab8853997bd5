import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { bayOnTable, planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { type CornerGroup, cornerGroups, groupTitle } from "./corner-groups.ts";
import { CornerRow } from "./corner-row.tsx";
import { Section } from "./section.tsx";

/** Every corner as a fitter marks it out; the one selected has its radius to set. */
export function CornersPanel() {
	const count = useBay((bay) => Math.max(bay.corners.length - 2, 0));
	const groups = useGroups();
	const sprung = usePlan((plan) => plan.corners.filter((corner) => corner.sprung).length);
	const bends = groups.reduce((sum, { kind }) => sum + (kind === "reverse" ? 2 : 1), 0) - sprung;
	return (
		<Section title="Corners" gist={bends === 1 ? "1 bend" : `${bends} bends`}>
			{count === 0 ? (
				<p className="quiet">A straight wall: nothing to bend.</p>
			) : (
				<table className="figures corners">
					<thead>
						<tr>
							<th scope="col">
								<span className="hidden">corner</span>
							</th>
							<th scope="col">angle</th>
							<th scope="col">radius</th>
							<th scope="col">set-back</th>
							<th scope="col">sweep</th>
							<th scope="col">gap</th>
						</tr>
					</thead>
					{groups.map((group) => (
						<GroupRows key={group.corners[0]} group={group} />
					))}
				</table>
			)}
			<Button className="button" onPress={() => screen.getState().show({ kind: "corner-card", corner: null })}>
				Corner card
			</Button>
		</Section>
	);
}

function GroupRows({ group }: { readonly group: CornerGroup }) {
	const { kind, corners } = group;
	const first = corners[0] as number;
	if (kind === "bend")
		return (
			<tbody>
				<CornerRow corner={first} shares={false} />
			</tbody>
		);
	return (
		<tbody className={kind === "bridge" ? "of-one" : "of-one reverse"}>
			<tr className="together">
				<th scope="rowgroup" colSpan={6}>
					{groupTitle(group)}
				</th>
			</tr>
			{corners.map((corner) => (
				<CornerRow key={corner} corner={corner} shares={kind === "bridge" && corner !== first} />
			))}
		</tbody>
	);
}

/** Told apart by their text, so that the table is made anew only when corners come together or part. */
function useGroups(): readonly CornerGroup[] {
	const text = useDesk((state) =>
		JSON.stringify(cornerGroups(planOnTable(state), Math.max(bayOnTable(state).corners.length - 2, 0))),
	);
	return JSON.parse(text) as CornerGroup[];
}
