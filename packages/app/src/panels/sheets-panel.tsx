import { useState } from "react";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { saveJobFile } from "../storage/job-file.ts";
import { planText } from "./plan-text.ts";
import { PrintedPlan } from "./printed-plan.tsx";
import { Section } from "./section.tsx";

/** What can be taken away now, and which sheets are still to come. */
export function SheetsPanel() {
	const [shown, setShown] = useState(false);
	const fits = usePlan((plan) => plan.path !== null);
	return (
		<>
			<Section title="The plan in words" gist="to print">
				<p className="quiet">
					{fits
						? "Cut lengths, every mark from either cut end, brackets as they are taped, corners, what to buy, and what to look out for."
						: "The track does not fit yet: the page says what stands in its way, and holds nothing to cut by."}
				</p>
				<div className="pair">
					<Button className="button button-main" onPress={() => print()}>
						Print
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
			<Section title="Sheets to come">
				<ul className="to-come">
					<li>Fitting sheet: the plan to scale, in the order of the work</li>
					<li>Bend template at true size, to bend the track to</li>
					<li>Strip sheet, order, workroom sheet, hand-over sheet</li>
					<li>Blank survey sheet</li>
				</ul>
				<p className="quiet">Not made yet. Until then work from the page in words and from the strip on screen.</p>
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
