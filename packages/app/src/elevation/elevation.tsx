import type Konva from "konva/lib/Core.js";
import { type RefObject, useId, useLayoutEffect, useRef, useState } from "react";
import { EaselStage } from "../canvas/easel-stage.tsx";
import { ZoomButtons } from "../canvas/zoom-buttons.tsx";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, usePlan } from "../desk/on-table.ts";
import { openAll, openedState, useOpened } from "../desk/opened.ts";
import { HEAD_UNITS, HeadChoice } from "../strip/head-choice.tsx";
import { createElevationBoard, type ElevationBoard } from "./board.ts";
import { ELEVATION_LAYERS } from "./layers.ts";
import "../strip/strip.css";
import "./elevation.css";

const BUTTON_ZOOM = 1.4;

const CURTAINS: readonly (readonly [ReturnType<typeof openedState>, string])[] = [
	["open", "open"],
	["closed", "drawn"],
];

/** The walls unrolled side by side as seen from the room, with every height. */
export function Elevation() {
	const hangs = useBay((bay) => bay.track.draw !== "none");
	const hung = usePlan((plan) => plan.curtains.length);
	const curtains = useOpened((now) => openedState(now, hung));
	const [cables, setCables] = useState(true);
	const [whole, setWhole] = useState(true);
	const [said, setSaid] = useState("");
	const board = useRef<ElevationBoard>(null);
	const frame = useRef<HTMLDivElement>(null);
	const canvas = useRef<HTMLDivElement>(null);
	const stage = useRef<Konva.Stage>(null);
	const title = useId();
	const help = useId();
	const unit = useDesk((state) => HEAD_UNITS[state.shown.display.length]);
	const stands = usePlan((plan) => plan.chain !== null);
	useElevationBoard(board, frame, canvas, stage, setWhole, setSaid);

	return (
		<section className="elevation" aria-labelledby={title}>
			<div className="strip-head">
				<h2 className="strip-title elevation-said" id={title}>
					<span className="strip-name">
						<strong>Elevation</strong>,{" "}
					</span>
					{said === "" ? `heights in ${unit} above the floor` : said}
				</h2>
				<div className="strip-tools">
					{hangs ? (
						<HeadChoice
							label="Curtains"
							before={
								<span className="strip-word" aria-hidden="true">
									Curtains
								</span>
							}
							options={CURTAINS}
							value={curtains}
							choose={(to) => openAll(to === "open" ? 1 : 0)}
						/>
					) : null}
					<label className="strip-end">
						<input
							type="checkbox"
							aria-label="Show where cables may run"
							checked={cables}
							onChange={() => {
								setCables(!cables);
								board.current?.cables(!cables);
							}}
						/>
						Cables
					</label>
					<ZoomButtons
						what="the elevation"
						whole={whole}
						step={BUTTON_ZOOM}
						zoom={(factor) => board.current?.zoom(factor)}
						fit={() => board.current?.fit()}
					/>
				</div>
			</div>
			<div
				ref={frame}
				className="elevation-board"
				data-elevation=""
				// Tab goes from height to height, arrows move what is chosen.
				role="application"
				// biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes the keyboard
				tabIndex={0}
				aria-label="Elevation: the walls side by side, seen from the room"
				aria-describedby={help}
			>
				<div ref={canvas} className="elevation-canvas" aria-hidden="true">
					<EaselStage ref={stage} layers={ELEVATION_LAYERS} />
				</div>
				{stands ? null : <p className="strip-none">The corners make no walls yet.</p>}
				<p id={help} className="plan-said">
					Tab goes from the ceiling to the track and on through the openings and obstacles, each with its sill or
					bottom, its head or top and its edges. Arrows move what is chosen by 1 mm, with Shift by 10 mm. Plus and minus
					zoom, 0 shows all, Escape lets go.
				</p>
				<p className="plan-said" role="status">
					{said}
				</p>
			</div>
		</section>
	);
}

function useElevationBoard(
	board: RefObject<ElevationBoard | null>,
	frame: RefObject<HTMLDivElement | null>,
	canvas: RefObject<HTMLDivElement | null>,
	stage: RefObject<Konva.Stage | null>,
	setWhole: (whole: boolean) => void,
	setSaid: (said: string) => void,
): void {
	// A layout effect: it comes after the stage is made and is undone before the stage goes.
	useLayoutEffect(() => {
		if (!frame.current || !canvas.current || !stage.current) return;
		const made = createElevationBoard(desk, {
			frame: frame.current,
			canvas: canvas.current,
			stage: stage.current,
			shows: setWhole,
			says: setSaid,
		});
		board.current = made;
		return () => {
			board.current = null;
			made.destroy();
		};
	}, [board, frame, canvas, stage, setWhole, setSaid]);
}
