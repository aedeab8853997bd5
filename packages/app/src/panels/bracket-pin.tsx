import { pinOf, releasePin, setPin } from "@baywright/editor";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, planOnTable, usePlan } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";

/** A bracket held where the user wants it, or left to the rule. Typing a place pins it there. */
export function BracketPin({ bracket }: { readonly bracket: number }) {
	const pin = useDesk((state) => pinOf(bayOnTable(state), planOnTable(state), bracket));
	const wall = usePlan((plan) => plan.brackets[bracket]?.wall ?? 0);
	const left = usePlan((plan) => plan.brackets[bracket]?.fromLeftCorner ?? 0);
	const right = usePlan((plan) => plan.brackets[bracket]?.fromRightCorner ?? 0);
	const name = `bracket ${bracket + 1}`;
	const put = (at: number) => editBay(`pin ${name}`, (bay) => setPin(bay, pin, { wall, at }));
	return (
		<div className="pin-of">
			<LengthField label="From left corner" value={left} least={0} greatest={left + right} commit={put} />
			<LengthField
				label="From right corner"
				value={right}
				least={0}
				greatest={left + right}
				commit={(mm) => put(left + right - mm)}
			/>
			{pin === null ? (
				<Button className="button" onPress={() => put(Math.round(left))}>
					Pin it here
				</Button>
			) : (
				<Button
					className="button"
					onPress={() => {
						editBay(`release ${name}`, (bay) => releasePin(bay, pin));
						desk.getState().select(null);
					}}
				>
					Release the pin
				</Button>
			)}
			<p className="quiet">
				{pin === null ? "Placed by the rule: typing a place pins it there." : "Pinned: the others are placed round it."}
			</p>
		</div>
	);
}
