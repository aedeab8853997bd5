import type { Format, SheetName } from "@baywright/sheets";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { desk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";
import { download, saveMade } from "../storage/job-file.ts";
import { plainName } from "../storage/plain-name.ts";
import { orderOf } from "./maker.ts";
import type { Answer, Far, MadeFile } from "./making.ts";
import { startWorker } from "./start-worker.ts";
import { wishes } from "./wishes.ts";

/** Files that are being made to save or to print: one at a time, in a worker of their own. */
interface Saving {
	/** How far it has come; null while nothing is being made. */
	readonly far: Far | null;
	readonly trouble: string;
	/** A PDF that the browser did not let open by itself: to be opened by a press. */
	readonly ready: string | null;
}

const saving = createStore<Saving>()(() => ({ far: null, trouble: "", ready: null }));

export const useSaving = <Part>(select: (saving: Saving) => Part): Part => useStore(saving, select);

const TYPES: Readonly<Record<MadeFile["extension"], string>> = {
	".pdf": "application/pdf",
	".svg": "image/svg+xml",
	".dxf": "image/vnd.dxf",
	".csv": "text/csv",
	".zip": "application/zip",
};

const blobOf = ({ bytes, extension }: MadeFile): Blob => new Blob([bytes], { type: TYPES[extension] });

/** Makes the sheets into a file and lets the user save it. */
export async function saveSheets(only: readonly SheetName[], format: Format): Promise<void> {
	const file = await madeFile(only, format);
	if (file === null) return;
	const { ending, extension } = file;
	if (await saveMade(blobOf(file), ending, extension)) screen.getState().say(`Saved the ${WORDS[format]} to a file`);
}

const WORDS: Readonly<Record<Format, string>> = {
	pdf: "sheets",
	svg: "pages as SVG",
	dxf: "drawings as DXF",
	csv: "tables as CSV",
};

/** Opens the sheets as one PDF in a tab of its own, from where the browser prints it; where it cannot show a PDF, it is fetched for what can. */
export async function openSheets(only: readonly SheetName[]): Promise<void> {
	const shows = navigator.pdfViewerEnabled !== false;
	// A browser opens a tab only straight after a press, and the sheets take a moment.
	const tab = shows ? window.open("", "_blank") : null;
	if (tab !== null) {
		tab.document.title = "Sheets";
		tab.document.body.textContent = "The sheets are being drawn. One moment…";
	}
	const file = await madeFile(only, "pdf");
	if (file === null) {
		tab?.close();
		return;
	}
	const blob = blobOf(file);
	if (!shows) download(blob, `${plainName(desk.getState().job.title)}-${file.ending}.pdf`);
	else if (tab === null || tab.closed) saving.setState({ ready: URL.createObjectURL(blob) });
	else tab.location.replace(URL.createObjectURL(blob));
}

let cancel: (() => void) | null = null;

export const cancelSaving = (): void => cancel?.();

/** Null where it was called off or could not be made, which is then told. */
function madeFile(only: readonly SheetName[], format: Format): Promise<MadeFile | null> {
	cancel?.();
	const { ready } = saving.getState();
	if (ready !== null) URL.revokeObjectURL(ready);
	saving.setState({ far: { done: 0, of: 1, doing: "the plan" }, trouble: "", ready: null });
	const order = orderOf(desk.getState(), wishes.getState());
	return new Promise((resolve) => {
		const end = (file: MadeFile | null, trouble = "") => {
			worker.terminate();
			cancel = null;
			saving.setState({ far: null, trouble });
			resolve(file);
		};
		const receive = (answer: Answer) => {
			if (answer.kind === "far") saving.setState({ far: answer.far });
			else if (answer.kind === "written") end(answer.file);
			else if (answer.kind === "failed") end(null, `Nothing was saved: ${answer.why}.`);
		};
		const worker = startWorker(receive, () =>
			end(null, "Nothing was saved: the program that makes the file could not be fetched. Reload the page."),
		);
		cancel = () => end(null);
		worker.postMessage({ kind: "write", order, only, format, stem: plainName(order.job.title) });
	});
}
