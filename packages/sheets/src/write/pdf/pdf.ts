import type { Page, Sheet } from "../../paper/drawing.ts";
import { drawItem } from "./draw.ts";
import { type Easel, fontFor, POINTS } from "./easel.ts";

/** Written into every file in place of the hour of writing, so that the same sheets are the same bytes. */
const CREATED = new Date(Date.UTC(2000, 0, 1));

export interface PdfWords {
	/** As a reader of PDF shows it at its top. */
	readonly title: string;
	/** Told before each page is written, counted from 0, so that it can be said how far it has come. */
	readonly onPage?: (page: number, pages: number) => void;
}

/** Sheets as one PDF file, a page after the other, each at its own size. In Node and in the browser. */
export async function writePdf(sheets: readonly Sheet[], { title, onPage }: PdfWords): Promise<Uint8Array> {
	// Comes only where a PDF is written: pages on a screen need none of it.
	const { default: PDFDocument } = await import("pdfkit");
	const document = new PDFDocument({
		autoFirstPage: false,
		pdfVersion: "1.7",
		// The font that a document begins with; without one the standard fonts are looked for.
		font: fontFor(false, 0),
		info: { Title: title, Creator: "Baywright", Producer: "Baywright", CreationDate: CREATED },
	} as unknown as PDFKit.PDFDocumentOptions);
	const whole = collected(document);
	const easel: Easel = { document, fonts: new Set() };
	const pages = sheets.flatMap((sheet) => sheet.pages);
	for (const [i, page] of pages.entries()) {
		onPage?.(i, pages.length);
		document.addPage({ size: [page.size.width * POINTS, page.size.height * POINTS], margin: 0 });
		for (const item of page.items) drawItem(easel, item);
	}
	askForTrueSize(document, pages);
	document.end();
	return whole;
}

/** Asks readers not to scale when they print, and names the pages. Source: ISO 32000-1, 12.2 and 12.4.2. */
function askForTrueSize(document: PDFKit.PDFDocument, pages: readonly Page[]): void {
	const root = (document as unknown as { _root: { data: Record<string, unknown> } })._root.data;
	root.ViewerPreferences = document.ref({ PrintScaling: "None", PickTrayByPDFSize: true, DisplayDocTitle: true });
	root.PageLabels = { Nums: pages.flatMap(({ label }, i) => [i, { P: new String(label) }]) };
}

function collected(document: PDFKit.PDFDocument): Promise<Uint8Array> {
	return new Promise((resolve, reject) => {
		const chunks: Uint8Array[] = [];
		document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
		document.on("error", reject);
		document.on("end", () => {
			const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
			let at = 0;
			for (const chunk of chunks) {
				whole.set(chunk, at);
				at += chunk.length;
			}
			resolve(whole);
		});
	});
}
