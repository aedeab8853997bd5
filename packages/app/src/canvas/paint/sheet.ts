import type { Painter } from "../scene.ts";

/** px: the dots' distance on screen is kept between these; dots stand 10, 20, 50, 100… mm apart. */
const LEAST_PITCH = 22;
const STEPS = [1, 2, 5] as const;

/** The sheet's dots: so that one sees the plan move and how large it is. */
export const paintSheet: Painter<{
	readonly view: { readonly scale: number; readonly left: number; readonly top: number };
	readonly size: { readonly width: number; readonly height: number };
	readonly palette: { readonly line: string; readonly sheet: string };
}> = (pen, { view, size, palette }) => {
	pen.fillStyle = palette.sheet;
	pen.fillRect(0, 0, size.width, size.height);
	const pitch = pitchFor(view.scale) * view.scale;
	pen.fillStyle = palette.line;
	const firstLeft = view.left - Math.ceil(view.left / pitch) * pitch;
	const firstTop = view.top - Math.ceil(view.top / pitch) * pitch;
	for (let top = firstTop; top <= size.height; top += pitch)
		for (let left = firstLeft; left <= size.width; left += pitch) pen.fillRect(left - 0.75, top - 0.75, 1.5, 1.5);
};

/** mm. */
function pitchFor(scale: number): number {
	for (let decade = 10; ; decade *= 10)
		for (const step of STEPS) if (decade * step * scale >= LEAST_PITCH) return decade * step;
}
