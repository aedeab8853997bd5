import { type BayPlan, type Job, serialiseJob, severityOf } from "@baywright/setout";
import { use } from "react";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { plainJob } from "../desk/plain-job.ts";
import { plansOf } from "../desk/plans.ts";
import { type Aside, jobsAside, replaceJob } from "../storage/keeper.ts";
import { type Example, loadExamples } from "./examples.ts";
import { Thumbnail } from "./thumbnail.tsx";

interface Stock {
	readonly examples: readonly Example[];
	readonly aside: readonly Aside[];
}

let stock: Promise<Stock> | null = null;
let stockFor: Job | null = null;

/** Jobs to begin with: a plain bay, the examples, and what was put aside before. */
export function Opening() {
	const { examples, aside } = use(stockNow());
	return (
		<>
			<ul className="opening-list">
				<li>
					<Button className="opening-card" onPress={() => start(plainJob(), "start from a plain square bay", examples)}>
						<PlainSketch />
						<Words title="A plain square bay" note="Start here with your own: drag its corners or type its runs." />
					</Button>
				</li>
				{examples.map(({ file, job, plan }) => (
					<li key={file}>
						<Button className="opening-card" onPress={() => start(job, `open ${job.title}`, examples)}>
							<Thumbnail plan={plan} />
							<Words title={job.title} note={noteOf(job, plan)} />
						</Button>
					</li>
				))}
			</ul>
			{aside.length === 0 ? null : (
				<>
					<h3 className="opening-heading">Put aside on this device</h3>
					<ul className="opening-list">
						{aside.map(({ job, at }) => (
							<li key={at}>
								<Button className="opening-card" onPress={() => start(job, `open ${job.title}`, examples)}>
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
function stockNow(): Promise<Stock> {
	const { job } = desk.getState();
	if (stock === null || stockFor !== job) {
		stockFor = job;
		stock = Promise.all([loadExamples(), jobsAside()]).then(([examples, aside]) => ({ examples, aside }));
	}
	return stock;
}

/** An example that nobody has changed need not be kept: it is here anyway. */
function start(job: Job, label: string, examples: readonly Example[]): void {
	const now = serialiseJob(desk.getState().job);
	const spare = [plainJob(), ...examples.map((example) => example.job)].some((known) => serialiseJob(known) === now);
	void replaceJob(job, label, spare);
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

function PlainSketch() {
	return (
		<svg className="thumbnail" viewBox="0 0 240 132" aria-hidden="true">
			<path d="M40 110V26H200V110" fill="none" stroke="var(--wall)" strokeWidth="1.6" strokeDasharray="7 5" />
			<path d="M48 110V54Q48 34 68 34H172Q192 34 192 54V110" fill="none" stroke="var(--track)" strokeWidth="1.8" />
			<path d="M120 62v26M107 75h26" stroke="var(--ink)" strokeWidth="2" />
		</svg>
	);
}
