import { type CurtainSetOut, formatLength, type LengthUnit } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { usePlanPart } from "../desk/on-table.ts";
import { BehindDrawing } from "./behind-drawing.tsx";

/** What comes of one curtain, for the workroom: one column, or two where it parts in the middle. */
export function CurtainFigures({ index }: { readonly index: number }) {
	const parts = usePlanPart(({ curtains }) => curtains.filter(({ curtain }) => curtain === index));
	const unit = useDesk((state) => state.shown.display.length);
	const [first] = parts;
	if (first === undefined) return <p className="quiet">It does not hang: no track fits, or it lies off the track.</p>;
	const rows = ROWS.map(([name, of]) => [name, parts.map((part) => of(part, unit))] as const).filter(([, texts]) =>
		texts.some((text) => text !== null),
	);
	return (
		<>
			<table className="figures curtain-figures">
				<caption className="hidden">What comes of curtain {index + 1}</caption>
				{parts.length < 2 ? null : (
					<thead>
						<tr>
							<th scope="col">
								<span className="hidden">figure</span>
							</th>
							{parts.map(({ side }) => (
								<th scope="col" key={side}>
									{side} part
								</th>
							))}
						</tr>
					</thead>
				)}
				<tbody>
					{rows.map(([name, texts]) => (
						<tr key={name}>
							<th scope="row">{name}</th>
							{texts.map((text, i) => (
								// biome-ignore lint/suspicious/noArrayIndexKey: left and right
								<td key={i}>{text ?? "–"}</td>
							))}
						</tr>
					))}
				</tbody>
			</table>
			{missing(first) === null ? null : <p className="quiet">{missing(first)}</p>}
			<BehindDrawing curtain={first} />
		</>
	);
}

const lengthOf =
	(of: (one: CurtainSetOut) => number | null | undefined) =>
	(one: CurtainSetOut, unit: LengthUnit): string | null => {
		const mm = of(one);
		return mm === null || mm === undefined ? null : formatLength(mm, unit);
	};

const metres = (of: number | null | undefined): string | null =>
	of === null || of === undefined ? null : `${of.toFixed(2)} m`;

const ROWS: readonly (readonly [string, (one: CurtainSetOut, unit: LengthUnit) => string | null])[] = [
	["Finished width", lengthOf(({ finishedWidth }) => finishedWidth)],
	["Flat width", lengthOf(({ flatWidth }) => flatWidth)],
	["Widths of cloth", ({ cutting }) => (cutting === null ? null : String(cutting.widths))],
	["Cut drop", lengthOf(({ cutting }) => cutting?.cutDrop)],
	["Cloth", ({ cutting }) => metres(cutting?.metres)],
	["Lining", ({ cutting }) => metres(cutting?.liningMetres)],
	["Stack-back", lengthOf(({ stack }) => stack.to - stack.from)],
	["Hooks and gliders", ({ gliders }) => String(gliders)],
	["Made up, with lining", ({ mass }) => (mass === null ? null : `${mass.toFixed(1)} kg`)],
];

/** What must still be set for all figures. */
function missing({ cloth, drop, mass }: CurtainSetOut): string | null {
	if (cloth === null && drop === null) return "With a cloth and a finished drop: widths, cut drop, metres and weight.";
	if (cloth === null) return "With a cloth: widths, cut drop, metres and weight.";
	if (drop === null) return "With a finished drop: cut drop, metres and weight.";
	return mass === null ? "With the cloth's mass, and its lining's: the weight." : null;
}
