import type { Bay } from "@baywright/setout";
import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay, usePlan } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { Pick } from "../fields/pick.tsx";
import { Section } from "./section.tsx";

/** Heights above the floor. Sills and heads stand with their openings. */
export function HeightsPanel() {
	const bay = useDesk((state) => state.bay);
	const ceiling = useBay((on) => on.ceiling);
	const surface = useBay((on) => on.ceilingSurface);
	const height = useBay((on) => on.track.height);
	const worked = usePlan((plan) => plan.height);
	const { change } = desk.getState();
	return (
		<Section title="Heights" gist={<HeightGist />}>
			<div className="field-pair">
				<LengthField
					label="Track"
					value={height}
					instead={worked}
					least={0}
					commit={(mm) => change("height of the track", setTrack(bay, "height", mm))}
					clear={() => change("height of the track as the openings say", setTrack(bay, "height", null))}
				/>
				<LengthField
					label="Ceiling"
					value={ceiling}
					least={1}
					commit={(mm) => editBay("height of the ceiling", (on) => ({ ...on, ceiling: mm }))}
					clear={() => editBay("ceiling not measured", (on) => ({ ...on, ceiling: null }))}
				/>
			</div>
			<Pick
				label="The ceiling is"
				value={surface}
				options={SURFACES}
				choose={(to) => editBay("what the ceiling is", (on) => ({ ...on, ceilingSurface: to }))}
			/>
			<p className="quiet">
				Above the floor. Track empty: 100 mm above the highest opening. Sills and heads are typed with their openings.
			</p>
		</Section>
	);
}

const SURFACES: readonly (readonly [Bay["ceilingSurface"], string])[] = [
	["unknown", "not known"],
	["plasterboard", "plasterboard"],
	["joists", "joists"],
	["concrete", "concrete"],
	["timber", "timber"],
];

function HeightGist() {
	const known = usePlan((plan) => plan.height !== null);
	return known ? "track known" : "track not known";
}
