import { Plan } from "../canvas/plan.tsx";
import { useDesk } from "../desk/desk.ts";
import { LowerPart } from "../elevation/lower-part.tsx";
import { CutPanel } from "../panels/cut-panel.tsx";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { Header } from "./header.tsx";
import { Notices } from "./notices.tsx";
import { StagePanel } from "./stage-panel.tsx";

/** A desk or a tablet: what comes out at the head and foot of the side column, what goes in between, the drawing beside it. */
export function DrawingOffice() {
	const unit = useDesk((state) => state.shown.display.length);
	return (
		<div className="office" data-unit={unit}>
			<Header />
			<Notices />
			<aside className="side" aria-label="Figures and settings">
				<CutPanel />
				<StagePanel />
				<FindingsPanel />
			</aside>
			<main className="board">
				<div className="plan-place">
					<Plan />
				</div>
				<LowerPart />
			</main>
		</div>
	);
}
