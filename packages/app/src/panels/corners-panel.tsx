import { Button } from "react-aria-components";
import { useBay } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { CornerRow } from "./corner-row.tsx";
import { Section } from "./section.tsx";

/** Every corner as a fitter marks it out; the one selected has its radius to set. */
export function CornersPanel() {
	const count = useBay((bay) => Math.max(bay.corners.length - 2, 0));
	return (
		<Section title="Corners" gist={count === 1 ? "1 bend" : `${count} bends`}>
			{count === 0 ? (
				<p className="quiet">A straight wall: nothing to bend.</p>
			) : (
				<table className="figures corners">
					<thead>
						<tr>
							<th scope="col">
								<span className="hidden">corner</span>
							</th>
							<th scope="col">angle</th>
							<th scope="col">radius</th>
							<th scope="col">set-back</th>
							<th scope="col">sweep</th>
							<th scope="col">gap</th>
						</tr>
					</thead>
					<tbody>
						{Array.from({ length: count }, (_, i) => (
							// biome-ignore lint/suspicious/noArrayIndexKey: a corner is known by its number
							<CornerRow key={i} corner={i + 1} />
						))}
					</tbody>
				</table>
			)}
			<Button className="button" onPress={() => screen.getState().show({ kind: "corner-card", corner: null })}>
				Corner card
			</Button>
		</Section>
	);
}
