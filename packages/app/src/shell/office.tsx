import { lazy, Suspense } from "react";
import { Plan } from "../canvas/plan.tsx";
import { useDesk } from "../desk/desk.ts";
import { useScreen } from "../desk/screen.ts";
import { LowerPart } from "../elevation/lower-part.tsx";
import { CutPanel } from "../panels/cut-panel.tsx";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { useShown } from "../sheets/shown.ts";
import { Header } from "./header.tsx";
import { Notices } from "./notices.tsx";
import { StagePanel } from "./stage-panel.tsx";

const PagesBoard = lazy(async () => ({ default: (await import("../sheets/pages-board.tsx")).PagesBoard }));

/** A desk or a tablet: what comes out at the head and foot of the side column, what goes in between, the drawing beside it. */
export function DrawingOffice() {
	const unit = useDesk((state) => state.shown.display.length);
	const sheets = useScreen((state) => state.stage === "sheets");
	const pages = useShown((state) => state.board === "pages");
	const showsPages = sheets && pages;
	return (
		<div className="office" data-unit={unit}>
			<Header />
			<Notices />
			<aside className="side" aria-label="Figures and settings">
				<CutPanel />
				<StagePanel />
				<FindingsPanel />
			</aside>
			<main className="board" data-pages={showsPages || undefined}>
				<div className="plan-place">
					<Plan />
				</div>
				<LowerPart />
				<Suspense fallback={null}>{showsPages ? <PagesBoard /> : null}</Suspense>
			</main>
		</div>
	);
}
