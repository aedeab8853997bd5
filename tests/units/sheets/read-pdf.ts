import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF as an independent reader finds it. Lengths mm from the upper left corner of the page, y down. */
export interface ReadPage {
	readonly label: string | null;
	readonly width: number;
	readonly height: number;
	/** Every stretch of every path: straight ones with two places, curved ones with four. */
	readonly strokes: readonly ReadStroke[];
	readonly texts: readonly ReadText[];
}

export interface ReadStroke {
	readonly points: readonly (readonly [x: number, y: number])[];
	/** Width of the line, mm; null where it is filled only or clips. */
	readonly width: number | null;
}

export interface ReadText {
	readonly text: string;
	/** Start of the baseline. */
	readonly x: number;
	readonly y: number;
	readonly width: number;
	/** Radians, counter-clockwise. */
	readonly turn: number;
}

const MM = 25.4 / 72;

type Matrix = readonly [number, number, number, number, number, number];

export async function readPdf(bytes: Uint8Array) {
	const task = getDocument({ data: bytes.slice(), useSystemFonts: false, disableFontFace: true, verbosity: 0 });
	const document = await task.promise;
	const labels = await document.getPageLabels();
	const pages: ReadPage[] = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const [, , wide, high] = page.view as [number, number, number, number];
		const content = await page.getTextContent({ includeMarkedContent: false });
		const texts = content.items.flatMap((item) => {
			if (!("str" in item) || item.str === "") return [];
			const [a, b, , , x, y] = item.transform as number[] as unknown as Matrix;
			return [{ text: item.str, x: x * MM, y: (high - y) * MM, width: item.width * MM, turn: Math.atan2(b, a) }];
		});
		const { fnArray, argsArray } = await page.getOperatorList();
		const strokes = strokesOf(fnArray, argsArray, high);
		pages.push({ label: labels?.[number - 1] ?? null, width: wide * MM, height: high * MM, strokes, texts });
	}
	const preferences = await document.getViewerPreferences();
	const info = (await document.getMetadata()).info as Record<string, unknown>;
	await task.destroy();
	return { pages, preferences: preferences as Record<string, unknown> | null, info };
}

function strokesOf(ops: readonly number[], args: readonly unknown[], high: number): ReadStroke[] {
	const strokes: ReadStroke[] = [];
	let matrix: Matrix = [1, 0, 0, 1, 0, 0];
	let width = 1;
	const kept: { matrix: Matrix; width: number }[] = [];
	ops.forEach((op, i) => {
		if (op === OPS.save) kept.push({ matrix, width });
		else if (op === OPS.restore) ({ matrix, width } = kept.pop() as { matrix: Matrix; width: number });
		else if (op === OPS.transform) matrix = times(matrix, args[i] as Matrix);
		else if (op === OPS.setLineWidth) width = (args[i] as [number])[0];
		else if (op === OPS.constructPath) {
			const [paint, [data]] = args[i] as [number, [ArrayLike<number> | null], unknown];
			const line = [OPS.stroke, OPS.closeStroke, OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke].includes(paint);
			const scale = Math.sqrt(Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]));
			const to = (x: number, y: number) => {
				const [a, b, c, d, e, f] = matrix;
				return [(a * x + c * y + e) * MM, (high - (b * x + d * y + f)) * MM] as const;
			};
			for (const points of stretches(data ?? [], to)) strokes.push({ points, width: line ? width * scale * MM : null });
		}
	});
	return strokes;
}

const times = ([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix => [
	a * p + c * q,
	b * p + d * q,
	a * r + c * s,
	b * r + d * s,
	a * t + c * u + e,
	b * t + d * u + f,
];

type Place = readonly [number, number];

function* stretches(data: ArrayLike<number>, to: (x: number, y: number) => Place): Generator<Place[]> {
	let here: Place = [0, 0];
	let start: Place = [0, 0];
	for (let i = 0; i < data.length; ) {
		const place = (at: number) => to(data[i + at] as number, data[i + at + 1] as number);
		switch (data[i]) {
			case 0:
				here = start = place(1);
				i += 3;
				break;
			case 1:
				yield [here, place(1)];
				here = place(1);
				i += 3;
				break;
			case 2:
				yield [here, place(1), place(3), place(5)];
				here = place(5);
				i += 7;
				break;
			case 3:
				i += 5;
				throw new Error("a quadratic curve: none is written");
			default:
				yield [here, start];
				here = start;
				i += 1;
		}
	}
}
