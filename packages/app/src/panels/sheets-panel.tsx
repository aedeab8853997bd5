import { useState } from "react";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { PrinterFields } from "../sheets/printer-fields.tsx";
import { SheetsSection } from "../sheets/sheets-section.tsx";
import { useNarrow } from "../shell/media.ts";
import { saveJobFile } from "../storage/job-file.ts";
import { planText } from "./plan-text.ts";
import { PrintedPlan } from "./printed-plan.tsx";
import { Section } from "./section.tsx";

/** Everything that can be taken away: the sheets, the plan in words, the job file. */
export function SheetsPanel() {
	const narrow = useNarrow();
	const [shown, setShown] = useState(false);
	const fits = usePlan((plan) => plan.path !== null);
	return (
		<>
			{/* On a phone folded away: there it stands under a plan that is worked on, and sheets are only made where they are in sight. */}
			<Section title="Sheets" gist="to print, to save" open={!narrow}>
				<SheetsSection />
			</Section>
			<PrinterFields />
			<Section title="The plan in words" gist="to print">
				<p className="quiet">
					{fits
						? "Cut lengths, every mark from either cut end, brackets as they are taped, corners, what to buy, and what to look out for."
						: "The track does not fit yet: the page says what stands in its way, and holds nothing to cut by."}
				</p>
				<div className="pair">
					<Button className="button" onPress={() => print()}>
						Print the words
					</Button>
					<Button className="button" onPress={() => void copyText()}>
						Copy as text
					</Button>
					<Button className="button" aria-expanded={shown} onPress={() => setShown(!shown)}>
						{shown ? "Fold away" : "Read it here"}
					</Button>
				</div>
				<PrintedPlan shown={shown} />
			</Section>
			<Section title="The job file" gist="to keep">
				<p className="quiet">Everything about the job, to open again here, on another device or with the command.</p>
				<Button className="button" onPress={() => void saveJobFile()}>
					Save the job file
				</Button>
			</Section>
		</>
	);
}

async function copyText(): Promise<void> {
	const { job, bay, plans } = desk.getState();
	try {
		await navigator.clipboard.writeText(planText(job, bay, plans));
		screen.getState().say("Copied as text");
	} catch {
		screen.getState().say("The browser did not allow copying: read it here and copy it from there.");
	}
}
