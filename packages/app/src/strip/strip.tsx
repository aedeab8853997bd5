import type Konva from "konva/lib/Core.js";
import { type RefObject, useId, useLayoutEffect, useRef, useState } from "react";
import { EaselStage } from "../canvas/easel-stage.tsx";
import { ZoomButtons } from "../canvas/zoom-buttons.tsx";
import { desk, useDesk } from "../desk/desk.ts";
import { useScreen } from "../desk/screen.ts";
import { createStripBoard, STRIP_LAYERS, type StripBoard } from "./board.ts";
import type { ReadFrom } from "./figures.ts";
import { HEAD_UNITS, HeadChoice } from "./head-choice.tsx";
import type { LoadShown } from "./loads.ts";
import { LoadsFoot } from "./loads-foot.tsx";
import "./loads.css";
import "./strip.css";

const ENDS: readonly (readonly [ReadFrom, string])[] = [
	["left", "left end"],
	["right", "right end"],
	["both", "both"],
];

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
	const unit = useDesk((state) => HEAD_UNITS[state.shown.display.length]);
	const pieces = useDesk((state) => state.plans[state.bay]?.pieces.length ?? 0);
	const isEmpty = useDesk(({ shown, bay }) => (shown.bays[bay]?.walls.length ?? 0) === 0);
	const name = useDesk((state) => (shown.alone === null ? "" : state.plans[state.bay]?.pieces[shown.alone]?.name));
	const single = shown.alone === null ? "" : `piece ${name} of ${pieces}, `;
	const words = `${single}${heading(from, unit, shown.alone === null ? pieces : 1)}`;
	const [load, setLoad] = useState<LoadShown>("greatest");
	const showsLoads = useShowsLoads();
	useStripBoard(board, frame, canvas, stage, setShown);
	useLayoutEffect(() => board.current?.showLoads(showsLoads ? load : null), [load, showsLoads]);

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
						<ZoomButtons
							what="the strip"
							whole={shown.whole}
							outDisabled={shown.whole}
							inDisabled={pieces === 0}
							step={BUTTON_ZOOM}
							zoom={(factor) => board.current?.zoom(factor)}
							fit={() => board.current?.fit()}
						/>
					</div>
					<HeadChoice label="Read from" options={ENDS} value={from} choose={choose} />
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
			{showsLoads ? <LoadsFoot shown={load} choose={setLoad} /> : null}
		</section>
	);
}

/** Loads hang under the strip where curtains and brackets are settled, as far as any are known. */
function useShowsLoads(): boolean {
	const isTheirStage = useScreen(({ stage }) => stage === "track" || stage === "curtains");
	const isKnown = useDesk((state) => (state.plans[state.bay]?.loads.length ?? 0) > 0);
	return isTheirStage && isKnown;
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
		if (!frame.current || !canvas.current || !stage.current) return;
		const made = createStripBoard(desk, {
			frame: frame.current,
			canvas: canvas.current,
			stage: stage.current,
			shows: (whole, left, alone) =>
				setShown((before) =>
					before.whole === whole && before.left === left && before.alone === alone ? before : { whole, left, alone },
				),
		});
		board.current = made;
		return () => {
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
