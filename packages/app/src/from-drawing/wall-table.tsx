import { formatAngle, formatLength } from "@baywright/setout";
import { chordOf, isTaken, roomAngle, sagittaOf, type WallImport } from "@baywright/sheets/read";
import { useDesk } from "../desk/desk.ts";

/** Every wall of the chain with its figures, as the bay will have them. */
export function WallTable({ walls }: { readonly walls: WallImport }) {
	const unit = useDesk((state) => state.shown.display.length);
	const { shown, closed } = walls;
	const bowed = shown.some(({ bulge }) => bulge !== 0);
	const show = (mm: number) => formatLength(mm, unit, { precision: 1 });
	return (
		<table className="from-drawing-walls">
			<caption className="hidden">Walls of the chain, from left to right as seen from the room</caption>
			<thead>
				<tr>
					<th scope="col">Wall</th>
					<th scope="col">Run{unit === "in" ? "" : `, ${unit}`}</th>
					{bowed ? <th scope="col">Bow</th> : null}
					<th scope="col">Angle to the next</th>
				</tr>
			</thead>
			<tbody>
				{shown.map((wall, i) => {
					const next = shown[i + 1] ?? (closed ? shown[0] : undefined);
					return (
						// biome-ignore lint/suspicious/noArrayIndexKey: a wall is known by its place
						<tr key={i} className={isTaken(walls, i) ? undefined : "from-drawing-left"}>
							<th scope="row">
								{i + 1}
								{isTaken(walls, i) ? "" : " (not taken)"}
							</th>
							<td>{show(chordOf(wall))}</td>
							{bowed ? <td>{wall.bulge === 0 ? "" : show(sagittaOf(wall))}</td> : null}
							<td>{next === undefined ? "" : formatAngle(roomAngle(wall, next))}</td>
						</tr>
					);
				})}
			</tbody>
		</table>
	);
}
