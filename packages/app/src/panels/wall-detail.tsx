import { deepestBow } from "../canvas/moving.ts";
import { setWall } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, useLength, usePlan } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";

/** What is set on one wall alone: how far it bows, and how far the track stands off it. */
export function WallDetail({ wall, name }: { readonly wall: number; readonly name: string }) {
	const bay = useDesk((state) => state.bay);
	const rise = useBay((on) => on.walls[wall]?.rise ?? 0);
	const deepest = useBay((on) => deepestBow(on, wall));
	const projection = useBay((on) => on.walls[wall]?.projection ?? null);
	const usual = useBay((on) => on.track.projection);
	const ofSystem = usePlan((plan) => plan.system.projection.default);
	const { change } = desk.getState();
	return (
		<div className="wall-detail">
			<LengthField
				label="Rise"
				value={rise}
				least={-deepest}
				greatest={deepest}
				commit={(mm) => change(`rise of the ${name}`, setWall(bay, wall, "rise", mm + 0))}
				clear={() => change(`straighten the ${name}`, setWall(bay, wall, "rise", 0))}
			/>
			<LengthField
				label="Projection"
				value={projection}
				instead={usual ?? ofSystem}
				least={1}
				commit={(mm) => change(`projection on the ${name}`, setWall(bay, wall, "projection", mm))}
				clear={() => change(`projection on the ${name} as the track`, setWall(bay, wall, "projection", null))}
			/>
			<p className="quiet">
				Rise: 0 is straight, over 0 bows away from the room, under 0 into it. Projection: empty is as the track.
			</p>
		</div>
	);
}

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
