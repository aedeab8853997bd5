import { type Job, parseJob, problemLine } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { LEAVING } from "../desk/leaving.ts";
import { screen, toTop } from "../desk/screen.ts";
import { rememberBayAtHand, toBayAtHand } from "./bay-at-hand.ts";
import { openShelf, type Shelf, type Stored } from "./shelf.ts";
import { listenToTabs, type Tabs } from "./tabs.ts";

/** Long enough to pass over a burst of edits, short enough that a crash costs nothing worth telling. */
const PAUSE_MS = 400;

/** Longest wait for the database on opening, ms. */
const PATIENCE_MS = 3000;

let shelf: Shelf | null = null;
let tabs: Tabs | null = null;
/** The revision that this tab last read or wrote. */
let known = 0;
/** The job that the shelf holds, as far as this tab knows. */
let stored: Job | null = null;
let timer: ReturnType<typeof setTimeout> | undefined;
let writing = false;

/** Brings back the job of the last visit, then stores every committed change a moment after it is made. */
export async function keepJob(): Promise<void> {
	try {
		shelf = await inTime(openShelf());
		const found = await shelf.take();
		if (found === null) screen.setState({ started: false });
		else await bringBack(found);
	} catch (cause) {
		trouble(cause);
		screen.setState({ started: false });
	}
	stored ??= desk.getState().job;
	tabs = listenToTabs({
		onCompany: (elsewhere) => screen.setState({ elsewhere }),
		onStored: (revision) => {
			if (revision > known) screen.setState({ overtaken: true });
		},
	});
	rememberBayAtHand();
	desk.subscribe((now, before) => {
		if (now.job !== before.job) soon();
	});
	document.addEventListener("visibilitychange", () => {
		if (document.visibilityState === "hidden") void write();
	});
	for (const event of LEAVING) addEventListener(event, () => void write(!screen.getState().elsewhere));
}

/** The other tab's later job gives way to this one. */
export async function keepMine(): Promise<void> {
	try {
		known = (await shelf?.take())?.revision ?? known;
	} catch (cause) {
		trouble(cause);
		return;
	}
	screen.setState({ overtaken: false });
	stored = null;
	await write();
}

/** The other tab's later job comes onto this desk; the one that lay here is one undo away. */
export async function takeTheirs(): Promise<void> {
	try {
		const found = await shelf?.take();
		const parsed = found ? parseJob(found.job) : null;
		if (!found || !parsed?.ok) return;
		clearTimeout(timer);
		desk.getState().open(parsed.job, "take the other tab’s job");
		clearTimeout(timer);
		known = found.revision;
		stored = desk.getState().job;
		desk.getState().mark("saved");
		screen.setState({ overtaken: false });
		toTop();
	} catch (cause) {
		trouble(cause);
	}
}

/** A job put aside when another took its place, and when. */
export interface Aside {
	readonly job: Job;
	/** Milliseconds since 1970. */
	readonly at: number;
}

/** Puts another job on the desk. The one that lies there is kept aside in the browser unless it is `spare`. */
export async function replaceJob(job: Job, label: string, spare = false): Promise<void> {
	const before = desk.getState().job;
	if (screen.getState().started && !spare) {
		try {
			await shelf?.putAside(before);
		} catch (cause) {
			trouble(cause);
		}
	}
	if (screen.getState().started) desk.getState().open(job, label);
	else {
		screen.setState({ started: true });
		desk.getState().restore(job);
	}
	screen.setState({ sheet: null });
	toTop();
}

/** The jobs put aside, the latest first; those that this version cannot read are left out. */
export async function jobsAside(): Promise<readonly Aside[]> {
	try {
		return ((await shelf?.aside()) ?? []).flatMap(({ job, at }) => {
			const parsed = parseJob(job);
			return parsed.ok ? [{ job: parsed.job, at }] : [];
		});
	} catch (cause) {
		trouble(cause);
		return [];
	}
}

async function bringBack(found: Stored): Promise<void> {
	known = found.revision;
	const parsed = parseJob(found.job);
	if (parsed.ok) {
		desk.getState().restore(parsed.job);
		toBayAtHand();
		stored = desk.getState().job;
		return;
	}
	await shelf?.putAside(found.job);
	screen.setState({
		started: false,
		sheet: { kind: "problems", file: "The job kept from your last visit", lines: parsed.problems.map(problemLine) },
	});
}

/** A database that does not answer must not keep the page empty. */
function inTime<Value>(work: Promise<Value>): Promise<Value> {
	const late = new Promise<never>((_, reject) => {
		setTimeout(() => reject(new Error("the browser's database does not answer")), PATIENCE_MS);
	});
	return Promise.race([work, late]);
}

function soon(): void {
	if (desk.getState().job === stored) return;
	const held = shelf === null || screen.getState().overtaken;
	desk.getState().mark(held ? "failed" : "saving");
	clearTimeout(timer);
	timer = setTimeout(() => void write(), PAUSE_MS);
}

/** `atOnce`: without asking first whether another tab has stored a later job. */
async function write(atOnce = false): Promise<void> {
	clearTimeout(timer);
	const { job } = desk.getState();
	if (
		shelf === null ||
		(writing && !atOnce) ||
		job === stored ||
		screen.getState().overtaken ||
		!screen.getState().started
	)
		return;
	writing = true;
	try {
		const put = await (atOnce ? shelf.putAtOnce(job, known) : shelf.put(job, known));
		if (put.kind === "overtaken") screen.setState({ overtaken: true });
		else {
			known = put.revision;
			stored = job;
			tabs?.tellStored(known);
			if (desk.getState().job === job) desk.getState().mark("saved");
			screen.setState({ storageTrouble: "" });
		}
	} catch (cause) {
		trouble(cause);
	} finally {
		writing = false;
	}
	if (desk.getState().saved !== "failed" && desk.getState().job !== stored) soon();
}

function trouble(cause: unknown): void {
	const full = cause instanceof DOMException && cause.name === "QuotaExceededError";
	desk.getState().mark("failed");
	screen.setState({
		storageTrouble: full
			? "The browser has no room left to keep this job. Your work is still here: save it to a file."
			: "The browser will not keep this job. Your work is still here: save it to a file.",
	});
}
