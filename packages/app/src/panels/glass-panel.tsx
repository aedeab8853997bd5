import { capital, wallName } from "@baywright/setout";
import { planOnTable, useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { ClearNow, LightLost } from "./clear-now.tsx";
import { Section } from "./section.tsx";

/** What each opening keeps clear as the curtains are opened now, and what they hang before. */
export function GlassPanel() {
	const count = usePlan((plan) => plan.glass.openings.length);
	const covered = usePlan((plan) => plan.covered.length);
	// With one opening the sum says it.
	if (count < 2 && covered === 0) return null;
	return (
		<Section title="Glass and obstacles" gist={gistOf(count, covered)}>
			{count < 2 ? null : (
				<table className="figures">
					<thead>
						<tr>
							<th scope="col">
								<span className="hidden">opening</span>
							</th>
							<th scope="col" className="word">
								wall
							</th>
							<th scope="col">width</th>
							<th scope="col">clear</th>
							<th scope="col">light lost</th>
						</tr>
					</thead>
					<tbody>
						{Array.from({ length: count }, (_, index) => (
							// biome-ignore lint/suspicious/noArrayIndexKey: an opening is known by its index
							<GlassRow key={index} index={index} />
						))}
					</tbody>
				</table>
			)}
			{covered === 0 ? null : <CoveredTable />}
		</Section>
	);
}

function GlassRow({ index }: { readonly index: number }) {
	const opening = usePlan((plan) => plan.glass.openings[index]?.opening ?? 0);
	const name = useBay((bay) => wallName(bay.openings[opening]?.wall ?? 0, bay.walls.length));
	return (
		<tr>
			<th scope="row">{opening + 1}</th>
			<td className="word">{capital(name)}</td>
			<td>
				<Figure of={(state) => planOnTable(state).glass.openings[index]?.width} />
			</td>
			<td>
				<ClearNow opening={opening} />
			</td>
			<td>
				<LightLost opening={opening} />
			</td>
		</tr>
	);
}

/** Obstacles that curtains hang before, with how much of each. */
function CoveredTable() {
	const covered = usePlanPart((plan) => plan.covered);
	const obstacles = useBay((bay) => bay.obstacles);
	return (
		<table className="figures">
			<thead>
				<tr>
					<th scope="col" className="word">
						covered
					</th>
					<th scope="col">open</th>
					<th scope="col">drawn</th>
				</tr>
			</thead>
			<tbody>
				{covered.map(({ obstacle, open, drawn }) => (
					<tr key={obstacle}>
						<th scope="row" className="word">
							{capital((obstacles[obstacle]?.kind ?? "obstacle").replace("-", " "))} {obstacle + 1}
						</th>
						<td>{shareOf(open)}</td>
						<td>{shareOf(drawn)}</td>
					</tr>
				))}
			</tbody>
		</table>
	);
}

const shareOf = (share: number): string => (share === 0 ? "–" : `${Math.round(100 * share)} %`);

function gistOf(openings: number, covered: number): string {
	if (openings >= 2) return `${openings} openings`;
	return covered === 1 ? "1 covered" : `${covered} covered`;
}
