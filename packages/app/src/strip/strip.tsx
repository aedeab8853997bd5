import type Konva from "konva/lib/Core.js";
import { type RefObject, useId, useLayoutEffect, useRef, useState } from "react";
import { EaselStage } from "../canvas/easel-stage.tsx";
import { desk, useDesk } from "../desk/desk.ts";
import { createStripBoard, STRIP_LAYERS, type StripBoard } from "./board.ts";
import type { ReadFrom } from "./figures.ts";
import "./strip.css";

/** Screens so narrow that the strip stands in a page that scrolls under one finger. */
const SCROLLING_PAGE = "(max-width: 719px)";

const ENDS: readonly (readonly [ReadFrom, string])[] = [
	["left", "left end"],
	["right", "right end"],
	["both", "both"],
];

const UNITS = { mm: "mm", cm: "cm", in: "inches" } as const;

const BUTTON_ZOOM = 1.6;

/** Every piece laid flat, with all marks read from its own cut ends. The heading always says from which. */
export function Strip() {
	const [from, setFrom] = useState<ReadFrom>("left");
	const [shown, setShown] = useState<Shown>({ whole: true, left: 0, alone: null });
	const board = useRef<StripBoard>(null);
	const frame = useRef<HTMLDivElement>(null);
	const canvas = useRef<HTMLDivElement>(null);
	const stage = useRef<Konva.Stage>(null);
	const title = useId();
	const group = useId();
	const unit = useDesk((state) => UNITS[state.shown.display.length]);
	const pieces = useDesk((state) => state.plans[state.bay]?.pieces.length ?? 0);
	const isEmpty = useDesk(({ shown, bay }) => (shown.bays[bay]?.walls.length ?? 0) === 0);
	const name = useDesk((state) => (shown.alone === null ? "" : state.plans[state.bay]?.pieces[shown.alone]?.name));
	const single = shown.alone === null ? "" : `piece ${name} of ${pieces}, `;
	const words = `${single}${heading(from, unit, shown.alone === null ? pieces : 1)}`;
	useStripBoard(board, frame, canvas, stage, setShown);

	function choose(end: ReadFrom): void {
		setFrom(end);
		board.current?.readFrom(end);
	}

	return (
		<section className="strip" aria-labelledby={title}>
			<div className="strip-head">
				<h2 className="strip-title" id={title}>
					<span className="strip-name">
						<strong>Strip</strong>,{" "}
					</span>
					{words}
					{shown.left > 0 ? `; ${shown.left} more when zoomed in` : ""}
				</h2>
				<div className="strip-tools">
					{shown.alone === null ? null : <Turn alone={shown.alone} pieces={pieces} />}
					<div className="strip-zoom">
						<button
							type="button"
							className="plan-button"
							aria-label="Zoom the strip out"
							disabled={shown.whole}
							onClick={() => board.current?.zoom(1 / BUTTON_ZOOM)}
						>
							−
						</button>
						<button
							type="button"
							className="plan-button"
							aria-label="Zoom the strip in"
							disabled={pieces === 0}
							onClick={() => board.current?.zoom(BUTTON_ZOOM)}
						>
							+
						</button>
						<button type="button" className="plan-button" disabled={shown.whole} onClick={() => board.current?.fit()}>
							Fit
						</button>
					</div>
					<fieldset className="strip-ends" aria-label="Read from">
						{ENDS.map(([end, words]) => (
							<label key={end} className="strip-end">
								<input type="radio" name={group} value={end} checked={from === end} onChange={() => choose(end)} />
								{words}
							</label>
						))}
					</fieldset>
				</div>
			</div>
			<div
				ref={frame}
				className="strip-board"
				data-strip=""
				data-from={from}
				// Arrows go from bracket to bracket, with Shift along the strip; plus and minus zoom.
				role="application"
				// biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes the keyboard
				tabIndex={0}
				aria-label={`Strip, ${words}`}
			>
				<div ref={canvas} className="strip-canvas" aria-hidden="true">
					<EaselStage ref={stage} layers={STRIP_LAYERS} />
				</div>
				{pieces === 0 ? (
					<p className="strip-none">
						{isEmpty
							? "The track is laid flat here as soon as there is a wall."
							: "No piece to cut: the track does not fit yet."}
					</p>
				) : null}
			</div>
		</section>
	);
}

interface Shown {
	readonly whole: boolean;
	/** Readings left out. */
	readonly left: number;
	/** The piece shown alone. */
	readonly alone: number | null;
}

/** From piece to piece of a strip that shows one at a time. */
function Turn({ alone, pieces }: { readonly alone: number; readonly pieces: number }) {
	const turn = (way: 1 | -1) => desk.getState().select({ kind: "piece", index: alone + way });
	return (
		<>
			<button
				type="button"
				className="plan-button"
				aria-label="Previous piece"
				disabled={alone === 0}
				onClick={() => turn(-1)}
			>
				‹
			</button>
			<button
				type="button"
				className="plan-button"
				aria-label="Next piece"
				disabled={alone === pieces - 1}
				onClick={() => turn(1)}
			>
				›
			</button>
		</>
	);
}

function useStripBoard(
	board: RefObject<StripBoard | null>,
	frame: RefObject<HTMLDivElement | null>,
	canvas: RefObject<HTMLDivElement | null>,
	stage: RefObject<Konva.Stage | null>,
	setShown: (update: (before: Shown) => Shown) => void,
): void {
	// A layout effect: it comes after the stage is made and is undone before the stage goes.
	useLayoutEffect(() => {
		const element = frame.current;
		if (!element || !canvas.current || !stage.current) return;
		const page = matchMedia(SCROLLING_PAGE);
		const readPage = () => {
			element.dataset.scrolls = String(page.matches);
		};
		readPage();
		page.addEventListener("change", readPage);
		const made = createStripBoard(desk, {
			frame: element,
			canvas: canvas.current,
			stage: stage.current,
			scrolls: () => page.matches,
			shows: (whole, left, alone) =>
				setShown((before) =>
					before.whole === whole && before.left === left && before.alone === alone ? before : { whole, left, alone },
				),
		});
		board.current = made;
		return () => {
			page.removeEventListener("change", readPage);
			board.current = null;
			made.destroy();
		};
	}, [board, frame, canvas, stage, setShown]);
}

function heading(from: ReadFrom, unit: string, pieces: number): string {
	const each = pieces > 1 ? "each piece" : "the piece";
	if (from === "both") return `readings in ${unit}: upper from the left, lower from the right cut end of ${each}`;
	return `readings in ${unit} from the ${from} cut end of ${each}`;
}
