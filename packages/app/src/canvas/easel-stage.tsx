import type Konva from "konva/lib/Core.js";
import { memo, type Ref } from "react";
import { Layer, Stage } from "react-konva/lib/ReactKonvaCore";

interface Props {
	readonly ref: Ref<Konva.Stage>;
	/** Names of the layers, bottom to top. */
	readonly layers: readonly string[];
}

/**
 * A stage with empty layers, one pixel large: an easel gives it its size and its painters. Rendered once, so that React has
 * no part in what is drawn; it takes no pointer, since the frame round it reads them all.
 */
export const EaselStage = memo(function EaselStage({ ref, layers }: Props) {
	return (
		<Stage ref={ref} width={1} height={1} listening={false}>
			{layers.map((name) => (
				<Layer key={name} name={name} listening={false} />
			))}
		</Stage>
	);
});
