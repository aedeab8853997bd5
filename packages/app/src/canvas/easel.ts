import Konva from "konva/lib/Core.js";
import type { Size } from "./viewport.ts";

/** Painters of one layer, bottom to top. A layer is redrawn as a whole, and only when it is asked to be. */
export interface LayerPlan {
	readonly name: string;
	readonly painters: readonly { readonly name: string; paint(pen: CanvasRenderingContext2D): void }[];
}

/** A stack of canvases with painters. Nothing of it is a React element: a drag draws without one render. */
export interface Easel {
	resize(size: Size): void;
	/** Draws a layer anew with the next frame, however often it is asked. */
	redraw(layer: string): void;
	destroy(): void;
}

export function createEasel(container: HTMLDivElement, name: string, plans: readonly LayerPlan[]): Easel {
	const stage = new Konva.Stage({ container, width: 1, height: 1, listening: false, id: name });
	const layers = new Map<string, Konva.Layer>();
	for (const plan of plans) {
		const layer = new Konva.Layer({ listening: false, id: `${name}-${plan.name}` });
		for (const { name: shape, paint } of plan.painters) {
			layer.add(
				new Konva.Shape({
					id: `${name}-${shape}`,
					listening: false,
					sceneFunc: (context) => paint(context._context),
				}),
			);
		}
		stage.add(layer);
		layers.set(plan.name, layer);
	}
	return {
		resize({ width, height }) {
			stage.size({ width: Math.max(1, width), height: Math.max(1, height) });
		},
		redraw(layer) {
			layers.get(layer)?.batchDraw();
		},
		destroy() {
			stage.destroy();
		},
	};
}
