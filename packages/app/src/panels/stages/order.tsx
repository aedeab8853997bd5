import { OrderPanel } from "../order-panel.tsx";
import { PiecesPanel } from "../pieces-panel.tsx";
import { SparePanel } from "../spare-panel.tsx";
import { StockPanel } from "../stock-panel.tsx";

/** What is bought and cut. */
export function OrderStage() {
	return (
		<>
			<OrderPanel />
			<SparePanel />
			<StockPanel />
			<PiecesPanel />
		</>
	);
}
