import { wallName } from "@baywright/setout";
import { planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { capital } from "../fields/capital.ts";
import { Figure } from "../fields/figure.tsx";
import { Section } from "./section.tsx";

/** What each opening keeps clear with the curtains open. */
export function GlassPanel() {
	const count = usePlan((plan) => plan.glass.openings.length);
	// With one opening the sum says it.
	if (count < 2) return null;
	return (
		<Section title="Glass left clear" gist={`${count} openings`}>
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
					</tr>
				</thead>
				<tbody>
					{Array.from({ length: count }, (_, index) => (
						// biome-ignore lint/suspicious/noArrayIndexKey: an opening is known by its index
						<GlassRow key={index} index={index} />
					))}
				</tbody>
			</table>
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
				<Figure of={(state) => planOnTable(state).glass.openings[index]?.clearOpen} />
			</td>
		</tr>
	);
}
