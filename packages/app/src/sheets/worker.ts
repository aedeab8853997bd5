import { type BayPlan, planJob } from "@baywright/setout";
import {
	composeSheets,
	type Format,
	missingLetters,
	type Sheet,
	type SheetName,
	sheetFiles,
	writePdf,
	writeSvg,
} from "@baywright/sheets";
import { type Zippable, zipSync } from "fflate";
import { plainName } from "../storage/plain-name.ts";
import {
	type Answer,
	type Asked,
	type MadeFile,
	type NotMade,
	type Order,
	SHEET_WORDS,
	SHEETS_IN_ORDER,
} from "./making.ts";
import { whyNot } from "./why-not.ts";

/** The sheets that pages are drawn of. */
let composed: readonly Sheet[] = [];

self.onmessage = async ({ data }: MessageEvent<Asked>) => {
	try {
		if (data.kind === "compose") compose(data.order);
		else if (data.kind === "draw") draw(data.sheet, data.page);
		else await write(data);
	} catch (cause) {
		answer({ kind: "failed", why: wordsOf(cause) });
	}
};

function compose(order: Order): void {
	const plans = plansOf(order);
	const { sheets, broken } = sheetsOf(order, plans, SHEETS_IN_ORDER);
	composed = sheets;
	answer({
		kind: "composed",
		made: {
			sheets: sheets.map(({ name, bay, title, pages, figures, tables }) => ({
				name,
				bay,
				title,
				pages: pages.map(({ label, size }) => ({ label, width: size.width, height: size.height })),
				figures: figures.length,
				tables: tables.length,
			})),
			notMade: notMade(order, plans, sheets, broken),
			missingLetters: missingLetters(sheets),
		},
	});
}

/** All of one kind before the next, so that it can be said how far it has come; then bay by bay. A kind that breaks off keeps no other from being made. */
function sheetsOf(order: Order, plans: readonly BayPlan[], names: readonly SheetName[], after = 0) {
	const broken = new Map<SheetName, string>();
	const sheets = names.flatMap((name, i) => {
		answer({ kind: "far", far: { done: i, of: names.length + after, doing: SHEET_WORDS[name] } });
		try {
			return composeSheets(order.job, plansFor(name, order, plans), order.options, [name]);
		} catch (cause) {
			broken.set(name, wordsOf(cause));
			return [];
		}
	});
	const place = ({ bay, name }: Sheet) => Math.max(0, order.bays.indexOf(bay)) * names.length + names.indexOf(name);
	return { sheets: sheets.toSorted((a, b) => place(a) - place(b)), broken };
}

/** What is bought is bought for all bays together; every other sheet is of one bay. */
function plansFor(name: SheetName, { bays }: Order, plans: readonly BayPlan[]): readonly BayPlan[] {
	return name === "order" ? plans : plans.filter(({ id }) => bays.includes(id));
}

function notMade(
	order: Order,
	plans: readonly BayPlan[],
	sheets: readonly Sheet[],
	broken: ReadonlyMap<SheetName, string>,
): NotMade[] {
	return SHEETS_IN_ORDER.flatMap((name) =>
		plansFor(name, order, plans).flatMap((plan, i) => {
			// The order of several bays is of none of them.
			if (sheets.some((sheet) => sheet.name === name && (name === "order" || sheet.bay === plan.id))) return [];
			const fault = broken.get(name);
			const why =
				fault === undefined
					? whyNot(name, plan, i === 0, order.job.display.length)
					: `drawing it broke off (${fault}). Save the job file and tell whoever looks after this program.`;
			return why === null ? [] : [{ name, bay: plan.id, why }];
		}),
	);
}

function draw(sheet: number, page: number): void {
	const of = composed[sheet];
	const drawn = of?.pages[page];
	if (of === undefined || drawn === undefined) return;
	const svg = new Blob([writeSvg(drawn, `${of.title}, ${drawn.label}`)], { type: "image/svg+xml" });
	answer({ kind: "drawn", sheet, page, svg });
}

async function write({ order, only, format, stem }: Extract<Asked, { readonly kind: "write" }>): Promise<void> {
	const { sheets, broken } = sheetsOf(order, plansOf(order), only, 1);
	const [fault] = broken;
	if (fault !== undefined) throw new Error(`${SHEET_WORDS[fault[0]]}: ${fault[1]}`);
	const file = format === "pdf" ? await pdfOf(sheets, order) : await filesOf(sheets, order, format, stem);
	if (file === null) throw new Error(`these sheets have nothing to save as ${format.toUpperCase()}`);
	self.postMessage({ kind: "written", file } satisfies Answer, { transfer: [file.bytes.buffer] });
}

/** All sheets in one file. */
async function pdfOf(sheets: readonly Sheet[], order: Order): Promise<MadeFile | null> {
	const { job } = order;
	if (sheets.length === 0) return null;
	const bytes = await writePdf(sheets, {
		title: job.title === "" ? "Sheets" : job.title,
		onPage: (done, of) => answer({ kind: "far", far: { done, of, doing: `page ${done + 1} of ${of}` } }),
	});
	return { ending: endingOf(sheets, order), extension: ".pdf", bytes: bytes as Uint8Array<ArrayBuffer> };
}

/** One file as it is; several packed into one, because a browser saves one at a time. */
async function filesOf(sheets: readonly Sheet[], order: Order, format: Format, stem: string): Promise<MadeFile | null> {
	const files = sheetFiles(sheets, [format]);
	const pack: Zippable = {};
	for (const [i, { name, make }] of files.entries()) {
		answer({ kind: "far", far: { done: i, of: files.length, doing: name } });
		const made = await make();
		const bytes = typeof made === "string" ? new TextEncoder().encode(made) : made;
		if (files.length === 1)
			return {
				ending: name.slice(0, -(format.length + 1)),
				extension: `.${format}`,
				bytes: bytes as Uint8Array<ArrayBuffer>,
			};
		pack[`${stem}-${name}`] = bytes;
	}
	if (files.length === 0) return null;
	return { ending: `${endingOf(sheets, order)}-${format}`, extension: ".zip", bytes: zipSync(pack, { mtime: PACKED }) };
}

/** Written for the hour of packing, so that the same sheets are the same bytes. The first day that a ZIP file can tell. */
const PACKED = new Date(1980, 0, 1);

/** What the sheets are together: all of one kind or not, of all bays or of one of several. */
function endingOf(sheets: readonly Sheet[], { job, bays }: Order): string {
	const names = new Set(sheets.map(({ name }) => name));
	const kind = names.size === 1 ? ([...names][0] as string) : "sheets";
	const [bay] = bays;
	return bays.length === job.bays.length || bay === undefined ? kind : `${plainName(bay)}-${kind}`;
}

function plansOf({ job }: Order): BayPlan[] {
	answer({ kind: "far", far: { done: 0, of: SHEETS_IN_ORDER.length, doing: "the plan" } });
	return planJob(job);
}

const wordsOf = (cause: unknown): string => (cause instanceof Error ? cause.message : String(cause));

const answer = (message: Answer): void => self.postMessage(message);
