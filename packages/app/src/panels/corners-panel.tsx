import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { bayOnTable, planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { useTaped } from "../fields/plus-minus.tsx";
import { BowRow } from "./bow-row.tsx";
import { type CornerGroup, cornerGroups, groupTitle } from "./corner-groups.ts";
import { CornerRow } from "./corner-row.tsx";
import { Section } from "./section.tsx";

/** Every corner and bow as a fitter marks it out, left to right; the corner selected has its radius to set. */
export function CornersPanel() {
	const count = useBay((bay) => Math.max(bay.corners.length - 2, 0));
	const isTaped = useTaped();
	const groups = useGroups();
	const bows = useBows();
	const sprung = usePlan((plan) => plan.corners.filter((corner) => corner.sprung).length);
	const bends = groups.reduce((sum, { kind }) => sum + (kind === "reverse" ? 2 : 1), 0) - sprung;
	return (
		<Section title="Corners" holds={HOLDS} gist={gistOf(bends, bows.length)}>
			{count === 0 && bows.length === 0 ? (
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
					{inOrder(groups, bows).map((item) =>
						typeof item === "number" ? (
							<BowRow key={`bow ${item}`} wall={item} />
						) : (
							<GroupRows key={item.corners[0]} group={item} />
						),
					)}
				</table>
			)}
			{isTaped && bends > 0 ? <p className="quiet">± at 95 %, along the wall face.</p> : null}
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

function gistOf(bends: number, bows: number): string {
	const made = bends === 1 ? "1 bend" : `${bends} bends`;
	return bows === 0 ? made : `${made}, ${bows === 1 ? "1 bow" : `${bows} bows`}`;
}

/** Groups of corners with the bowed walls among them: each before the corner at its right end. */
function inOrder(groups: readonly CornerGroup[], bows: readonly number[]): (CornerGroup | number)[] {
	const at = (item: CornerGroup | number) => (typeof item === "number" ? item + 0.5 : (item.corners[0] as number));
	return [...groups, ...bows].sort((a, b) => at(a) - at(b));
}

/** The bowed walls along which the track is bent. */
function useBows(): readonly number[] {
	const text = usePlan((plan) => plan.bows.map(({ wall }) => wall).join());
	return text === "" ? [] : text.split(",").map(Number);
}

/** Told apart by their text, so that the table is made anew only when corners come together or part. */
function useGroups(): readonly CornerGroup[] {
	const text = useDesk((state) =>
		JSON.stringify(cornerGroups(planOnTable(state), Math.max(bayOnTable(state).corners.length - 2, 0))),
	);
	return JSON.parse(text) as CornerGroup[];
}

const HOLDS = ["corner", "bend"] as const;
