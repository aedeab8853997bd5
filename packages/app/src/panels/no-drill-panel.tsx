import { addNoDrill, removeNoDrill, setNoDrill, wallLength } from "@baywright/editor";
import { capital, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { bayOnTable, useBay } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { AddOnWall } from "./add-on-wall.tsx";
import { Section } from "./section.tsx";
import { removeChosen, StretchFields } from "./stretch-fields.tsx";
import { ThingRow } from "./thing-row.tsx";

/** Stretches of wall that take no hole: a cable, soft plaster, somebody else's wall. */
export function NoDrillPanel() {
	const counts = useBay((bay) => bay.walls.map(({ noDrill }) => noDrill.length).join());
	const perWall = counts === "" ? [] : counts.split(",").map(Number);
	const count = perWall.reduce((sum, each) => sum + each, 0);
	const rows = perWall.flatMap((many, wall) => Array.from({ length: many }, (_, index) => ({ wall, index })));
	return (
		<Section title="Stretches without holes" holds={HOLDS} gist={count === 0 ? "none" : String(count)} open={count > 0}>
			<ul className="things">
				{rows.map(({ wall, index }, place) => (
					<StretchRow key={`${wall} ${index}`} wall={wall} index={index} place={place} />
				))}
			</ul>
			<AddOnWall
				what="stretch without holes"
				thing={(after, wall) => {
					const middle = wallLength(after, wall) / 2;
					const index = after.walls[wall]?.noDrill.findIndex(([from, to]) => from <= middle && to >= middle) ?? 0;
					return { kind: "no-drill", index, wall };
				}}
				add={(bay, wall) => {
					const middle = wallLength(bay, wall) / 2;
					const half = Math.min(100, middle / 2);
					return addNoDrill(bay, { wall, from: Math.round(middle - half), to: Math.round(middle + half) });
				}}
			/>
		</Section>
	);
}

function StretchRow({ wall, index, place }: { readonly wall: number; readonly index: number; readonly place: number }) {
	const walls = useBay((bay) => bay.walls.length);
	const name = wallName(wall, walls);
	return (
		<ThingRow
			thing={{ kind: "no-drill", index, wall }}
			name={`Stretch ${place + 1}`}
			sign={place + 1}
			gist={
				<>
					{capital(name)}
					<span className="thing-figures">
						<Figure of={(state) => bayOnTable(state).walls[wall]?.noDrill[index]?.[0]} /> to{" "}
						<Figure of={(state) => bayOnTable(state).walls[wall]?.noDrill[index]?.[1]} />
					</span>
				</>
			}
		>
			<StretchFields
				of={(bay) => {
					const [from, to] = bay.walls[wall]?.noDrill[index] ?? [];
					return from === undefined || to === undefined ? undefined : { wall, from, to };
				}}
				name={`the stretch without holes on the ${name}`}
				set={(bay, part) => {
					const [from, to] = bay.walls[wall]?.noDrill[index] ?? [0, 0];
					return setNoDrill(bay, wall, index, part.from ?? from, part.to ?? to);
				}}
			/>
			<Button
				className="button"
				onPress={() => removeChosen("remove a stretch without holes", (bay) => removeNoDrill(bay, wall, index))}
			>
				Remove this stretch
			</Button>
		</ThingRow>
	);
}

const HOLDS = ["no-drill"] as const;
