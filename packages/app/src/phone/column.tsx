import { lazy, type ReactNode, Suspense, useEffect } from "react";
import { Button, Tab, TabList, TabPanel, Tabs } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { useBay, usePlan } from "../desk/on-table.ts";
import { screen, useScreen } from "../desk/screen.ts";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { Header } from "../shell/header.tsx";
import { Notices } from "../shell/notices.tsx";
import { PhoneBar } from "../shell/phone-bar.tsx";
import { MarksView } from "./marks-view.tsx";
import { StripView } from "./strip-view.tsx";
import { useRefused } from "./use-refused.ts";
import { phone, showView, usePhone, VIEWS, type View } from "./views.ts";
import "./phone.css";

const PlanView = lazy(async () => ({ default: (await import("./plan-view.tsx")).PlanView }));
const CornerView = lazy(async () => ({ default: (await import("./corner-view.tsx")).CornerView }));
const StepByStep = lazy(async () => ({ default: (await import("../taping/step-by-step.tsx")).StepByStep }));
const CautionsSheet = lazy(async () => ({ default: (await import("./cautions-sheet.tsx")).CautionsSheet }));

const WORDS: Readonly<Record<View, string>> = {
	tape: "Tape",
	marks: "Marks",
	strip: "Strip",
	plan: "Plan",
	corner: "Corner",
};

/** A phone at the wall: what to tape, to mark out, to cut, the plan, a corner; one at a time. */
export function Column() {
	const unit = useDesk((state) => state.shown.display.length);
	const view = usePhone((state) => state.view);
	const cautions = usePhone((state) => state.cautions);
	useGoToPlan();
	return (
		<div className="column" data-unit={unit}>
			<Header />
			<Notices />
			<main className="column-main">
				<Tabs selectedKey={view} onSelectionChange={(key) => leaveFor(key as View)}>
					<TabList className="tabs" aria-label="Views">
						{VIEWS.map((each) => (
							<Tab key={each} id={each} className="tab">
								{WORDS[each]}
							</Tab>
						))}
					</TabList>
					<TabPanel id="tape" className="view">
						<Suspense fallback={<Wait />}>
							<StepByStep />
						</Suspense>
					</TabPanel>
					<TabPanel id="marks" className="view">
						<ToWorkFrom what="Nothing to mark out yet">
							<MarksView />
						</ToWorkFrom>
					</TabPanel>
					<TabPanel id="strip" className="view">
						<ToWorkFrom what="Nothing to cut yet">
							<StripView />
						</ToWorkFrom>
					</TabPanel>
					<TabPanel id="plan" className="view">
						<Suspense fallback={<Wait />}>
							<PlanView />
						</Suspense>
					</TabPanel>
					<TabPanel id="corner" className="view">
						<Suspense fallback={<Wait />}>
							<CornerView />
						</Suspense>
					</TabPanel>
				</Tabs>
			</main>
			{/* The keys of the survey sheet stand where the shortcuts do elsewhere. */}
			{view === "tape" ? null : <PhoneBar />}
			<Suspense fallback={null}>{cautions ? <CautionsSheet /> : null}</Suspense>
		</div>
	);
}

function choose(view: View): void {
	showView(view);
	window.scrollTo(0, 0);
}

/** Who goes elsewhere before the plan stands wants no tool in hand any more. */
function leaveFor(view: View): void {
	if (view !== "plan") screen.getState().set({ wanted: null });
	choose(view);
}

/** What has to be drawn or pointed at is on the plan. */
function useGoToPlan(): void {
	const wanted = useScreen((state) => state.wanted);
	useEffect(() => {
		if (wanted !== null) choose("plan");
	}, [wanted]);
	const pointed = useDesk(({ selection }) => (selection?.kind === "finding" ? selection.index : null));
	useEffect(() => {
		if (pointed === null) return;
		phone.setState({ cautions: false });
		choose("plan");
	}, [pointed]);
}

/** Readings to work from; what stands in their way comes first, and without a plan it stands alone. */
function ToWorkFrom({ what, children }: { readonly what: string; readonly children: ReactNode }) {
	const refused = useRefused();
	const walls = useBay((bay) => bay.walls.length);
	const fits = usePlan((plan) => plan.path !== null);
	if (walls === 0) return <Untaped what={what} />;
	return (
		<>
			{refused ? (
				<>
					<p className="do-not">Do not cut or drill</p>
					<FindingsPanel />
				</>
			) : null}
			{fits ? children : null}
		</>
	);
}

function Untaped({ what }: { readonly what: string }) {
	return (
		<div className="untaped">
			<h2>{what}</h2>
			<p>The bay has no walls yet. Tape them from the left: a run, the corner’s angle, the next run.</p>
			<Button className="button button-main" onPress={() => screen.getState().set({ wanted: "walls" })}>
				Tape the bay
			</Button>
		</div>
	);
}

const Wait = () => <p className="quiet phone-wait">One moment…</p>;
