import type { Sheet } from "../paper/drawing.ts";
import { writeCsv } from "./csv.ts";
import { writeDxf } from "./dxf.ts";
import { writePdf } from "./pdf/pdf.ts";
import { writeSvg } from "./svg.ts";

export const FORMATS = ["pdf", "svg", "dxf", "csv"] as const;
export type Format = (typeof FORMATS)[number];

/** A file to write or to hand over, made when it is asked for, so that who asks can show how far it has come, or stop. */
export interface SheetFile {
	/** Without a folder; no two files of the same sheets have the same name, not even where capitals do not count. */
	readonly name: string;
	readonly make: () => Promise<string | Uint8Array>;
}

/** The files of sheets: of each sheet one PDF, an SVG a page, a DXF a figure and a CSV a table. */
export function sheetFiles(sheets: readonly Sheet[], formats: readonly Format[]): SheetFile[] {
	const names = fileNames(sheets);
	return sheets.flatMap((sheet, i) => {
		const name = names[i] as string;
		const of: Readonly<Record<Format, readonly SheetFile[]>> = {
			pdf: [{ name: `${name}.pdf`, make: () => writePdf([sheet], { title: sheet.title }) }],
			svg: sheet.pages.map((page, at) => ({
				name: `${name}-${at + 1}.svg`,
				make: async () => writeSvg(page, `${sheet.title}, ${page.label}`),
			})),
			dxf: sheet.figures.map((figure) => ({ name: `${name}-${figure.name}.dxf`, make: async () => writeDxf(figure) })),
			csv: sheet.tables.map((table) => ({ name: `${name}-${table.name}.csv`, make: async () => writeCsv(table) })),
		};
		return FORMATS.filter((format) => formats.includes(format)).flatMap((format) => of[format]);
	});
}

/** Longer ids are cut off: with its folder a name must stay under what file systems take. */
const LONGEST = 40;

/** Bay and sheet; bays whose ids come to the same letters are numbered. */
function fileNames(sheets: readonly Sheet[]): string[] {
	const bays = [...new Set(sheets.map(({ bay }) => bay))];
	const plain = new Map<string, string>();
	const taken = new Set<string>();
	for (const bay of bays) {
		const stem = plainName(bay);
		let name = stem;
		for (let number = 2; taken.has(name); number++) name = `${stem}-${number}`;
		taken.add(name);
		plain.set(bay, name);
	}
	return sheets.map(({ bay, name }) => `${plain.get(bay)}-${name}`);
}

/** Small letters, figures and dashes: a name that every file system takes. */
function plainName(id: string): string {
	const name = id
		.normalize("NFKD")
		.replace(/\p{M}/gu, "")
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, "-")
		.slice(0, LONGEST)
		.replace(/^-+|-+$/g, "");
	return name === "" ? "bay" : name;
}
