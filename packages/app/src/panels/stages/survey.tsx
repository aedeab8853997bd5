import { useBay } from "../../desk/on-table.ts";
import { SimulateButton } from "../../simulate/simulate-button.tsx";
import { ReadingsPanel } from "../../taping/readings-panel.tsx";
import { HeightsPanel } from "../heights-panel.tsx";
import { NoDrillPanel } from "../no-drill-panel.tsx";
import { ObstaclesPanel } from "../obstacles-panel.tsx";
import { OpeningsPanel } from "../openings-panel.tsx";
import { RunsPanel } from "../runs-panel.tsx";

/** What was taped on site. */
export function SurveyStage() {
	const walled = useBay((bay) => bay.walls.length > 0);
	return (
		<>
			<RunsPanel />
			{walled ? (
				<>
					<ReadingsPanel />
					<OpeningsPanel />
					<ObstaclesPanel />
					<NoDrillPanel />
				</>
			) : null}
			<HeightsPanel />
			{walled ? <SimulateButton /> : null}
		</>
	);
}
