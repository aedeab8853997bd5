import { type CableZone, cornerName, formatLength, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay, useLength, usePlan, usePlanPart } from "../desk/on-table.ts";
import { CutCheck } from "../panels/cut-check.tsx";
import { MarkRow } from "./mark-row.tsx";
import { topOfAll } from "./marks.ts";
import { SpanFields } from "./span-fields.tsx";
import { forgetHole, type Ticks } from "./ticks.ts";
import { useMarks } from "./use-marks.ts";

const UNITS = { mm: "millimetres", cm: "centimetres", in: "inches" } as const;

/** Everything to mark out on the walls and on the track, in the order of the work, to be ticked off. */
export function MarksView() {
	const { marks, ticks, done } = useMarks();
	const unit = useDesk((state) => state.shown.display.length);
	const height = usePlan((plan) => plan.height);
	const at =
		height === null
			? ", at the height of the track: it is not set yet how high"
			: `, at ${formatLength(height, unit)} above the floor`;
	return (
		<>
			<section aria-label="Marks">
				<div className="marks-head">
					<p>
						Along the wall face, in {UNITS[unit]}
						{at}.
					</p>
					<p className="marks-done" role="status">
						{done} of {marks.length}
					</p>
				</div>
				<CableNote />
				<ol className="marks">
					{marks.map((mark) => (
						<MarkRow
							key={mark.name}
							mark={mark}
							marks={marks}
							tick={ticks.of.get(mark.name) ?? { state: "open" }}
							fitted={ticks.fitted.get(mark.name) ?? null}
						/>
					))}
				</ol>
				<SpareHoles ticks={ticks} />
			</section>
			<section className="as-fitted" aria-label="As fitted">
				<h2>As fitted</h2>
				<SpanFields marks={marks} ticks={ticks} />
				<CutCheck />
			</section>
		</>
	);
}

/** What to do before each hole where cables may run, and whose figures say so. */
function CableNote() {
	const count = usePlan(({ fixings }) => fixings.filter(({ zones }) => zones.length > 0).length);
	const top = usePlanPart(topOfAll);
	if (count === 0) return null;
	return (
		<p className="marks-cables">
			{top === null ? "" : `${topWords(top)} `}Find cables before every hole, and switch them off. Figures of Great
			Britain.
		</p>
	);
}

function topWords(zone: CableZone): string {
	if (zone.kind === "wall-top" && zone.below === null)
		return "The ceiling’s or the track’s height is not known: every hole may lie where cables run along the top of the wall.";
	return `Every hole lies ${zone.sure ? "" : "perhaps "}where cables run along the top of the wall.`;
}

/** Holes drilled where the plan has no bracket any more: they do not go away by themselves. */
function SpareHoles({ ticks }: { readonly ticks: Ticks }) {
	const holes = useBay((bay) => bay.fitted.brackets);
	const walls = useBay((bay) => bay.walls.length);
	const show = useLength();
	if (ticks.spare.length === 0) return null;
	return (
		<div className="spare-holes">
			<h2>Drilled, but no bracket goes there now</h2>
			<ul>
				{ticks.spare.map((index) => {
					const hole = holes[index];
					if (hole === undefined) return null;
					const place = `${show(hole.at)} from ${cornerName(hole.wall, walls)}, ${wallName(hole.wall, walls)}`;
					return (
						<li key={index}>
							<span>{place}</span>
							<Button
								className="button"
								aria-label={`Forget the hole ${place}`}
								onPress={() => editBay("forget a hole", (bay) => forgetHole(bay, index))}
							>
								Forget
							</Button>
						</li>
					);
				})}
			</ul>
		</div>
	);
}
