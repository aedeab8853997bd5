import type Konva from "konva/lib/Core.js";
import { useCallback, useEffect, useId, useLayoutEffect, useRef, useState } from "react";
import { desk, useDesk } from "../desk/desk.ts";
import { screen, useScreen } from "../desk/screen.ts";
import { toolbox, useToolbox } from "../desk/toolbox.ts";
import { NARROW } from "../shell/media.ts";
import { type Board, createBoard } from "./board.ts";
import { EaselStage } from "./easel-stage.tsx";
import type { Box } from "./labels/box.ts";
import { PLAN_LAYERS } from "./layers.ts";
import { ToolHint } from "./tool-hint.tsx";
import { ToolRow } from "./tool-row.tsx";
import type { PlanFigure } from "./typed-figure.ts";
import { TypedOnPlan } from "./typed-on-plan.tsx";
import { WallEntry } from "./wall-entry.tsx";
import "./plan.css";

const BUTTON_ZOOM = 1.4;

/** The plan of the bay on the table. React makes the frame; all that is drawn in it goes from the store straight to the canvas. */
export function Plan() {
	const frame = useRef<HTMLDivElement>(null);
	const stage = useRef<Konva.Stage>(null);
	const head = useRef<HTMLDivElement>(null);
	const corner = useRef<HTMLDivElement>(null);
	const scale = useRef<HTMLSpanElement>(null);
	const said = useRef<HTMLParagraphElement>(null);
	const board = useRef<Board>(null);
	const help = useId();
	const [typing, setTyping] = useState<{ readonly figure: PlanFigure; readonly box: Box } | null>(null);
	const [told, setTold] = useState("");
	const forgetTold = useCallback(() => setTold(""), []);
	const drawing = useToolbox((state) => state.entry !== null);
	const wanted = useScreen((state) => state.wanted);
	const name = useDesk(({ shown, bay }) => shown.bays[bay]?.name || `bay ${bay + 1}`);

	// A layout effect: it comes after the stage is made and is undone before the stage goes.
	useLayoutEffect(() => {
		if (!frame.current || !stage.current || !head.current || !corner.current || !scale.current) return;
		// On a phone the plan stands in a page that scrolls under one finger.
		const page = matchMedia(NARROW);
		const element = frame.current;
		const readPage = () => {
			element.dataset.scrolls = String(page.matches);
		};
		readPage();
		page.addEventListener("change", readPage);
		const made = createBoard(desk, toolbox, {
			frame: element,
			stage: stage.current,
			head: head.current,
			corner: corner.current,
			scale: scale.current,
			say: (text) => {
				if (said.current) said.current.textContent = text;
			},
			tell: setTold,
			type: (figure, box) => setTyping({ figure, box }),
			// A phone has no stages: readings stand under its plan.
			surveying: () => page.matches || screen.getState().stage === "survey",
			// On a phone a finger would take them for the ends' corners: sliders under its plan do the same.
			hanging: () => !page.matches && screen.getState().stage === "curtains",
			scrolls: () => page.matches,
		});
		board.current = made;
		const stopScreen = screen.subscribe((now, before) => now.stage !== before.stage && made.refresh());
		return () => {
			stopScreen();
			page.removeEventListener("change", readPage);
			board.current = null;
			made.destroy();
		};
	}, []);

	// A bay that is to be taped comes with the tool for it in hand.
	useEffect(() => {
		if (wanted === null) return;
		toolbox.getState().take(wanted);
		screen.getState().set({ wanted: null });
		frame.current?.focus();
	}, [wanted]);

	return (
		<div
			ref={frame}
			className="plan"
			data-plan=""
			// The plan takes arrows and Tab itself: corners and walls are walked through and moved by key.
			role="application"
			// biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes the keyboard
			tabIndex={0}
			aria-label={`Plan of ${name}`}
			aria-describedby={help}
		>
			<div className="plan-canvas" aria-hidden="true">
				<EaselStage ref={stage} layers={PLAN_LAYERS} />
			</div>
			<div ref={head} className="plan-head">
				<ToolRow onTaken={() => frame.current?.focus()} />
				{drawing ? <WallEntry /> : <ToolHint told={told} forget={forgetTold} />}
			</div>
			{typing === null ? null : (
				<TypedOnPlan
					key={JSON.stringify(typing.figure)}
					{...typing}
					close={() => {
						setTyping(null);
						frame.current?.focus();
					}}
				/>
			)}
			<div ref={corner} className="plan-corner">
				<button
					type="button"
					className="plan-button"
					aria-label="Zoom out"
					onClick={() => board.current?.zoom(1 / BUTTON_ZOOM)}
				>
					−
				</button>
				<span ref={scale} className="plan-scale" title="Scale on screen at 96 pixels to the inch" />
				<button
					type="button"
					className="plan-button"
					aria-label="Zoom in"
					onClick={() => board.current?.zoom(BUTTON_ZOOM)}
				>
					+
				</button>
				<button type="button" className="plan-button" onClick={() => board.current?.fit()}>
					Fit
				</button>
			</div>
			<p id={help} className="plan-said">
				Tab goes from corner to wall to the wall's bow and on, then to openings, obstacles and along the track; arrows
				move what is chosen by 1 mm, with Shift by 10 mm; Delete removes it. W draws walls: type a run, Enter places it,
				Tab goes to the angle. Plus and minus zoom, 0 fits the bay, Escape lets go. The tables beside the plan hold
				every figure.
			</p>
			<p ref={said} className="plan-said" role="status" />
		</div>
	);
}
