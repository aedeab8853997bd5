import type { BracketMeasured as Figures } from "@baywright/editor";
import { cornerName, toTenth, type WallPlace } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { planOnTable, useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import type { BracketMark, SiteMark } from "./marks.ts";
import { type FittedBracket, measure } from "./ticks.ts";

/** As far as any bracket stands off, mm (common practice, no source): one nought too many would leave no track, and no list to put it right in. */
const FURTHEST = 500;

interface Props {
	readonly mark: SiteMark & BracketMark;
	readonly marks: readonly SiteMark[];
	/** What is kept of it; null while it is not ticked. */
	readonly fitted: FittedBracket | null;
	/** Told which of the brackets it is by now: round one that is elsewhere the others may be numbered anew. */
	readonly onPlaced: (bracket: number) => void;
}

/** Where a bracket really is, taped from the corner that its row reads from, and how far it really stands off the wall. */
export function BracketMeasured({ mark, marks, fitted, onPlaced }: Props) {
	const walls = useBay((bay) => bay.walls.length);
	const { nearer, further, place, projection, standsOff } = mark;
	const face = nearer.mm + further.mm;
	// The same turn either way: from its left corner to the corner taped from, and back.
	const turned = (mm: number) => (nearer.corner === place.wall ? mm : face - mm);
	const isElsewhere = fitted !== null && fitted.wall === place.wall && fitted.at !== fitted.planned;
	// Its words stay on one line.
	const from = cornerName(nearer.corner, walls).replaceAll(" ", "\u00a0");
	const set = (figures: Figures) => {
		editBay(`bracket ${mark.number} as measured`, (bay) => measure(bay, marks, mark, figures));
		const at = figures.at === undefined ? fitted?.at : (figures.at ?? fitted?.planned);
		onPlaced(bracketNear({ ...place, at: at ?? place.at }));
		return null;
	};
	return (
		<div className="measured">
			<LengthField
				label={`Really at, from ${from}`}
				value={isElsewhere ? turned(fitted.at) : null}
				instead={nearer.mm}
				least={0}
				greatest={face}
				commit={(mm) => set({ at: toTenth(turned(mm)) })}
				clear={() => set({ at: null })}
			/>
			{standsOff === null || fitted?.projection ? (
				<LengthField
					label="Projection there"
					value={fitted?.projection ?? null}
					instead={projection}
					least={1}
					greatest={Math.max(FURTHEST, 2 * projection)}
					commit={(off) => set({ projection: off })}
					clear={() => set({ projection: null })}
				/>
			) : (
				<p className="quiet">The track bends here: what the wall’s brackets stand off is taped at another.</p>
			)}
		</div>
	);
}

function bracketNear({ wall, at }: WallPlace): number {
	const { brackets } = planOnTable(desk.getState());
	const gaps = brackets.map((each) => (each.wall === wall ? Math.abs(each.fromLeftCorner - at) : Infinity));
	return gaps.indexOf(Math.min(...gaps));
}
