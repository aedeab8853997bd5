import { planOnTable, usePlan } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { CutCheck } from "./cut-check.tsx";
import { Section } from "./section.tsx";

/** The pieces to cut, from the left. */
export function PiecesPanel() {
	const names = usePlan((plan) => plan.pieces.map(({ name }) => name).join());
	const pieces = names === "" ? [] : names.split(",");
	return (
		<Section title="Pieces" gist={String(pieces.length)}>
			{pieces.length === 0 ? (
				<p className="quiet">No pieces until the track fits.</p>
			) : (
				<table className="figures">
					<thead>
						<tr>
							<th scope="col">
								<span className="hidden">piece</span>
							</th>
							<th scope="col">finished</th>
							<th scope="col">cut</th>
						</tr>
					</thead>
					<tbody>
						{pieces.map((name, index) => (
							<tr key={name}>
								<th scope="row">{name}</th>
								<td>
									<Figure of={(state) => planOnTable(state).pieces[index]?.finishedLength} />
								</td>
								<td className="set">
									<Figure of={(state) => planOnTable(state).pieces[index]?.cutLength} />
								</td>
							</tr>
						))}
					</tbody>
				</table>
			)}
			<CutCheck />
		</Section>
	);
}
