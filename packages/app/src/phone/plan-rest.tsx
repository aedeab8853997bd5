import { CordPanel } from "../panels/cord-panel.tsx";
import { EndsPanel } from "../panels/ends-panel.tsx";
import { FixingsPanel } from "../panels/fixings-panel.tsx";
import { HeightsPanel } from "../panels/heights-panel.tsx";
import { JointsPanel } from "../panels/joints-panel.tsx";
import { NoDrillPanel } from "../panels/no-drill-panel.tsx";
import { ObstaclesPanel } from "../panels/obstacles-panel.tsx";
import { OpeningsPanel } from "../panels/openings-panel.tsx";
import { CurtainsStage } from "../panels/stages/curtains.tsx";
import { OrderStage } from "../panels/stages/order.tsx";
import { SheetsStage } from "../panels/stages/sheets.tsx";

/** Everything else that can be set of a bay, in the order of the job. */
export function PlanRest() {
	return (
		<>
			<EndsPanel />
			<JointsPanel />
			<FixingsPanel />
			<CordPanel />
			<OpeningsPanel />
			<ObstaclesPanel />
			<NoDrillPanel />
			<HeightsPanel />
			<CurtainsStage />
			<OrderStage />
			<SheetsStage />
		</>
	);
}
