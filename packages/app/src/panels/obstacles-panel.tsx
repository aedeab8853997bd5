import { addObstacle, KIND_NAMES, removeObstacle, setObstacle, wallLength } from "@baywright/editor";
import { capital, type Obstacle, wallName } from "@baywright/setout";
import { useState } from "react";
import { Button } from "react-aria-components";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, useBay } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { Pick } from "../fields/pick.tsx";
import { AddOnWall } from "./add-on-wall.tsx";
import { OBSTACLE_KINDS } from "./obstacle-kinds.ts";
import { Section } from "./section.tsx";
import { removeChosen, StretchFields } from "./stretch-fields.tsx";
import { ThingRow } from "./thing-row.tsx";
import { WallPick } from "./wall-pick.tsx";

/** What is on the walls and in the way: switches, radiators, pipes. */
export function ObstaclesPanel() {
	const count = useBay((bay) => bay.obstacles.length);
	const [kind, setKind] = useState<Obstacle["kind"]>("socket");
	return (
		<Section title="Obstacles" holds={HOLDS} gist={count === 0 ? "none" : String(count)} open={count > 0}>
			<ul className="things">
				{Array.from({ length: count }, (_, index) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: an obstacle is known by its index
					<ObstacleRow key={index} index={index} />
				))}
			</ul>
			<Pick label="To add" value={kind} options={OBSTACLE_KINDS} choose={setKind} />
			<AddOnWall
				what={KIND_NAMES[kind]}
				thing={({ obstacles }) => ({ kind: "obstacle", index: obstacles.length - 1 })}
				add={(bay, wall) => addObstacle(bay, kind, wall, wallLength(bay, wall) / 2)}
			/>
		</Section>
	);
}

function ObstacleRow({ index }: { readonly index: number }) {
	const kind = useBay((bay) => bay.obstacles[index]?.kind ?? "other");
	const wall = useBay((bay) => bay.obstacles[index]?.wall ?? 0);
	const walls = useBay((bay) => bay.walls.length);
	const bottom = useBay((bay) => bay.obstacles[index]?.bottom ?? null);
	const top = useBay((bay) => bay.obstacles[index]?.top ?? null);
	const depth = useBay((bay) => bay.obstacles[index]?.depth ?? 0);
	const name = KIND_NAMES[kind];
	const set = (what: string, part: Partial<Obstacle>) =>
		editBay(`${what} of the ${name}`, (bay) => setObstacle(bay, index, part));
	return (
		<ThingRow
			thing={{ kind: "obstacle", index }}
			name={`Obstacle ${index + 1}`}
			sign={index + 1}
			gist={
				<>
					{capital(name)}, {wallName(wall, walls)}
					<span className="thing-figures">
						<Figure of={(state) => bayOnTable(state).obstacles[index]?.from} />
					</span>
				</>
			}
		>
			<Pick label="Kind" value={kind} options={OBSTACLE_KINDS} choose={(to) => set("kind", { kind: to })} />
			<WallPick wall={wall} choose={(to) => set("wall", { wall: to })} />
			<StretchFields
				of={(bay) => bay.obstacles[index]}
				name={`the ${name}`}
				set={(bay, part) => setObstacle(bay, index, part)}
			/>
			<LengthField label="Depth" value={depth} least={0} commit={(mm) => set("depth", { depth: mm })} />
			<LengthField
				label="Bottom"
				value={bottom}
				least={0}
				{...(top === null ? {} : { greatest: top - 1 })}
				commit={(mm) => set("bottom", { bottom: mm })}
				clear={() => set("bottom", { bottom: null })}
			/>
			<LengthField
				label="Top"
				value={top}
				least={(bottom ?? 0) + 1}
				commit={(mm) => set("top", { top: mm })}
				clear={() => set("top", { top: null })}
			/>
			<p className="quiet">Bottom empty: down to the floor. Top empty: up to the ceiling.</p>
			<Button
				className="button"
				onPress={() => removeChosen(`remove the ${name}`, (bay) => removeObstacle(bay, index))}
			>
				Remove the {name}
			</Button>
		</ThingRow>
	);
}

const HOLDS = ["obstacle"] as const;
