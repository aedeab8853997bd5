import type { Format, PaperName, SheetName, SheetOptions, StripPaper } from "@baywright/sheets";
import type { Options } from "../options.ts";
import { quoted } from "../text/plain.ts";

export const SHEETS_OPTIONS = {
	out: { example: "sheets" },
	only: { example: "fitting,bends" },
	paper: { example: "A4" },
	format: { example: "pdf,dxf" },
	measured: { example: "98.5x98.7" },
	strips: { example: "roll" },
	date: { example: "2026-11-27" },
	force: "alone",
} as const;

/** What to write, and where to. */
export interface SheetsOrder {
	readonly out: string;
	readonly only: readonly SheetName[];
	readonly formats: readonly Format[];
	readonly options: SheetOptions;
	readonly force: boolean;
}

/** What there is to choose from. */
export interface SheetsChoice {
	readonly formats: readonly Format[];
	readonly names: readonly SheetName[];
	readonly papers: Readonly<Record<PaperName, unknown>>;
}

/** The order as typed, or what is wrong with it. */
export function readSheetsOrder(
	options: Extract<Options<keyof typeof SHEETS_OPTIONS>, { readonly ok: true }>,
	choice: SheetsChoice,
): SheetsOrder | string {
	const out = options.value("out");
	if (out === undefined || out === "") return "option --out: found nothing, allowed a folder as in --out sheets";
	const only = listOf(options.value("only"), choice.names, choice.names);
	if (typeof only === "string") return `option --only: ${only}`;
	const formats = listOf(options.value("format"), choice.formats, ["pdf"]);
	if (typeof formats === "string") return `option --format: ${formats}`;
	const papers = Object.keys(choice.papers) as PaperName[];
	const typed = options.value("paper") ?? "A4";
	const paper = papers.find((name) => name.toLowerCase() === typed.toLowerCase());
	if (paper === undefined) return `option --paper: found ${quoted(typed)}, allowed ${papers.join(", ")}`;
	const measured = readMeasured(options.value("measured"));
	if (typeof measured === "string") return `option --measured: ${measured}`;
	const date = options.value("date") ?? today();
	if (!isDate(date)) return `option --date: found ${quoted(date)}, allowed a day as in 2026-11-27`;
	const onStrips = options.value("strips") ?? "sheets";
	const strips = STRIPS.find((name) => name === onStrips.toLowerCase());
	if (strips === undefined) return `option --strips: found ${quoted(onStrips)}, allowed ${STRIPS.join(", ")}`;
	return { out, only, formats, options: { paper, date, measured, strips }, force: options.has("force") };
}

const STRIPS: readonly StripPaper[] = ["sheets", "long", "roll"];

function listOf<Name extends string>(
	typed: string | undefined,
	known: readonly Name[],
	usual: readonly Name[],
): readonly Name[] | string {
	if (typed === undefined) return usual;
	const names = typed.split(",").map((name) => name.trim().toLowerCase());
	const odd = names.find((name) => !known.some((each) => each === name));
	if (odd !== undefined) return `found ${quoted(odd)}, allowed ${known.join(", ")}, parted by commas`;
	return known.filter((name) => names.includes(name));
}

/** A printer that is further out than this is not scaling by mistake; mm on a bar of 100. */
const LEAST_MEASURED = 80;
const GREATEST_MEASURED = 120;

/** Of several readings each is of a print that was made with those before it: what the printer does without them is all together. */
function readMeasured(typed: string | undefined): { readonly across: number; readonly down: number } | string {
	const wrong = `found ${quoted(typed ?? "")}, allowed mm from ${LEAST_MEASURED} to ${GREATEST_MEASURED}, across and down as in 98.5x98.7; of a print made with that, after a comma as in 98.5,99.8`;
	let [across, down] = [100, 100];
	for (const reading of typed?.split(",") ?? []) {
		const [first, second] =
			/^(\d{2,3}(?:\.\d{1,3})?)(?:x(\d{2,3}(?:\.\d{1,3})?))?$/i.exec(reading.trim())?.slice(1) ?? [];
		const bars = [Number(first), Number(second ?? first)] as const;
		across = (across * bars[0]) / 100;
		down = (down * bars[1]) / 100;
		if (![...bars, across, down].every(isNear)) return wrong;
	}
	return { across, down };
}

const isNear = (mm: number): boolean => mm >= LEAST_MEASURED && mm <= GREATEST_MEASURED;

function isDate(text: string): boolean {
	if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
	const day = new Date(`${text}T00:00:00Z`);
	return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** Where the user is. */
function today(): string {
	const now = new Date();
	const two = (number: number) => String(number).padStart(2, "0");
	return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
