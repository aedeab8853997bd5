import { EDGE_HANDLE, type EdgeHandle } from "../edge-hand.ts";
import type { Palette } from "../palette.ts";
import type { Pen } from "./pen.ts";

interface Edges {
	readonly edges: readonly EdgeHandle[];
	/** The one in hand. */
	readonly held: number | null;
	readonly palette: Palette;
}

/** px: half an arrow's length and half its breadth. */
const ARROW = { out: 3.6, half: 2.4 };

/** Handles by which curtains are drawn: a disc with an arrow either way, on a stem to the leading edge. */
export function paintLeadingEdges(pen: Pen, { edges, held, palette }: Edges): void {
	for (const { curtain, edge, at, turn } of edges) {
		pen.strokeStyle = palette.stack;
		pen.lineWidth = 1.5;
		pen.beginPath();
		pen.moveTo(edge.left, edge.top);
		pen.lineTo(at.left, at.top);
		pen.stroke();
		pen.beginPath();
		pen.arc(at.left, at.top, EDGE_HANDLE, 0, 2 * Math.PI);
		pen.fillStyle = curtain === held ? palette.stack : palette.sheet;
		pen.fill();
		pen.stroke();
		pen.fillStyle = curtain === held ? palette.sheet : palette.stack;
		for (const way of [-1, 1]) paintArrow(pen, at.left, at.top, turn, way);
	}
}

function paintArrow(pen: Pen, left: number, top: number, turn: number, way: number): void {
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	const place = (along: number, across: number) =>
		[left + along * cos - across * sin, top + along * sin + across * cos] as const;
	pen.beginPath();
	pen.moveTo(...place(way * (ARROW.out + 1), 0));
	pen.lineTo(...place(way * 1.2, ARROW.half));
	pen.lineTo(...place(way * 1.2, -ARROW.half));
	pen.closePath();
	pen.fill();
}
