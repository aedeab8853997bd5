import {
	type BayPlan,
	type BracketLoad,
	capital,
	describe,
	formatLimit,
	formatMass,
	LOADS_SENTENCE,
	type LoadStanding,
	standingOf,
	wallName,
} from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { BracketLine } from "./bracket-line.tsx";
import { Section } from "./section.tsx";
import "./loads-panel.css";

/** What every bracket carries, against what the system allows, and what of that is not known. Nothing while no curtain is given. */
export function LoadsPanel() {
	const count = usePlan((plan) => plan.loads.length);
	const limit = usePlan(({ system }) => system.bracket.maxLoad);
	const system = usePlan((plan) => plan.system.name);
	const unit = useDesk((state) => state.shown.display.length);
	const unknown = usePlan((plan) => {
		const finding = plan.findings.find(({ code }) => code === "mass-not-known");
		return finding === undefined ? null : describe(finding, { unit, walls: plan.projections.length }).message;
	});
	const gist = usePlan(gistOf);
	if (count === 0 && unknown === null) return null;
	return (
		<Section title="Loads" gist={gist}>
			{unknown === null ? null : <p className="loads-unknown">{unknown}</p>}
			{count === 0 ? null : (
				<>
					<p className="quiet">
						{limit === null
							? `In kg. ${system} states no greatest load for its brackets: nothing here is checked.`
							: `In kg. ${system} allows ${formatLimit(limit)} kg on one bracket.`}
					</p>
					<table className="figures loads">
						<thead>
							<tr>
								<th scope="col">
									<span className="hidden">bracket</span>
								</th>
								<th scope="col" className="word">
									wall
								</th>
								<th scope="col">greatest</th>
								<th scope="col">of limit</th>
								<th scope="col">least</th>
							</tr>
						</thead>
						<tbody>
							{Array.from({ length: count }, (_, index) => (
								// biome-ignore lint/suspicious/noArrayIndexKey: a bracket is known by its index
								<LoadRow key={index} index={index} />
							))}
						</tbody>
					</table>
					<p className="quiet">{LOADS_SENTENCE} Less than nought: the bracket holds the track down.</p>
				</>
			)}
		</Section>
	);
}

/** The heaviest load and the limit; what is over it comes first. */
function gistOf({ loads, system }: BayPlan): string {
	if (loads.length === 0) return "not known";
	const over = loads.filter((load) => standingOf(load) === "over").length;
	if (over > 0) return `${over} over the limit`;
	const most = `up to ${formatMass(Math.max(...loads.map(({ greatest }) => greatest)))} kg`;
	return system.bracket.maxLoad === null ? `${most}, not checked` : most;
}

function LoadRow({ index }: { readonly index: number }) {
	const wall = usePlan((plan) => plan.brackets[index]?.wall ?? 0);
	const walls = useBay((bay) => bay.walls.length);
	const standing = usePlan((plan) => (plan.loads[index] === undefined ? "within" : standingOf(plan.loads[index])));
	const kg = (of: (load: BracketLoad) => number | null, format: (figure: number) => string = formatMass) => (
		<Figure
			of={(state) => {
				const load = planOnTable(state).loads[index];
				return load === undefined ? null : of(load);
			}}
			format={format}
		/>
	);
	return (
		<BracketLine index={index} standing={standing}>
			<td className="word">
				{capital(wallName(wall, walls))}
				{STANDINGS[standing] === "" ? null : <span className="under standing">{STANDINGS[standing]}</span>}
			</td>
			<td className="held">{kg(({ greatest }) => greatest)}</td>
			<td className="held">{kg(({ share }) => share, asPercent)}</td>
			<td>{kg(({ least }) => least)}</td>
		</BracketLine>
	);
}

const asPercent = (share: number): string => `${Math.round(100 * share)} %`;

const STANDINGS: Readonly<Record<LoadStanding, string>> = {
	over: "over the limit",
	near: "near the limit",
	within: "",
	"not-checked": "",
};
