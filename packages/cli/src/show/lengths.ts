import { formatLength, formatSpread, type LengthUnit } from "@baywright/setout";

/** How lengths are shown in one plan: a set-out figure to the tenth of a mm (or the sixteenth), a bought length to the mm. */
export interface Lengths {
	readonly unit: LengthUnit;
	/** Set-out figure, without its unit: for tables. */
	readonly figure: (mm: number) => string;
	/** Set-out figure with its ± at 95 % (`sd`: one standard deviation), where it has one: for tables. */
	readonly sure: (mm: number, sd: number | null) => string;
	/** Set-out figure with its unit: for sentences. */
	readonly fine: (mm: number) => string;
	/** Whole length with its unit. */
	readonly whole: (mm: number) => string;
}

export const lengthsIn = (unit: LengthUnit): Lengths => ({
	unit,
	figure: (mm) => formatLength(mm, unit, { precision: 1 }),
	sure: (mm, sd) => `${formatLength(mm, unit, { precision: 1 })}${sd === null ? "" : ` ± ${formatSpread(sd, unit)}`}`,
	fine: (mm) => formatLength(mm, unit, { precision: 1, unit: true }),
	whole: (mm) => formatLength(mm, unit, { unit: true }),
});

/** What the figures of all tables are in. */
export const unitLine = (unit: LengthUnit): string =>
	unit === "in" ? "Lengths in inches, to the sixteenth." : `Lengths in ${unit}.`;
