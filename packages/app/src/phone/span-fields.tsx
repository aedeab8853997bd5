import { setSpan, spanAcross } from "@baywright/editor";
import { bendName } from "@baywright/setout";
import { editBay } from "../desk/edit-bay.ts";
import { useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { longestSpan } from "./longest-span.ts";
import type { BracketMark, SiteMark } from "./marks.ts";
import { type Ticks, tickedAt } from "./ticks.ts";
import { phone } from "./views.ts";

interface Props {
	readonly marks: readonly SiteMark[];
	readonly ticks: Ticks;
}

/** Round each bend the span between the brackets either side of it, taped straight: a reading that says much of the corner. */
export function SpanFields({ marks, ticks }: Props) {
	const bay = useBay((each) => each);
	return marks.map((mark, i) => {
		if (mark.kind !== "bend") return null;
		const isBracket = (each: SiteMark): each is SiteMark & BracketMark => each.kind === "bracket";
		const [before, after] = [marks.slice(0, i).findLast(isBracket), marks.slice(i).find(isBracket)];
		if (before === undefined || after === undefined || before.place.wall === after.place.wall) return null;
		const [from, to] = [before, after].map((each) => tickedAt(ticks, each)) as [
			BracketMark["place"],
			BracketMark["place"],
		];
		const set = (value: number | null) => {
			// The brackets may be numbered anew: the row that stood open would be another's.
			phone.setState({ opened: null });
			return editBay(`span across ${mark.name}`, (now) => setSpan(now, from, to, value));
		};
		return (
			<LengthField
				key={mark.name}
				label={`Bracket ${before.number} to bracket ${after.number}, straight across ${bendName(mark.corners, bay.walls.length)}`}
				value={spanAcross(bay, from.wall, to.wall)?.value ?? null}
				least={1}
				greatest={longestSpan(bay, before, after)}
				commit={set}
				clear={() => set(null)}
			/>
		);
	});
}
