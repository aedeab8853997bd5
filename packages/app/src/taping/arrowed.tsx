import { Word } from "../panels/corner-card/dimension.tsx";

/** px on the drawing, y down. */
export type Spot = readonly [x: number, y: number];

interface Props {
	readonly from: Spot;
	readonly to: Spot;
	readonly text: string;
}

const HEAD = 8;
const HALF_HEAD = 3.4;
/** Shorter than this the arrows stand outside, and the figure beside. */
const SHORT = 34;
const TAIL = 14;

/** What is to be taped: an arrowed line with its figure on it. */
export function Arrowed({ from, to, text }: Props) {
	const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
	if (length === 0) return null;
	const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
	const on = (along: number, aside = 0): Spot => [from[0] + ux * along - uy * aside, from[1] + uy * along + ux * aside];
	const short = length < SHORT;
	const [first, last] = short ? [on(-TAIL), on(length + TAIL)] : [from, to];
	const head = (tip: number, towards: number) =>
		`M${spot(on(tip + towards * HEAD, HALF_HEAD))}L${spot(on(tip))}L${spot(on(tip + towards * HEAD, -HALF_HEAD))}Z`;
	const heads = short ? head(0, -1) + head(length, 1) : head(0, 1) + head(length, -1);
	return (
		<g className="sketch-dimension">
			<path d={short ? `M${spot(first)}L${spot(from)}M${spot(to)}L${spot(last)}` : `M${spot(first)}L${spot(last)}`} />
			<path className="sketch-head" d={heads} />
			<Word
				spot={short ? beside(on(length + TAIL), ux, uy, text) : on(length / 2)}
				text={text}
				fill="var(--ink)"
				bold
				cleared
			/>
		</g>
	);
}

/** Past the end of a short line, by as much as the figure is wide. */
const beside = ([x, y]: Spot, ux: number, uy: number, text: string): Spot => {
	const off = 8 + Math.abs(ux) * text.length * 4;
	return [x + ux * off, y + uy * off];
};

export const spot = ([x, y]: Spot): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** Straight lines through spots, as path data. */
export const through = (spots: readonly Spot[]): string => `M${spots.map(spot).join("L")}`;
