import { emptyBay, newJob, plainBay, plainBays, plansOf } from "@baywright/editor";
import { type Bay, type BayPlan, type Job, serialiseJob, severityOf } from "@baywright/setout";
import { use } from "react";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { startJob, startTaping } from "../desk/start-taping.ts";
import { lower } from "../fields/lower.ts";
import { type Aside, jobsAside } from "../storage/keeper.ts";
import { examples } from "./examples.ts";
import { PlainCards } from "./plain-cards.tsx";
import { Thumbnail } from "./thumbnail.tsx";

let kept: Promise<readonly Aside[]> | null = null;
let keptFor: Job | null = null;

/** Jobs to begin with: a plain bay, the examples, and what was put aside before. */
export function Opening() {
	const aside = use(asideNow());
	return (
		<>
			<h2 className="opening-heading">Start a bay</h2>
			<PlainCards take={(bay, title) => begin(bay, title)} tape={() => startTaping(isSpare())} />
			<h2 className="opening-heading">Or look at an example</h2>
			<ul className="opening-list">
				{examples().map(({ file, job, plan }) => (
					<li key={file}>
						<Button className="opening-card" onPress={() => start(job, `open ${job.title}`)}>
							<Thumbnail plan={plan} />
							<Words title={job.title} note={noteOf(job, plan)} />
						</Button>
					</li>
				))}
			</ul>
			{aside.length === 0 ? null : (
				<>
					<h2 className="opening-heading">Put aside on this device</h2>
					<ul className="opening-list">
						{aside.map(({ job, at }) => (
							<li key={at}>
								<Button className="opening-card" onPress={() => start(job, `open ${job.title}`)}>
									<Thumbnail plan={plansOf(job)[0] as BayPlan} />
									<Words title={job.title === "" ? "Untitled job" : job.title} note={`Put aside ${WHEN.format(at)}`} />
								</Button>
							</li>
						))}
					</ul>
				</>
			)}
		</>
	);
}

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

/** Loaded anew whenever another job lies on the desk: what was put aside has then changed. */
function asideNow(): Promise<readonly Aside[]> {
	const { job } = desk.getState();
	if (kept === null || keptFor !== job) {
		keptFor = job;
		kept = jobsAside();
	}
	return kept;
}

function begin(bay: Bay, title: string): void {
	start(newJob(bay), `start from ${lower(title)}`);
}

function start(job: Job, label: string): void {
	startJob(job, label, isSpare());
}

/** A plain bay or an example that nobody has changed need not be kept: it is here anyway. */
function isSpare(): boolean {
	const now = serialiseJob(desk.getState().job);
	const plain = [emptyBay(), ...plainBays.map(({ id }) => plainBay(id))].map(newJob);
	return [...plain, ...examples().map((example) => example.job)].some((known) => serialiseJob(known) === now);
}

function noteOf({ notes }: Job, plan: BayPlan): string {
	const note = notes.split(/\n|(?<=[.!?])\s/)[0]?.trim() ?? "";
	if (note !== "") return note;
	const refused = plan.findings.some((finding) => severityOf(finding.code) === "refusal");
	return refused ? "Cannot be fitted as it stands." : `${plan.corners.length} bends.`;
}

function Words({ title, note }: { readonly title: string; readonly note: string }) {
	return (
		<span className="opening-words">
			<span className="opening-title">{title}</span>
			<span className="opening-note">{note}</span>
		</span>
	);
}
