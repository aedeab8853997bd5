import { INCH } from "./length.ts";
import type { LengthUnit } from "./schema.ts";

export interface LengthStyle {
	/** 0 = to the mm (cm with one decimal), 1 = to the tenth (cm with two). Inches are always to the sixteenth. */
	readonly precision?: 0 | 1;
	/** Adds mm or cm; inches always carry their mark. */
	readonly unit?: boolean;
	/** Inches from 12 up as feet and inches. */
	readonly feet?: boolean;
}

/** Parts of an inch that lengths are shown in: what a tape is marked in. */
const INCH_PARTS = 16;

/** What the last figure of a length shown to the mm, or to the sixteenth, stands for, mm. */
export const shownStep = (unit: LengthUnit): number => (unit === "in" ? INCH / INCH_PARTS : 1);

/** A length in mm as shown: `2400`, `240.0`, `94 1/2"`. What it gives, `parseLength` reads back. */
export const formatLength = (mm: number, unit: LengthUnit, style: LengthStyle = {}): string => {
	if (unit === "in") return inchText(mm, style.feet === true);
	const precision = style.precision ?? 0;
	const number = unit === "mm" ? decimal(mm, precision) : decimal(mm / 10, precision + 1);
	return style.unit === true ? `${number} ${unit}` : number;
};

/** An angle in degrees as shown: `135.0°`. */
export const formatAngle = (degrees: number): string => `${decimal(degrees, 1)}°`;

const decimal = (value: number, places: number): string => value.toFixed(places).replace(/^-(?=[0.]*$)/, "");

const inchText = (mm: number, withFeet: boolean): string => {
	if (!Number.isFinite(mm)) return String(mm);
	const parts = Math.round((Math.abs(mm) / INCH) * INCH_PARTS);
	const sign = mm < 0 && parts > 0 ? "-" : "";
	const footParts = 12 * INCH_PARTS;
	const feet = withFeet ? Math.floor(parts / footParts) : 0;
	const inches = `${mixedText(parts - feet * footParts)}"`;
	return feet === 0 ? `${sign}${inches}` : `${sign}${feet}' ${inches}`;
};

/** Sixteenths as a whole number and a reduced fraction. */
const mixedText = (parts: number): string => {
	const whole = Math.floor(parts / INCH_PARTS);
	const rest = parts - whole * INCH_PARTS;
	if (rest === 0) return String(whole);
	const common = [8, 4, 2, 1].find((factor) => rest % factor === 0) ?? 1;
	const fraction = `${rest / common}/${INCH_PARTS / common}`;
	return whole === 0 ? fraction : `${whole} ${fraction}`;
};
