import { setTheme, useScreen } from "../desk/screen.ts";
import { Choice } from "../fields/choice.tsx";
import { JobActions } from "./job-actions.tsx";
import { UnitChoice } from "./unit-choice.tsx";

/** On a phone, all that is about the job and does not fit its header. */
export function JobSheet() {
	const theme = useScreen((state) => state.theme);
	return (
		<div className="job-sheet">
			<JobActions />
			<UnitChoice labelled />
			<Choice label="Paper" value={theme} options={PAPERS} choose={setTheme} />
		</div>
	);
}

const PAPERS = [
	["light", "light"],
	["dark", "dark"],
	["system", "as the system"],
] as const;
