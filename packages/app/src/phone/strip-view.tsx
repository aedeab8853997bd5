import { AT_95, type BayPlan, formatLength, type Piece } from "@baywright/setout";
import { useState } from "react";
import { useDesk } from "../desk/desk.ts";
import { useLength, usePlan } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { type CutEnd, jointAt, stripReadings } from "./strip-readings.ts";

const ENDS: readonly (readonly [CutEnd, string])[] = [
	["left", "left cut end"],
	["right", "right cut end"],
];

/** Each piece as it lies along a tape: its cut length, and every mark read from one of its own cut ends. */
export function StripView() {
	const plan = usePlan((each) => each);
	const [from, setFrom] = useState<CutEnd>("left");
	return (
		<section aria-label="Strip" className="strip-view">
			<div className="strip-view-head">
				<Choice label="Tape from the" value={from} options={ENDS} choose={setFrom} />
			</div>
			{plan.pieces.map((piece) => (
				<PieceStrip key={piece.name} plan={plan} piece={piece} from={from} />
			))}
		</section>
	);
}

interface Props {
	readonly plan: BayPlan;
	readonly piece: Piece;
	readonly from: CutEnd;
}

function PieceStrip({ plan, piece, from }: Props) {
	const show = useLength();
	const unit = useDesk((state) => state.shown.display.length);
	const other = from === "left" ? "right" : "left";
	const takenUp = piece.finishedLength - piece.cutLength;
	return (
		<section className="piece-strip" aria-label={`Piece ${piece.name}`}>
			<header className="piece-head">
				<h2>Cut {piece.name}</h2>
				<p className="piece-cut">
					<span className="figure">{show(piece.cutLength)}</span>
					{unit === "in" ? null : <span className="piece-unit">{unit}</span>}
				</p>
				<p className="piece-sure">
					{piece.sd === null
						? "± not known until the bay is taped"
						: `± ${formatLength(AT_95 * piece.sd, unit, { precision: 1 })} at 95 %`}
				</p>
				{takenUp < LEAST_TOLD ? null : (
					<p className="piece-sure">
						finished {show(piece.finishedLength)}, less {show(takenUp)} for end hardware
					</p>
				)}
			</header>
			<ol className="tape-list" aria-label={`Marks from the ${from} cut end`}>
				<EndLine mm={0} end={from} joint={jointAt(piece, from)} />
				{stripReadings(plan, piece, from).map(({ mm, kind, words, bent }, i) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a mark is known by its place on the strip
					<li key={i} className={`tape-line tape-${kind}`} data-bent={bent || undefined}>
						<span className="tape-figure figure">{show(mm)}</span>
						<span className="tape-words">{words}</span>
					</li>
				))}
				<EndLine mm={piece.cutLength} end={other} joint={jointAt(piece, other)} />
			</ol>
		</section>
	);
}

/** What end hardware takes up is told from here on, mm. */
const LEAST_TOLD = 0.05;

function EndLine({ mm, end, joint }: { readonly mm: number; readonly end: CutEnd; readonly joint: number | null }) {
	const show = useLength();
	const words = mm === 0 ? `${end} cut end: hold the tape here` : `cut here, ${end} cut end`;
	return (
		<li className="tape-line tape-cut">
			<span className="tape-figure figure">{show(mm)}</span>
			<span className="tape-words">
				{words}
				{joint === null ? "" : `, joint ${joint + 1}`}
			</span>
		</li>
	);
}
