import { type BayPlan, cordAdvice, formatLength, type Track, wallName } from "@baywright/setout";
import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { Figure } from "../fields/figure.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { Section } from "./section.tsx";
import "../styles/cautions.css";

/** Where the cord of a corded track hangs, how low, how long it is, and what the region's rules say of it. */
export function CordPanel() {
	const bay = useDesk((state) => state.bay);
	const side = useBay((on) => on.track.cordSide);
	const lowest = useBay((on) => on.track.cordLowest);
	const hung = usePlan((plan) => plan.cords?.side ?? null);
	const wanted = usePlan((plan) => plan.cords?.wanted ?? null);
	const { change } = desk.getState();
	if (hung === null) return null;
	return (
		<Section title="Cord" gist={`at the ${hung} end`}>
			<Choice
				label="Hangs at"
				value={side}
				options={SIDES}
				choose={(to) => change("side of the cord", setTrack(bay, "cordSide", to))}
			/>
			<LengthField
				label="Lowest point of its loop"
				value={lowest}
				instead={wanted}
				least={0}
				commit={(mm) => change("lowest point of the cord", setTrack(bay, "cordLowest", mm))}
				clear={() => change("cord as high as advised", setTrack(bay, "cordLowest", null))}
			/>
			<dl className="tally">
				{FIGURES.map(([term, of]) => (
					<div key={term}>
						<dt>{term}</dt>
						<dd>
							<Figure of={(state) => ofCord(planOnTable(state), of)} none="not known" />
						</dd>
					</div>
				))}
			</dl>
			<Tensioner />
			<Advice />
		</Section>
	);
}

type Cord = NonNullable<BayPlan["cords"]>;

const ofCord = ({ cords }: BayPlan, of: (cord: Cord) => number | null) => (cords === null ? null : of(cords));

const FIGURES: readonly (readonly [string, (cord: Cord) => number | null])[] = [
	["Along the track, there and back", ({ inTrack }) => inTrack],
	["Loop, from the track down", ({ hangs }) => hangs],
	["Cord in all, knots included", ({ length }) => length],
];

const SIDES: readonly (readonly [Track["cordSide"], string])[] = [
	["auto", "as it is drawn"],
	["left", "left"],
	["right", "right"],
];

function Tensioner() {
	const words = usePlanPart(({ cords, projections }) => cords && { ...cords, walls: projections.length });
	const unit = useDesk((state) => state.shown.display.length);
	if (words === null) return null;
	const { unknown, lowest, at, walls, overOpening } = words;
	const show = (mm: number) => formatLength(mm, unit, { unit: true });
	if (unknown === "no-height") return <p className="quiet">The track’s height is not set: see Heights in Survey.</p>;
	if (unknown === "track-too-low" || lowest === null)
		return <p className="quiet">The track is too low for a loop: ask for a system without a hanging cord.</p>;
	return (
		<p className="quiet">
			Tensioner on the {wallName(at.wall, walls)}, {show(at.at)} from its left corner, {show(lowest)} above the floor,
			so that the loop is always taut.
			{overOpening === null
				? ""
				: " An opening lies there: fix it to the frame or beside, or hang the cord at the other end."}
		</p>
	);
}

function Advice() {
	const region = useDesk((state) => state.shown.region);
	const { where, says, source, checked } = cordAdvice(region);
	return (
		<p className="quiet advice">
			<strong>In {where}:</strong> {says} Source: {source}; last checked {checked}. This is no proof that anything
			complies.
		</p>
	);
}
