/** Scales that a drawing is put on paper at, the largest first. Source: ISO 5455, reductions 1:5, 1:10, 1:20, 1:50, 1:100; 1:25 is usual besides. */
export const SCALES = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000] as const;

/** The largest scale (as the number after 1:) from 1:`most` down at which what is `width` by `height` mm goes into the room; the smallest there is where none does. */
export function scaleFor(
	{ width, height }: { readonly width: number; readonly height: number },
	room: { readonly width: number; readonly height: number },
	most = 5,
): number {
	const fitting = SCALES.find((scale) => scale >= most && width / scale <= room.width && height / scale <= room.height);
	return fitting ?? (SCALES.at(-1) as number);
}

export const scaleName = (scale: number): string => `1:${scale}`;
