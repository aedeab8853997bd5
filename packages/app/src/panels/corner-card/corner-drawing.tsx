import { type CornerCard, formatLength } from "@baywright/setout";
import { useDesk } from "../../desk/desk.ts";
import type { CardInput } from "./card-input.ts";
import { frameOf, type Spot } from "./corner-frame.ts";
import { Dimension, Word } from "./dimension.tsx";

const WIDTH = 440;
/** Screen units: how thick the wall is drawn, and how far off its face the two rows of figures stand. */
const WALL = 14;
const NEAR_ROW = 32;
const FAR_ROW = 62;

/** The corner drawn true to scale, seen from above, the room below. */
export function CornerDrawing({ input, card }: { readonly input: CardInput; readonly card: CornerCard }) {
	const unit = useDesk((state) => state.shown.display.length);
	const show = (mm: number) => formatLength(mm, unit);
	const frame = frameOf(input, card, WIDTH);
	const line = (...spots: readonly Spot[]) =>
		spots
			.map(frame.at)
			.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`)
			.join(" L");
	const radius = (input.radius * frame.scale).toFixed(2);
	const bend = `A${radius} ${radius} 0 0 1 ${line(frame.bend.to)}`;
	const track = `M${line(frame.ends[0], frame.bend.from)} ${bend} L${line(frame.ends[1])}`;
	const face = line(frame.tips[0], frame.corner, frame.tips[1]);
	const thick = WALL / frame.scale;
	const [x, y] = frame.at(frame.middle);

	return (
		<svg
			className="drawing"
			viewBox={`0 0 ${WIDTH} ${frame.height}`}
			role="img"
			aria-label="The corner to scale, seen from above"
		>
			<defs>
				<pattern id="corner-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
					<path d="M0 0V6" stroke="var(--hatch)" strokeWidth="1" />
				</pattern>
			</defs>
			<path
				d={`M${face} L${line(frame.out(1, thick), frame.outCorner(thick), frame.out(0, thick))} Z`}
				fill="url(#corner-hatch)"
			/>
			<path d={`M${face}`} fill="none" stroke="var(--wall)" strokeWidth="2.2" />
			<path d={track} fill="none" stroke="var(--track)" strokeWidth="6" />
			<path d={track} fill="none" stroke="var(--sheet)" strokeWidth="2.6" />
			<path d={`M${line(frame.bend.from)} ${bend}`} fill="none" stroke="var(--bend)" strokeWidth="2.6" />
			{frame.brackets.map((bracket, side) => (
				<path key={side === 0 ? "left" : "right"} d={`M${line(...bracket)}`} stroke="var(--ink)" strokeWidth="6" />
			))}
			<path d={`M${line(frame.corner, frame.middle)}`} stroke="var(--soft)" strokeWidth="1.2" strokeDasharray="4 3" />
			{([0, 1] as const).map((side) => (
				<g key={side}>
					<Dimension frame={frame} side={side} to={card.setBack[side]} row={NEAR_ROW} text={show(card.setBack[side])} />
					<Dimension frame={frame} side={side} to={input.bracket} row={FAR_ROW} text={show(input.bracket)} />
				</g>
			))}
			<Word spot={[x, y + 22]} text={`R ${show(input.radius)}`} fill="var(--bend)" bold />
		</svg>
	);
}
