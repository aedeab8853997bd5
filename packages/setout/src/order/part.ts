/** What a part is. */
export type PartKind =
	| "track"
	| "bracket"
	| "ceiling-bracket"
	| "joint-bracket"
	| "bracket-base"
	| "joint"
	| "end-stop"
	| "end-pulley"
	| "glider"
	| "master-carrier"
	| "cord"
	| "tensioner"
	| "screw"
	| "plug"
	| "board-fixing"
	| "fixing-by-trial"
	| "cloth"
	| "lining"
	| "heading-tape"
	| "hook";

/** Where in the plan a quantity comes from: names of pieces, places in the plan's own lists, or of curtains in the bay's, as findings call them. */
export type PartSource =
	| { readonly of: "pieces"; readonly names: readonly string[] }
	| { readonly of: "brackets" | "joints" | "curtains"; readonly indexes: readonly number[] }
	| { readonly of: "track" | "cord" }
	/** The pair, or the one curtain, that stands in while the job names none. */
	| { readonly of: "draw"; readonly count: number };

/** One line of a bay's order. */
export interface Part {
	readonly kind: PartKind;
	/** What a price list calls it: "bracket", "track 3000". */
	readonly item: string;
	/** The system that it belongs to, by id; null where it belongs to none. */
	readonly system: string | null;
	/** How many, or metres; null where the plan does not know it, `figures.unknown` saying what is missing. */
	readonly quantity: number | null;
	readonly unit: "piece" | "m";
	/** On top, in the same unit. */
	readonly spare: number;
	/** What tells it from others of its item, mm: a stock length, a bracket's projection. */
	readonly size: number | null;
	readonly from: readonly PartSource[];
	/** What the quantity was worked out with: lengths mm. */
	readonly figures: Readonly<Record<string, number | string>>;
}
