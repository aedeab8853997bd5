import { type Job, problemLine, readJobText, serialiseJob } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";
import { replaceJob } from "./keeper.ts";

const EXTENSION = ".baywright.json";

/** The pickers come after the first load, and before anyone can ask: a browser opens one only straight after a click. */
const pickers = import("browser-fs-access");
// Said where they are asked for.
pickers.catch(() => undefined);

const KIND = { mimeTypes: ["application/json"], description: "Baywright job" };
const READINGS = { mimeTypes: ["text/csv"], description: "Readings" };

/** Lets the user pick a job file and puts it on the desk. */
export async function openJobFile(): Promise<void> {
	const picked = await attempt(pickers.then(({ fileOpen }) => fileOpen({ ...KIND, extensions: [".json"] })));
	if (picked !== null) await receiveFile(picked.value);
}

/** Puts a job file on the desk; a bad one shows its problems and leaves the desk as it is. */
export async function receiveFile(file: File): Promise<void> {
	const read = await textOf(file);
	const refuse = (lines: readonly string[]) => screen.getState().show({ kind: "problems", file: file.name, lines });
	if (!read.ok) {
		refuse([read.reason]);
		return;
	}
	const parsed = readJobText(read.text);
	if (parsed.ok) {
		await replaceJob(parsed.job, `open ${file.name}`);
		screen.getState().say(`Opened ${file.name}`);
	} else refuse(parsed.problems.map(problemLine));
}

/** Lets the user pick a file of readings and hands over its text; one that is no text shows why. */
export async function pickReadings(receive: (text: string, name: string) => void): Promise<void> {
	const picked = await attempt(pickers.then(({ fileOpen }) => fileOpen({ ...READINGS, extensions: [".csv"] })));
	if (picked === null) return;
	const { name } = picked.value;
	const read = await textOf(picked.value);
	if (read.ok) receive(read.text, name);
	else screen.getState().show({ kind: "problems", file: name, lines: [read.reason] });
}

/** Saves readings, written as CSV, to a file of the user's choice. */
export async function saveReadings(text: string): Promise<void> {
	const blob = new Blob([text], { type: "text/csv" });
	const name = fileName(desk.getState().job).replace(EXTENSION, "-readings.csv");
	const saved = await attempt(
		pickers.then(({ fileSave }) => fileSave(blob, { ...READINGS, extensions: [".csv"], fileName: name })),
	);
	if (saved !== null) screen.getState().say("Saved the readings to a file");
}

type FileText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

async function textOf(file: File): Promise<FileText> {
	let bytes: ArrayBuffer;
	try {
		bytes = await file.arrayBuffer();
	} catch {
		return { ok: false, reason: "It cannot be read: it is a folder, or it is no longer where it was." };
	}
	try {
		return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
	} catch {
		return { ok: false, reason: "It is not UTF-8 text, which it must be." };
	}
}

/** Saves the job as committed to a file of the user's choice. */
export async function saveJobFile(): Promise<void> {
	const { job } = desk.getState();
	const blob = new Blob([serialiseJob(job)], { type: "application/json" });
	const saved = await attempt(
		pickers.then(({ fileSave }) =>
			fileSave(blob, { ...KIND, extensions: [EXTENSION, ".json"], fileName: fileName(job) }),
		),
	);
	if (saved !== null) screen.getState().say("Saved to a file");
}

function fileName(job: Job): string {
	const plain = job.title
		.normalize("NFKD")
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, "-")
		.replace(/^-|-$/g, "");
	return `${plain === "" ? "bay" : plain}${EXTENSION}`;
}

/** Null where the user closed the picker; any other failure is said on screen. */
async function attempt<Value>(work: Promise<Value>): Promise<{ readonly value: Value } | null> {
	try {
		return { value: await work };
	} catch (cause) {
		if (!(cause instanceof DOMException && cause.name === "AbortError"))
			screen.getState().say(`That did not work: ${cause instanceof Error ? cause.message : String(cause)}`);
		return null;
	}
}
