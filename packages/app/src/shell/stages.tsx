import { type KeyboardEvent, useRef } from "react";
import { STAGES, setStage, useScreen } from "../desk/screen.ts";
import { STAGE_WORDS } from "./stage-words.ts";

/** The stages of the job, drawn as the track with a bracket at each. Arrows go from one to the next. */
export function Stages() {
	const stage = useScreen((state) => state.stage);
	const row = useRef<HTMLDivElement>(null);

	function onKeyDown(event: KeyboardEvent): void {
		const to = STEPS[event.key]?.(STAGES.indexOf(stage));
		const next = to === undefined ? undefined : STAGES[(to + STAGES.length) % STAGES.length];
		if (next === undefined) return;
		event.preventDefault();
		setStage(next);
		row.current?.querySelector<HTMLElement>(`#stage-${next}`)?.focus();
	}

	return (
		<div ref={row} className="stages" role="tablist" aria-label="Stages of the job" onKeyDown={onKeyDown}>
			{STAGES.map((each) => (
				<button
					key={each}
					type="button"
					role="tab"
					id={`stage-${each}`}
					className="stage"
					aria-selected={each === stage}
					aria-controls={STAGE_PANEL}
					tabIndex={each === stage ? 0 : -1}
					onClick={() => setStage(each)}
				>
					{STAGE_WORDS[each]}
				</button>
			))}
		</div>
	);
}

/** The part of the page that shows the stage at hand. */
export const STAGE_PANEL = "stage-panel";

const STEPS: Readonly<Record<string, (at: number) => number>> = {
	ArrowLeft: (at) => at - 1,
	ArrowRight: (at) => at + 1,
	Home: () => 0,
	End: () => STAGES.length - 1,
};
