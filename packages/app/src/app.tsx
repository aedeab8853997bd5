import { lazy, Suspense } from "react";
import { Plan } from "./canvas/plan.tsx";
import { useDesk } from "./desk/desk.ts";
import { usePlan } from "./desk/on-table.ts";
import { useScreen } from "./desk/screen.ts";
import { BracketsPanel } from "./panels/brackets-panel.tsx";
import { CornersPanel } from "./panels/corners-panel.tsx";
import { CutPanel } from "./panels/cut-panel.tsx";
import { FindingsPanel } from "./panels/findings-panel.tsx";
import { RunsPanel } from "./panels/runs-panel.tsx";
import { TrackPanel } from "./panels/track-panel.tsx";
import { Announcer } from "./shell/announcer.tsx";
import { DropToOpen } from "./shell/drop.tsx";
import { Header } from "./shell/header.tsx";
import { useNarrow } from "./shell/media.ts";
import { Notices } from "./shell/notices.tsx";
import { PhoneBar } from "./shell/phone-bar.tsx";
import { Sheets } from "./shell/sheets.tsx";
import { Strip } from "./strip/strip.tsx";

const FirstUse = lazy(async () => ({ default: (await import("./examples/first-use.tsx")).FirstUse }));

/** The whole screen: the opening page while there is no job, otherwise the desk. */
export function App() {
	const started = useScreen((state) => state.started);
	const narrow = useNarrow();
	return (
		<>
			{started ? (
				narrow ? (
					<Column />
				) : (
					<DrawingOffice />
				)
			) : (
				<Suspense fallback={null}>
					<FirstUse />
				</Suspense>
			)}
			<Sheets />
			<Announcer />
			<DropToOpen />
		</>
	);
}

/** A desk or a tablet: what comes out at the head and foot of the side column, what goes in between, the drawing beside it. */
function DrawingOffice() {
	const unit = useDesk((state) => state.shown.display.length);
	return (
		<div className="office" data-unit={unit}>
			<Header />
			<Notices />
			<aside className="side" aria-label="Figures and settings">
				<CutPanel />
				<div className="side-scroll">
					<TrackPanel />
					<CornersPanel />
					<RunsPanel />
					<BracketsPanel />
				</div>
				<FindingsPanel />
			</aside>
			<main className="board">
				<div className="plan-place">
					<Plan />
				</div>
				<div className="strip-place">
					<Strip />
				</div>
			</main>
		</div>
	);
}

/** A phone: one column in the order of the work on site; what stands in the way of the work comes first. */
function Column() {
	const fits = usePlan((plan) => plan.path !== null);
	const unit = useDesk((state) => state.shown.display.length);
	return (
		<div className="column" data-unit={unit}>
			<Header />
			<Notices />
			<main className="column-main">
				<div className="plan-place" id="plan">
					<Plan />
				</div>
				<CutPanel />
				{fits ? null : <FindingsPanel />}
				<CornersPanel />
				<BracketsPanel open />
				<div className="strip-place">
					<Strip />
				</div>
				{fits ? <FindingsPanel /> : null}
				<TrackPanel />
				<RunsPanel />
			</main>
			<PhoneBar />
		</div>
	);
}
