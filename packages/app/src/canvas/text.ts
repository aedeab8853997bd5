/** The few ways in which the drawing writes. */
export type Face = "taped" | "drawn" | "name" | "plain" | "small" | "title" | "handle";

interface FaceStyle {
	readonly size: number;
	readonly weight: 400 | 600;
	readonly italic: boolean;
}

/** Taped is bold and upright, drawn is light and italic: what is known and what is guessed. Sizes in px. */
const FACES: Readonly<Record<Face, FaceStyle>> = {
	taped: { size: 15, weight: 600, italic: false },
	drawn: { size: 15, weight: 400, italic: true },
	name: { size: 15, weight: 600, italic: false },
	plain: { size: 15, weight: 400, italic: false },
	small: { size: 13.5, weight: 400, italic: false },
	handle: { size: 13, weight: 600, italic: false },
	title: { size: 16, weight: 600, italic: false },
};

const FAMILY = '"Atkinson Hyperlegible Next", system-ui, sans-serif';

export const fontOf = (face: Face): string => {
	const { size, weight, italic } = FACES[face];
	return `${italic ? "italic " : ""}${weight} ${size}px ${FAMILY}`;
};

/** Height of a line of writing, px. */
export const lineHeight = (face: Face): number => FACES[face].size * 1.25;

/** Width of a line of writing, px. */
export type Measure = (text: string, face: Face) => number;

/** Measured widths kept; a drag shows new figures in every frame. */
const KEPT_WIDTHS = 4000;

/** Measures with a canvas, and remembers. `forget` when fonts have come in. */
export function createMeasure(pen: CanvasRenderingContext2D): {
	readonly measure: Measure;
	readonly forget: () => void;
} {
	const widths = new Map<string, number>();
	/** Setting a canvas's font is dear even where it changes nothing. */
	let set: Face | null = null;
	const measure: Measure = (text, face) => {
		const key = `${face} ${text}`;
		const known = widths.get(key);
		if (known !== undefined) return known;
		if (face !== set) {
			pen.font = fontOf(face);
			set = face;
		}
		const { width } = pen.measureText(text);
		if (widths.size >= KEPT_WIDTHS) widths.clear();
		widths.set(key, width);
		return width;
	};
	const forget = () => {
		widths.clear();
		set = null;
	};
	return { measure, forget };
}
