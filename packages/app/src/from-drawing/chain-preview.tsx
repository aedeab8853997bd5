import { formatLength } from "@baywright/setout";
import { headingsOf, isTaken, middleOf, type Piece, radiusOf, type WallImport } from "@baywright/sheets/read";
import { useDesk } from "../desk/desk.ts";
import { useNarrow } from "../shell/media.ts";
import { lengthsThatFit, NUMBER } from "./length-places.ts";
import { type Frame, frameFor } from "./preview-frame.ts";

/** The drawing's own size, in px where it has all its room. */
const WIDE = { width: 640, height: 400 };
const NARROW = { width: 340, height: 280 };

/** The chain as it will lie, its walls numbered on the room's side, runs outside; other lines of the layer faintly behind. */
export function ChainPreview({ walls }: { readonly walls: WallImport }) {
	const unit = useDesk((state) => state.shown.display.length);
	const size = useNarrow() ? NARROW : WIDE;
	const { shown, others } = walls;
	const frame = frameFor(shown, size);
	const taken = shown.filter((_, i) => isTaken(walls, i));
	const left = shown.filter((_, i) => !isTaken(walls, i));
	const numbers = shown.map((wall) => numberPlace(wall, frame));
	const lengths = lengthsThatFit(taken, left, numbers, frame, (mm) => formatLength(mm, unit));
	return (
		<svg
			className="from-drawing-preview"
			viewBox={`0 0 ${size.width} ${size.height}`}
			role="img"
			aria-label={`The chain of ${shown.length === 1 ? "1 wall" : `${shown.length} walls`}, ${taken.length} of them taken`}
		>
			<path className="preview-others" d={others.map((piece) => dataOf(piece, frame)).join("")} />
			<path className="preview-left" d={left.map((piece) => dataOf(piece, frame)).join("")} />
			<path className="preview-taken" d={taken.map((piece) => dataOf(piece, frame)).join("")} />
			{lengths.map(({ x, y, text }) => (
				<text key={`${x} ${y}`} className="preview-length" x={x} y={y}>
					{text}
				</text>
			))}
			{numbers.map(([x, y], i) => (
				// biome-ignore lint/suspicious/noArrayIndexKey: a wall is known by its place
				<g key={i} className={isTaken(walls, i) ? "preview-number" : "preview-number preview-number-left"}>
					<circle cx={x} cy={y} r={NUMBER} />
					<text x={x} y={y}>
						{i + 1}
					</text>
				</g>
			))}
		</svg>
	);
}

/** Off the middle of the wall's face, into the room. */
function numberPlace(wall: Piece, { at }: Frame): readonly [number, number] {
	const chord = (headingsOf(wall).start + headingsOf(wall).end) / 2;
	const [x, y] = at(middleOf(wall));
	return [x + Math.sin(chord) * OFF, y + Math.cos(chord) * OFF];
}

const OFF = 17;

function dataOf(piece: Piece, { at, scale }: Frame): string {
	const { from, to, bulge } = piece;
	const [start, end] = [from, to].map((p) =>
		at(p)
			.map((value) => value.toFixed(1))
			.join(" "),
	);
	if (bulge === 0) return `M${start}L${end}`;
	const radius = (Math.abs(radiusOf(piece)) * scale).toFixed(1);
	return `M${start}A${radius} ${radius} 0 ${Math.abs(bulge) > 1 ? 1 : 0} ${bulge < 0 ? 1 : 0} ${end}`;
}
