import type Konva from "konva/lib/Core.js";
import { useId, useLayoutEffect, useRef } from "react";
import { desk, useDesk } from "../desk/desk.ts";
import { type Board, createBoard } from "./board.ts";
import { EaselStage } from "./easel-stage.tsx";
import { PLAN_LAYERS } from "./layers.ts";
import "./plan.css";

/** Screens so narrow that the plan stands in a page that scrolls under one finger. */
const SCROLLING_PAGE = "(max-width: 719px)";

const BUTTON_ZOOM = 1.4;

/** The plan of the bay on the table. React makes the frame; all that is drawn in it goes from the store straight to the canvas. */
export function Plan() {
	const frame = useRef<HTMLDivElement>(null);
	const stage = useRef<Konva.Stage>(null);
	const corner = useRef<HTMLDivElement>(null);
	const scale = useRef<HTMLSpanElement>(null);
	const said = useRef<HTMLParagraphElement>(null);
	const board = useRef<Board>(null);
	const help = useId();
	const name = useDesk(({ shown, bay }) => shown.bays[bay]?.name || `bay ${bay + 1}`);

	// A layout effect: it comes after the stage is made and is undone before the stage goes.
	useLayoutEffect(() => {
		if (!frame.current || !stage.current || !corner.current || !scale.current) return;
		const page = matchMedia(SCROLLING_PAGE);
		const element = frame.current;
		const readPage = () => {
			element.dataset.scrolls = String(page.matches);
		};
		readPage();
		page.addEventListener("change", readPage);
		const made = createBoard(desk, {
			frame: element,
			stage: stage.current,
			corner: corner.current,
			scale: scale.current,
			say: (text) => {
				if (said.current) said.current.textContent = text;
			},
			scrolls: () => page.matches,
		});
		board.current = made;
		return () => {
			page.removeEventListener("change", readPage);
			board.current = null;
			made.destroy();
		};
	}, []);

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
				Tab goes from corner to wall to the wall's bow to the next corner; arrows move what is chosen by 1 mm, with
				Shift by 10 mm. Plus and minus zoom, 0 fits the bay, Escape lets go. The tables beside the plan hold every
				figure.
			</p>
			<p ref={said} className="plan-said" role="status" />
		</div>
	);
}
