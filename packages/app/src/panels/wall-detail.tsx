import { deepestBow, insertCorner, LEAST_WALL, levelWall, wallLength } from "@baywright/editor";
import type { Wall } from "@baywright/setout";
import { Button } from "react-aria-components";
import { setRise, setWall } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay, useLength, usePlan } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { Pick } from "../fields/pick.tsx";

/** What is set on one wall alone: how far it bows, and how far the track stands off it. */
export function WallDetail({ wall, name }: { readonly wall: number; readonly name: string }) {
	const bay = useDesk((state) => state.bay);
	const rise = useBay((on) => on.walls[wall]?.rise ?? 0);
	const deepest = useBay((on) => deepestBow(on, wall));
	const projection = useBay((on) => on.walls[wall]?.projection ?? null);
	const usual = useBay((on) => on.track.projection);
	const ofSystem = usePlan((plan) => plan.system.projection.default);
	const surface = useBay((on) => on.walls[wall]?.surface ?? "unknown");
	const length = useBay((on) => wallLength(on, wall));
	const { change } = desk.getState();
	return (
		<div className="wall-detail">
			<LengthField
				label="Rise"
				value={rise}
				least={-deepest}
				greatest={deepest}
				commit={(mm) => change(`rise of the ${name}`, setRise(desk.getState().job, bay, wall, mm))}
				clear={() => change(`straighten the ${name}`, setRise(desk.getState().job, bay, wall, 0))}
			/>
			<LengthField
				label="Projection"
				value={projection}
				instead={usual ?? ofSystem}
				least={1}
				commit={(mm) => change(`projection on the ${name}`, setWall(bay, wall, "projection", mm))}
				clear={() => change(`projection on the ${name} as the track`, setWall(bay, wall, "projection", null))}
			/>
			<Pick
				label="Made of"
				value={surface}
				options={SURFACES}
				choose={(to) => change(`what the ${name} is made of`, setWall(bay, wall, "surface", to))}
			/>
			<p className="quiet">
				Rise: 0 is straight, over 0 bows away from the room, under 0 into it. Projection: empty is as the track.
			</p>
			<div className="pair">
				<Button className="button" isDisabled={length < 2 * LEAST_WALL} onPress={() => halve(wall, length)}>
					Put a corner in its middle
				</Button>
				<Button className="button" onPress={() => editBay(`level the ${name}`, (on) => levelWall(on, wall))}>
					Level it
				</Button>
			</div>
		</div>
	);
}

/** The corner goes to the middle of the face, and is then the one chosen. */
function halve(wall: number, length: number): void {
	editBay("put in a corner", (bay) => insertCorner(bay, wall, length / 2));
	desk.getState().select({ kind: "corner", index: wall + 1 });
}

const SURFACES: readonly (readonly [Wall["surface"], string])[] = [
	["unknown", "not known"],
	["batten", "timber batten"],
	["masonry", "masonry"],
	["plasterboard", "plasterboard"],
	["concrete", "concrete"],
	["joists", "joists"],
];

/** What was set on a wall that is not selected; nothing on most. */
export function WallGist({ wall }: { readonly wall: number }) {
	const rise = useBay((on) => on.walls[wall]?.rise ?? 0);
	const projection = useBay((on) => on.walls[wall]?.projection ?? null);
	const show = useLength();
	const words = [
		...(rise === 0 ? [] : [`rise ${show(Math.abs(rise))} ${rise > 0 ? "away from" : "into"} the room`]),
		...(projection === null ? [] : [`projection ${show(projection)}`]),
	];
	return words.length === 0 ? null : <p className="wall-gist quiet">{words.join(", ")}</p>;
}
