import { editBay } from "../desk/edit-bay.ts";
import { useBay } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { LengthField } from "../fields/length-field.tsx";

/** How all curtains of the bay are made up: how they meet and return, and what is turned in. */
export function MakeUpFields() {
	const makeUp = useBay((bay) => bay.makeUp);
	const set =
		<Key extends keyof typeof makeUp>(key: Key, label: string) =>
		(value: (typeof makeUp)[Key]) =>
			editBay(label, (bay) => ({ ...bay, makeUp: { ...bay.makeUp, [key]: value } }));
	return (
		<div className="make-up">
			<h3 className="sub-heading">Making up</h3>
			<div className="field-three">
				<LengthField label="Overlap" value={makeUp.overlap} least={0} commit={set("overlap", "overlap")} />
				<LengthField label="Returns" value={makeUp.returns} least={0} commit={set("returns", "returns")} />
				<LengthField label="Ease" value={makeUp.ease} least={0} commit={set("ease", "ease")} />
				<LengthField label="Sides" value={makeUp.sideTurning} least={0} commit={set("sideTurning", "side turnings")} />
				<LengthField
					label="Heading"
					value={makeUp.headingTurning}
					least={0}
					commit={set("headingTurning", "heading turning")}
				/>
				<LengthField label="Hem" value={makeUp.hemTurning} least={0} commit={set("hemTurning", "hem turning")} />
			</div>
			<p className="quiet">The overlap is the whole crossing, half to each. Sides, heading and hem are turned in.</p>
			<Choice label="Widths" value={makeUp.widths} options={WIDTHS} choose={set("widths", "widths of cloth")} />
		</div>
	);
}

const WIDTHS = [
	["whole", "whole"],
	["half", "in halves"],
] as const;
