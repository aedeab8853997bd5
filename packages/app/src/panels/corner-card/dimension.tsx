import type { CornerFrame, Spot } from "./corner-frame.ts";

interface DimensionProps {
	readonly frame: CornerFrame;
	readonly side: 0 | 1;
	/** From the corner along the wall face, mm. */
	readonly to: number;
	/** How far outside the wall face it stands, screen units. */
	readonly row: number;
	readonly text: string;
}

/** A length along a wall face from the corner, written outside the wall. */
export function Dimension({ frame, side, to, row, text }: DimensionProps) {
	const off = row / frame.scale;
	const [fromX, fromY] = frame.at(frame.along(side, 0, -off));
	const [toX, toY] = frame.at(frame.along(side, to, -off));
	const [footX, footY] = frame.at(frame.along(side, to, 0));
	return (
		<g stroke="var(--soft)" strokeWidth="1.2">
			<path d={`M${fromX} ${fromY}L${toX} ${toY}`} fill="none" />
			<path d={`M${footX} ${footY}L${toX} ${toY}`} strokeDasharray="2 3" />
			<circle cx={fromX} cy={fromY} r="2.4" fill="var(--soft)" stroke="none" />
			<circle cx={toX} cy={toY} r="2.4" fill="var(--soft)" stroke="none" />
			<Word spot={frame.at(frame.along(side, to / 2, -off))} text={text} fill="var(--ink)" cleared />
		</g>
	);
}

interface WordProps {
	readonly spot: Spot;
	readonly text: string;
	readonly fill: string;
	readonly bold?: boolean;
	/** Keeps the line behind it clear of the word. */
	readonly cleared?: boolean;
}

export function Word({ spot, text, fill, bold = false, cleared = false }: WordProps) {
	return (
		<text
			x={spot[0]}
			y={spot[1]}
			fill={fill}
			stroke={cleared ? "var(--sheet)" : "none"}
			strokeWidth={cleared ? 7 : 0}
			paintOrder="stroke"
			fontSize="14"
			fontWeight={bold ? 600 : 400}
			textAnchor="middle"
			dominantBaseline="central"
		>
			{text}
		</text>
	);
}
