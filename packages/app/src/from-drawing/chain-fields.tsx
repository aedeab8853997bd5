import { formatLength } from "@baywright/setout";
import {
	type Drawing,
	GREATEST_REACH,
	type ImportWish,
	LEAST_REACH,
	layerWords,
	type UnitName,
	USUAL_REACH,
	type WallImport,
} from "@baywright/sheets/read";
import { useDesk } from "../desk/desk.ts";
import { LengthField } from "../fields/length-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Pick } from "../fields/pick.tsx";

interface Props {
	readonly drawing: Drawing;
	readonly wish: ImportWish;
	/** Null where nothing can be shown of what is wished for. */
	readonly walls: WallImport | null;
	readonly choose: (part: ImportWish) => void;
}

/** More chains than anyone looks through. */
const MOST_CHAINS = 40;

/** What is chosen of a drawing. Whatever changes which chains there are begins with the likeliest again. */
export function ChainFields({ drawing, wish, walls, choose }: Props) {
	const afresh = { chain: undefined, walls: undefined };
	const layer = wish.layer ?? walls?.layer ?? drawing.layers[0]?.name ?? "";
	const unit = walls?.unit.unit ?? wish.unit ?? "mm";
	return (
		<div className="from-drawing-fields">
			<Pick
				label="Layer"
				value={layer}
				options={drawing.layers.map(({ name, strokes }) => [name, layerOption(name, strokes.length)] as const)}
				choose={(name) => choose({ layer: name, ...afresh })}
			/>
			<Pick
				label="One unit is"
				value={unit}
				options={[...(drawing.unit === null ? [] : [["file", "as the file says"] as const]), ...UNIT_WORDS]}
				choose={(name) => choose({ unit: name, ...afresh })}
			/>
			<NumberField
				label="Drawn at 1 :"
				value={wish.scale ?? walls?.unit.scale ?? 1}
				least={0.01}
				greatest={10_000}
				commit={(scale) => {
					choose({ scale, ...afresh });
					return null;
				}}
			/>
			<LengthField
				label="Join ends up to"
				value={wish.reach ?? USUAL_REACH}
				least={LEAST_REACH}
				greatest={GREATEST_REACH}
				commit={(reach) => {
					choose({ reach, ...afresh });
					return null;
				}}
			/>
			{walls === null ? null : <OfChain walls={walls} choose={choose} otherSide={wish.otherSide ?? false} />}
		</div>
	);
}

const UNIT_WORDS: readonly (readonly [UnitName, string])[] = [
	["mm", "a millimetre"],
	["cm", "a centimetre"],
	["m", "a metre"],
	["in", "an inch"],
	["ft", "a foot"],
];

const layerOption = (name: string, lines: number): string =>
	`${name === "" ? layerWords(name) : name}, ${lines === 1 ? "1 line" : `${lines} lines`}`;

interface OfChainProps {
	readonly walls: WallImport;
	readonly otherSide: boolean;
	readonly choose: (part: ImportWish) => void;
}

function OfChain({ walls, otherSide, choose }: OfChainProps) {
	const unit = useDesk((state) => state.shown.display.length);
	const { chains, chain, shown, first, last, closed } = walls;
	const numbers = shown.map((_, i) => [String(i), `Wall ${i + 1}`] as const);
	return (
		<>
			{chains.length > 1 ? (
				<div className="from-drawing-chain">
					<Pick
						label="Chain"
						value={String(chain)}
						options={chains
							.slice(0, MOST_CHAINS)
							.map(({ walls: its, length, closed: round }, i) => [
								String(i),
								`${i + 1}: ${its.length === 1 ? "1 wall" : `${its.length} walls`}, ${formatLength(length, unit, { unit: true })}${round ? ", closed" : ""}`,
							])}
						choose={(at) => choose({ chain: Number(at), walls: undefined })}
					/>
				</div>
			) : null}
			{shown.length > 1 ? (
				<>
					<Pick
						label="From"
						value={String(first)}
						options={numbers}
						choose={(at) => choose({ walls: [Number(at), closed ? last : Math.max(last, Number(at))] })}
					/>
					<Pick
						label="To"
						value={String(last)}
						options={numbers}
						choose={(at) => choose({ walls: [closed ? first : Math.min(first, Number(at)), Number(at)] })}
					/>
				</>
			) : null}
			<label className="from-drawing-side">
				<input
					type="checkbox"
					checked={otherSide}
					onChange={() => choose({ otherSide: !otherSide, walls: undefined })}
				/>
				The room is on the other side
			</label>
		</>
	);
}
