import { angleOf, isSelected, runOf } from "@baywright/editor";
import { capital, formatAngle, wallName } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { setAngle, setRun } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, useBayAtEase } from "../desk/on-table.ts";
import { AngleField } from "../fields/angle-field.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { showLength } from "../fields/read-length.ts";
import { AddWall } from "./add-wall.tsx";
import { bringIntoView } from "./bring-into-view.ts";
import { CornerDetail } from "./corner-detail.tsx";
import { saySettled } from "./say-settled.ts";
import { Section } from "./section.tsx";
import { WallDetail, WallGist } from "./wall-detail.tsx";

/** The walls as a fitter tapes them: run, angle, run; the wall or corner chosen with all that can be set on it. */
export function RunsPanel() {
	const walls = useBay((bay) => Math.max(0, bay.corners.length - 1));
	return (
		<Section title="Walls" holds={HOLDS} gist={walls === 1 ? "1 run" : `${walls} runs`}>
			<p className="quiet">
				{walls === 0
					? "From the left, as seen from the room: a run, an angle, a run."
					: "Type a run and the rest of the bay moves along; type an angle and what is beyond it, seen from the middle, turns."}
			</p>
			<ol className="runs">
				{Array.from({ length: walls }, (_, wall) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a wall is known by its index
					<RunRow key={wall} wall={wall} walls={walls} />
				))}
			</ol>
			<AddWall />
		</Section>
	);
}

function RunRow({ wall, walls }: { readonly wall: number; readonly walls: number }) {
	const name = wallName(wall, walls);
	const bay = useDesk((state) => state.bay);
	const unit = useDesk((state) => state.shown.display.length);
	const run = useBayAtEase((on) => runOf(on.corners, wall));
	const angle = useBayAtEase((on) => angleOf(on.corners, wall + 1, on.walls));
	const chosen = useDesk(({ selection }) => isSelected(selection, "wall", wall) || isSelected(selection, "bow", wall));
	const corner = useDesk(({ selection }) => chosenCorner(selection, wall));
	const row = useRef<HTMLLIElement>(null);
	const { change, select } = desk.getState();
	useEffect(() => {
		if ((chosen || corner !== null) && row.current) bringIntoView(row.current);
	}, [chosen, corner]);
	return (
		<li ref={row} className={chosen ? "run chosen" : "run"} data-row="">
			<LengthField
				label={capital(name)}
				value={run}
				least={1}
				commit={(mm) =>
					saySettled(
						change(`run of the ${name}`, setRun(desk.getState().job, bay, wall, mm)),
						mm,
						({ corners }) => runOf(corners, wall),
						(figure) => showLength(figure, unit),
					)
				}
				onFocus={() => select({ kind: "wall", index: wall })}
			/>
			{chosen ? <WallDetail wall={wall} name={name} /> : <WallGist wall={wall} />}
			{wall === walls - 1 ? null : (
				<AngleField
					label={`Corner ${wall + 1}`}
					value={angle}
					commit={(degrees) =>
						saySettled(
							change(`angle of corner ${wall + 1}`, setAngle(desk.getState().job, bay, wall + 1, degrees)),
							degrees,
							({ corners, walls: faces }) => angleOf(corners, wall + 1, faces),
							formatAngle,
						)
					}
					onFocus={() => select({ kind: "corner", index: wall + 1 })}
				/>
			)}
			{corner === null ? null : <CornerDetail corner={corner} walls={walls} />}
		</li>
	);
}

/** The corner chosen, if it is at this wall's right, or at its left end where the bay begins. */
function chosenCorner(selection: ReturnType<typeof desk.getState>["selection"], wall: number): number | null {
	if (selection?.kind !== "corner") return null;
	const own = selection.index === wall + 1 || (wall === 0 && selection.index === 0);
	return own ? selection.index : null;
}

const HOLDS = ["wall", "bow", "corner"] as const;
