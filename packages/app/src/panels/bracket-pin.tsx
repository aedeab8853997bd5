import { pinOf, releasePin, setPin } from "@baywright/editor";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, planOnTable, usePlan } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { BracketMeasured } from "../phone/bracket-measured.tsx";
import { useMarks } from "../phone/use-marks.ts";

/** A bracket held where the user wants it, or left to the rule. Typing a place pins it there. */
export function BracketPin({ bracket }: { readonly bracket: number }) {
	const pin = useDesk((state) => pinOf(bayOnTable(state), planOnTable(state), bracket));
	const wall = usePlan((plan) => plan.brackets[bracket]?.wall ?? 0);
	const left = usePlan((plan) => plan.brackets[bracket]?.fromLeftCorner ?? 0);
	const right = usePlan((plan) => plan.brackets[bracket]?.fromRightCorner ?? 0);
	// Held without a pin of the user's own: it is up, and was measured there.
	const isFitted = usePlan((plan) => plan.brackets[bracket]?.role === "pinned") && pin === null;
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
			{isFitted ? null : pin === null ? (
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
			<p className="quiet">{isFitted ? HOLDS.fitted : pin === null ? HOLDS.rule : HOLDS.pin}</p>
			<AsFitted bracket={bracket} />
		</div>
	);
}

const HOLDS = {
	fitted: "Held where it was measured: the others are placed round it.",
	rule: "Placed by the rule: typing a place pins it there.",
	pin: "Pinned: the others are placed round it.",
} as const;

/** What was measured of the bracket once it was up. */
function AsFitted({ bracket }: { readonly bracket: number }) {
	const { marks, ticks } = useMarks();
	const mark = marks.find((each) => each.kind === "bracket" && each.number === bracket + 1);
	if (mark?.kind !== "bracket") return null;
	const fitted = ticks.fitted.get(mark.name) ?? null;
	const select = (index: number) => desk.getState().select({ kind: "bracket", index });
	return <BracketMeasured mark={mark} marks={marks} fitted={fitted} onPlaced={select} />;
}
