import { PartsPanel } from "../parts-panel.tsx";
import { PiecesPanel } from "../pieces-panel.tsx";
import { StockPanel } from "../stock-panel.tsx";

/** What is bought and cut. */
export function OrderStage() {
	return (
		<>
			<PiecesPanel />
			<StockPanel />
			<PartsPanel />
		</>
	);
}
