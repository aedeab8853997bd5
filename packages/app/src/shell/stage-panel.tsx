import { type ComponentType, useEffect, useReducer, useRef, useState } from "react";
import { useDesk } from "../desk/desk.ts";
import { STAGES, type Stage, useScreen } from "../desk/screen.ts";
import { ChosenElsewhere } from "./chosen-elsewhere.tsx";
import { STAGE_PANEL } from "./stages.tsx";

const LOADS: Readonly<Record<Stage, () => Promise<ComponentType>>> = {
	survey: async () => (await import("../panels/stages/survey.tsx")).SurveyStage,
	track: async () => (await import("../panels/stages/track.tsx")).TrackStage,
	curtains: async () => (await import("../panels/stages/curtains.tsx")).CurtainsStage,
	order: async () => (await import("../panels/stages/order.tsx")).OrderStage,
	sheets: async () => (await import("../panels/stages/sheets.tsx")).SheetsStage,
};

/** The controls of the stage at hand, and of no other. */
export function StagePanel() {
	const stage = useScreen((state) => state.stage);
	const bay = useDesk((state) => `${state.opened} ${state.shown.bays[state.bay]?.id}`);
	const panel = useRef<HTMLDivElement>(null);
	const Panel = useStage(stage);
	// biome-ignore lint/correctness/useExhaustiveDependencies: another stage or another bay is read from its top
	useEffect(() => {
		panel.current?.scrollTo(0, 0);
	}, [stage, bay]);
	return (
		<div ref={panel} className="side-scroll" role="tabpanel" id={STAGE_PANEL} aria-labelledby={`stage-${stage}`}>
			<ChosenElsewhere />
			{Panel === "missing" ? (
				<p className="stage-missing">These controls could not be fetched. Your work is kept: reload the page.</p>
			) : Panel === null ? null : (
				<Panel />
			)}
		</div>
	);
}

const here = new Map<Stage, ComponentType>();

/**
 * A stage's controls, null until they are here. All are fetched behind the first, so that going from stage to stage shows no
 * gap: a lazy component would leave one each time, however near its code.
 */
function useStage(stage: Stage): ComponentType | "missing" | null {
	const [missing, setMissing] = useState<Stage | null>(null);
	const [, tell] = useReducer((count: number) => count + 1, 0);
	useEffect(() => {
		const bring = async (each: Stage) => {
			if (!here.has(each)) here.set(each, await LOADS[each]());
		};
		bring(stage).then(
			() => {
				tell();
				for (const other of STAGES) bring(other).catch(() => undefined);
			},
			() => setMissing(stage),
		);
	}, [stage]);
	return here.get(stage) ?? (missing === stage ? "missing" : null);
}
