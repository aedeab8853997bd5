import { foundText, type Problem, problemLine, readJobText, serialiseJob } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";
import { replaceJob } from "./keeper.ts";
import { plainName } from "./plain-name.ts";

const EXTENSION = ".baywright.json";

/** The pickers come after the first load, and before anyone can ask: a browser opens one only straight after a click. */
const pickers = import("browser-fs-access");
// Said where they are asked for.
pickers.catch(() => undefined);

interface Kind {
	readonly mimeTypes: [string];
	readonly description: string;
}

const KIND: Kind = { mimeTypes: ["application/json"], description: "Baywright job" };
const DRAWING = { description: "Drawing, DXF or SVG", extensions: [".dxf", ".svg"] };
const READINGS: Kind = { mimeTypes: ["text/csv"], description: "Readings" };
const ORDER: Kind = { mimeTypes: ["text/csv"], description: "Order" };

/** Lets the user pick a job file and puts it on the desk. */
export async function openJobFile(): Promise<void> {
	const picked = await attempt(pickers.then(({ fileOpen }) => fileOpen({ ...KIND, extensions: [".json"] })));
	if (picked !== null) await receiveFile(picked.value);
}

/** Lets the user pick a drawing and shows what walls it has. */
export async function pickDrawing(): Promise<void> {
	const picked = await attempt(pickers.then(({ fileOpen }) => fileOpen(DRAWING)));
	if (picked !== null) await receiveDrawing(picked.value);
}

async function receiveDrawing(file: File): Promise<void> {
	const bytes = await bytesOf(file);
	if (bytes !== null) screen.getState().show({ kind: "from-drawing", file: file.name, bytes: new Uint8Array(bytes) });
}

/** What a drawing's file is called; of a DWG it is then said that it cannot be read, and what can. */
const DRAWING_NAME = /\.(?:dxf|svg|dwg)$/i;

/** A job file may have none, but there is always one on the table: the desk would have nothing to show, now and after every reload. */
const NO_BAYS: Problem = { path: "bays", found: foundText([]), allowed: "one bay or more" };

/** Puts a job file on the desk, or shows the walls of a drawing; a bad job shows its problems and leaves the desk as it is. */
export async function receiveFile(file: File): Promise<void> {
	if (DRAWING_NAME.test(file.name)) return receiveDrawing(file);
	const text = await textOf(file);
	if (text === null) return;
	const parsed = readJobText(text);
	if (parsed.ok && parsed.job.bays.length === 0) return refuseFile(file.name, [problemLine(NO_BAYS)]);
	if (parsed.ok) {
		await replaceJob(parsed.job, `open ${file.name}`);
		screen.getState().say(`Opened ${file.name}`);
	} else refuseFile(file.name, parsed.problems.map(problemLine));
}

/** Lets the user pick a file of readings and hands over its text; one that is no text shows why. */
export async function pickReadings(receive: (text: string, name: string) => void): Promise<void> {
	const picked = await attempt(pickers.then(({ fileOpen }) => fileOpen({ ...READINGS, extensions: [".csv"] })));
	if (picked === null) return;
	const text = await textOf(picked.value);
	if (text !== null) receive(text, picked.value.name);
}

/** Saves readings, written as CSV, to a file of the user's choice. */
export async function saveReadings(text: string): Promise<void> {
	await save(text, READINGS, [".csv"], "-readings.csv", "Saved the readings to a file");
}

/** Saves the order, written as CSV, to a file of the user's choice. */
export async function saveOrder(text: string): Promise<void> {
	await save(text, ORDER, [".csv"], "-order.csv", "Saved the order to a file");
}

/** Saves something made of the job to a file of the user's choice; `ending` comes after the job's title. False where it was not saved. */
export async function saveMade(blob: Blob, ending: string, extension: string): Promise<boolean> {
	const fileName = `${plainName(desk.getState().job.title)}-${ending}${extension}`;
	// A browser opens its picker only soon after a click; where making it took too long, it is saved in the plain way.
	if (navigator.userActivation?.isActive === false) {
		download(blob, fileName);
		return true;
	}
	const kind = { mimeTypes: [blob.type], description: "Sheets", extensions: [extension], fileName };
	return (await attempt(pickers.then(({ fileSave }) => fileSave(blob, kind)))) !== null;
}

/** Saves a file where the browser puts what is fetched. */
export function download(blob: Blob, fileName: string): void {
	const link = document.createElement("a");
	link.href = URL.createObjectURL(blob);
	link.download = fileName;
	link.click();
	// The browser has to come round to reading it first.
	setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Shows why a file will not do; the desk stays as it is. */
export function refuseFile(file: string, lines: readonly string[]): void {
	screen.getState().show({ kind: "problems", file, lines });
}

/** Null where it is no text, which is then shown. */
async function textOf(file: File): Promise<string | null> {
	const refuse = (reason: string) => {
		refuseFile(file.name, [reason]);
		return null;
	};
	const bytes = await bytesOf(file);
	if (bytes === null) return null;
	try {
		return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
	} catch {
		return refuse("It is not UTF-8 text, which it must be.");
	}
}

/** Null where it cannot be read, which is then shown. */
async function bytesOf(file: File): Promise<ArrayBuffer | null> {
	try {
		return await file.arrayBuffer();
	} catch {
		refuseFile(file.name, ["It cannot be read: it is a folder, or it is no longer where it was."]);
		return null;
	}
}

/** Saves the job as committed to a file of the user's choice. */
export async function saveJobFile(): Promise<void> {
	await save(serialiseJob(desk.getState().job), KIND, [EXTENSION, ".json"], EXTENSION, "Saved to a file");
}

async function save(text: string, kind: Kind, extensions: string[], ending: string, said: string): Promise<void> {
	const blob = new Blob([text], { type: kind.mimeTypes[0] });
	const fileName = `${plainName(desk.getState().job.title)}${ending}`;
	const saved = await attempt(pickers.then(({ fileSave }) => fileSave(blob, { ...kind, extensions, fileName })));
	if (saved !== null) screen.getState().say(said);
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
