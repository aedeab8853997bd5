/** A sign that the font lacks, put together from what it has. Measures in parts of the em, y up from the baseline. */
export interface Sign {
	readonly advance: number;
	readonly letters: readonly { readonly text: string; readonly x: number; readonly y: number; readonly size: number }[];
	readonly strokes: readonly SignStroke[];
}

export interface SignStroke {
	readonly width: number;
	readonly points: readonly (readonly [x: number, y: number])[];
}

const FRACTIONS: Readonly<Record<string, readonly [over: string, under: string]>> = {
	"⅛": ["1", "8"],
	"⅜": ["3", "8"],
	"⅝": ["5", "8"],
	"⅞": ["7", "8"],
	"⅓": ["1", "3"],
	"⅔": ["2", "3"],
};

/** Size of the figures of a fraction: as in the font's own ½. */
const FRACTION_SIZE = 0.6;

const fraction = ([over, under]: readonly [string, string]): Sign => ({
	advance: 0.832,
	letters: [
		{ text: over, x: 0.02, y: 0.286, size: FRACTION_SIZE },
		{ text: "⁄", x: 0.345, y: 0, size: 1 },
		{ text: under, x: 0.465, y: 0, size: FRACTION_SIZE },
	],
	strokes: [],
});

const drawn = (
	advance: number,
	width: number,
	...lines: readonly (readonly (readonly [number, number])[])[]
): Sign => ({
	advance,
	letters: [],
	strokes: lines.map((points) => ({ width, points })),
});

/** For what no font here has: it is seen that something is missing. */
export const UNKNOWN: Sign = drawn(0.6, 0.06, [
	[0.08, 0],
	[0.52, 0],
	[0.52, 0.714],
	[0.08, 0.714],
	[0.08, 0],
]);

/** Signs put together, for letters with lines `width` em wide. */
export const signFor = (character: string, width: number): Sign | undefined => {
	const parts = FRACTIONS[character];
	if (parts !== undefined) return fraction(parts);
	switch (character) {
		case "≤":
			return drawn(
				0.572,
				width,
				[
					[0.5, 0.62],
					[0.08, 0.4],
					[0.5, 0.18],
				],
				[
					[0.08, 0.04],
					[0.5, 0.04],
				],
			);
		case "≥":
			return drawn(
				0.572,
				width,
				[
					[0.08, 0.62],
					[0.5, 0.4],
					[0.08, 0.18],
				],
				[
					[0.08, 0.04],
					[0.5, 0.04],
				],
			);
		case "→":
			return drawn(
				0.9,
				width,
				[
					[0.08, 0.34],
					[0.82, 0.34],
				],
				[
					[0.58, 0.55],
					[0.82, 0.34],
					[0.58, 0.13],
				],
			);
		case "←":
			return drawn(
				0.9,
				width,
				[
					[0.08, 0.34],
					[0.82, 0.34],
				],
				[
					[0.32, 0.55],
					[0.08, 0.34],
					[0.32, 0.13],
				],
			);
		case "✓":
			return drawn(0.7, width, [
				[0.1, 0.32],
				[0.28, 0.08],
				[0.6, 0.62],
			]);
		default:
			return undefined;
	}
};
