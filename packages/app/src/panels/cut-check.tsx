import { setCut } from "@baywright/editor";
import { cutAnswer, sawnAtLeft } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { usePlanPart } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";

/** What each piece was cut to, and whether it still fits the bay as it is by now. */
export function CutCheck() {
	const names = usePlanPart((plan) => plan.pieces.map(({ name }) => name));
	const cut = usePlanPart((plan) => plan.fitted?.cut ?? []);
	const unit = useDesk((state) => state.shown.display.length);
	return names.map((name) => {
		const done = cut.find(({ piece }) => piece === name);
		const set = (length: number | null) => {
			const sawn = done === undefined || length === null ? 0 : sawnAtLeft(done, length);
			return editBay(`piece ${name} as cut`, (bay) => setCut(bay, name, length, sawn));
		};
		return (
			<div key={name} className="cut-check">
				<LengthField
					label={`Piece ${name} was cut to`}
					value={done?.cut ?? null}
					least={1}
					commit={set}
					clear={() => set(null)}
				/>
				<p role="status">{done === undefined ? "" : cutAnswer(done, unit)}</p>
			</div>
		);
	});
}
