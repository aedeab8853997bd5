import type { Job } from "@baywright/setout";
import { desk, useDesk } from "../desk/desk.ts";
import { NumberField } from "../fields/number-field.tsx";
import { Section } from "./section.tsx";

/** How much of what runs short is ordered on top, for the whole job. */
export function SparePanel() {
	const spare = useDesk((state) => state.shown.spare);
	const { change } = desk.getState();
	return (
		<Section title="Spare" gist="in %" open={false}>
			<div className="field-pair">
				{KINDS.map(([kind, words]) => (
					<NumberField
						key={kind}
						label={words}
						value={spare[kind]}
						least={0}
						greatest={100}
						commit={(percent) =>
							change(`spare ${words.toLowerCase()}`, [{ op: "replace", path: `/spare/${kind}`, value: percent }])
						}
					/>
				))}
			</div>
			<p className="quiet">In hundredths of what all bays need, rounded up to whole parts or tenths of a metre.</p>
		</Section>
	);
}

const KINDS: readonly (readonly [keyof Job["spare"], string])[] = [
	["brackets", "Brackets"],
	["gliders", "Gliders and hooks"],
	["fixings", "Screws and plugs"],
	["cord", "Cord"],
	["cloth", "Cloth and lining"],
];
