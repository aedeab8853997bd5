import { lazy, Suspense } from "react";
import { Plan } from "../canvas/plan.tsx";
import { BracketsPanel } from "../panels/brackets-panel.tsx";
import { CornersPanel } from "../panels/corners-panel.tsx";
import { CutPanel } from "../panels/cut-panel.tsx";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { RunsPanel } from "../panels/runs-panel.tsx";
import { TrackPanel } from "../panels/track-panel.tsx";
import { useRefused } from "./use-refused.ts";

const Rest = lazy(async () => ({ default: (await import("./plan-rest.tsx")).PlanRest }));

/** The plan to draw on, with every table under it; what stands in the way comes before them. */
export function PlanView() {
	const refused = useRefused();
	return (
		<>
			<div className="plan-place" id="plan">
				<Plan />
			</div>
			{refused ? <FindingsPanel /> : null}
			<CutPanel />
			<RunsPanel />
			<CornersPanel />
			<TrackPanel />
			<BracketsPanel />
			<Suspense fallback={<p className="quiet phone-wait">One moment…</p>}>
				<Rest />
			</Suspense>
			{refused ? null : <FindingsPanel />}
		</>
	);
}
