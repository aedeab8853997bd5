import type { Size } from "@baywright/editor";
import Konva from "konva/lib/Core.js";

/** Painters of one layer, bottom to top. A layer is redrawn as a whole, and only when it is asked to be. */
export interface LayerPlan {
	readonly name: string;
	readonly painters: readonly { readonly name: string; paint(pen: CanvasRenderingContext2D): void }[];
}

/** A stage's layers with painters on them. React put the layers there and knows nothing more: a drag draws without one render. */
export interface Easel {
	resize(size: Size): void;
	/** Draws a layer anew with the next frame, however often it is asked. */
	redraw(layer: string): void;
	/** What is drawn on a layer, and how many of its pixels there are to a CSS px. */
	picture(layer: string): { readonly canvas: HTMLCanvasElement; readonly ratio: number } | null;
}

/** Puts the painters on the layers of a stage made by `EaselStage`, which names each layer as its plan does. */
export function createEasel(stage: Konva.Stage, name: string, plans: readonly LayerPlan[]): Easel {
	// Not a property of the React element, which would make it the id of an element of the page as well.
	stage.id(name);
	const layers = new Map(plans.map((plan) => [plan.name, layerOf(stage, plan.name)]));
	for (const plan of plans) {
		const layer = layers.get(plan.name);
		layer?.id(`${name}-${plan.name}`);
		for (const { name: shape, paint } of plan.painters) {
			layer?.add(
				new Konva.Shape({
					id: `${name}-${shape}`,
					listening: false,
					sceneFunc: (context) => paint(context._context),
				}),
			);
		}
	}
	return {
		resize({ width, height }) {
			stage.size({ width: Math.max(1, width), height: Math.max(1, height) });
		},
		redraw(layer) {
			layers.get(layer)?.batchDraw();
		},
		picture(layer) {
			const canvas = layers.get(layer)?.getCanvas();
			return canvas === undefined ? null : { canvas: canvas._canvas, ratio: canvas.getPixelRatio() };
		},
	};
}

function layerOf(stage: Konva.Stage, name: string): Konva.Layer {
	const layer = stage.getLayers().find((each) => each.name() === name);
	if (layer === undefined) throw new Error(`Broken invariant: the stage has no layer "${name}".`);
	return layer;
}
