import { wallName } from "@baywright/setout";
import { setAngle, setRun } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay } from "../desk/on-table.ts";
import { isSelected } from "../desk/selection.ts";
import { angleOf, runOf } from "../desk/walls.ts";
import { AngleField } from "../fields/angle-field.tsx";
import { capital } from "../fields/capital.ts";
import { LengthField } from "../fields/length-field.tsx";
import { Section } from "./section.tsx";
import { WallDetail, WallGist } from "./wall-detail.tsx";

/** The walls as a fitter tapes them: run, angle, run; the one selected with its rise and projection. */
export function RunsPanel() {
	const walls = useBay((bay) => bay.corners.length - 1);
	return (
		<Section title="Walls" gist={walls === 1 ? "1 run" : `${walls} runs`}>
			<p className="quiet">
				Type a run and the rest of the bay moves along; type an angle and what is beyond it, seen from the middle,
				turns.
			</p>
			<ol className="runs">
				{Array.from({ length: Math.max(walls, 0) }, (_, wall) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a wall is known by its index
					<RunRow key={wall} wall={wall} walls={walls} />
				))}
			</ol>
		</Section>
	);
}

function RunRow({ wall, walls }: { readonly wall: number; readonly walls: number }) {
	const name = wallName(wall, walls);
	const bay = useDesk((state) => state.bay);
	const run = useBay((on) => runOf(on.corners, wall));
	const angle = useBay((on) => angleOf(on.corners, wall + 1, on.walls));
	const chosen = useDesk(({ selection }) => isSelected(selection, "wall", wall) || isSelected(selection, "bow", wall));
	const { change, select } = desk.getState();
	return (
		<li className={chosen ? "run chosen" : "run"}>
			<LengthField
				label={capital(name)}
				value={run}
				least={1}
				commit={(mm) => change(`run of the ${name}`, setRun(desk.getState().job, bay, wall, mm))}
				onFocus={() => select({ kind: "wall", index: wall })}
			/>
			{chosen ? <WallDetail wall={wall} name={name} /> : <WallGist wall={wall} />}
			{wall === walls - 1 ? null : (
				<AngleField
					label={`Corner ${wall + 1}`}
					value={angle}
					commit={(degrees) =>
						change(`angle of corner ${wall + 1}`, setAngle(desk.getState().job, bay, wall + 1, degrees))
					}
					onFocus={() => select({ kind: "corner", index: wall + 1 })}
				/>
			)}
		</li>
	);
}
