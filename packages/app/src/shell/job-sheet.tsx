import { Button } from "react-aria-components";
import { screen, setTheme, useScreen } from "../desk/screen.ts";
import { Choice } from "../fields/choice.tsx";
import { RegionPick } from "../panels/region-pick.tsx";
import { JobActions } from "./job-actions.tsx";
import { UnitChoice } from "./unit-choice.tsx";

/** On a phone or a tablet, all that is about the job and does not fit the header. */
export function JobSheet() {
	const theme = useScreen((state) => state.theme);
	return (
		<div className="job-sheet">
			<JobActions />
			<div className="pair">
				{SHEETS.map(([kind, word]) => (
					<Button key={kind} className="button" onPress={() => screen.getState().show({ kind })}>
						{word}
					</Button>
				))}
			</div>
			<UnitChoice labelled />
			<RegionPick />
			<Choice label="Paper" value={theme} options={PAPERS} choose={setTheme} />
		</div>
	);
}

const SHEETS = [
	["bays", "Bays of the job"],
	["examples", "Examples"],
	["commands", "All commands"],
	["keys", "Keys"],
] as const;

const PAPERS = [
	["light", "light"],
	["dark", "dark"],
	["system", "as the system"],
] as const;
