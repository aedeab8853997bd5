import type { Job } from "@baywright/setout";
import type { Format, SheetName, SheetOptions } from "@baywright/sheets";

/** What sheets are to be made of. */
export interface Order {
	readonly job: Job;
	/** Ids of the bays that they are of, in the job's order. */
	readonly bays: readonly string[];
	readonly options: SheetOptions;
}

/** A sheet as it was made, without what is drawn on it. */
export interface MadeSheet {
	readonly name: SheetName;
	/** Id of its bay. */
	readonly bay: string;
	readonly title: string;
	/** mm. */
	readonly pages: readonly { readonly label: string; readonly width: number; readonly height: number }[];
	/** How many drawings and tables it has for other programs. */
	readonly figures: number;
	readonly tables: number;
}

/** Why there is no such sheet. */
export interface NotMade {
	readonly name: SheetName;
	readonly bay: string;
	readonly why: string;
}

export interface Made {
	readonly sheets: readonly MadeSheet[];
	readonly notMade: readonly NotMade[];
	/** Letters that the sheets' lettering does not have. */
	readonly missingLetters: readonly string[];
}

/** A file as it is saved: one of the format, or several packed into one. */
export interface MadeFile {
	/** What comes after the job's title in its name. */
	readonly ending: string;
	readonly extension: ".pdf" | ".svg" | ".dxf" | ".csv" | ".zip";
	readonly bytes: Uint8Array<ArrayBuffer>;
}

/** What the worker is asked for. A page is counted from 0. */
export type Asked =
	| { readonly kind: "compose"; readonly order: Order }
	| { readonly kind: "draw"; readonly sheet: number; readonly page: number }
	| {
			readonly kind: "write";
			readonly order: Order;
			readonly only: readonly SheetName[];
			readonly format: Format;
			/** The start of the name of every file in a pack. */
			readonly stem: string;
	  };

/** How far long work has come: `doing` is what it is at. */
export interface Far {
	readonly done: number;
	readonly of: number;
	readonly doing: string;
}

export type Answer =
	| { readonly kind: "far"; readonly far: Far }
	| { readonly kind: "composed"; readonly made: Made }
	| { readonly kind: "drawn"; readonly sheet: number; readonly page: number; readonly svg: Blob }
	| { readonly kind: "written"; readonly file: MadeFile }
	| { readonly kind: "failed"; readonly why: string };

/** What each sheet is called, in the order in which they are needed. */
export const SHEET_WORDS: Readonly<Record<SheetName, string>> = {
	survey: "Survey sheet",
	fitting: "Fitting sheet",
	bends: "Bend templates",
	strips: "Strip sheet",
	order: "Order",
	workroom: "Workroom sheet",
	"hand-over": "Hand-over sheet",
};

export const SHEETS_IN_ORDER = Object.keys(SHEET_WORDS) as readonly SheetName[];
