import { addOpening, removeOpening, setOpening, wallLength } from "@baywright/editor";
import { type Bay, capital, type Opening, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, useBay } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { AddOnWall } from "./add-on-wall.tsx";
import { Section } from "./section.tsx";
import { removeChosen, StretchFields } from "./stretch-fields.tsx";
import { ThingRow } from "./thing-row.tsx";
import { WallPick } from "./wall-pick.tsx";

/** Windows and doors in the walls, with their sills and heads. */
export function OpeningsPanel() {
	const count = useBay((bay) => bay.openings.length);
	return (
		<Section title="Openings" holds={HOLDS} gist={count === 0 ? "none" : String(count)}>
			<ul className="things">
				{Array.from({ length: count }, (_, index) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: an opening is known by its index
					<OpeningRow key={index} index={index} />
				))}
			</ul>
			<AddOnWall
				what="opening"
				thing={({ openings }) => ({ kind: "opening", index: openings.length - 1 })}
				add={(bay, wall) => addOpening(bay, { wall, ...middlePart(bay, wall) })}
			/>
		</Section>
	);
}

function OpeningRow({ index }: { readonly index: number }) {
	const wall = useBay((bay) => bay.openings[index]?.wall ?? 0);
	const walls = useBay((bay) => bay.walls.length);
	const sill = useBay((bay) => bay.openings[index]?.sill ?? null);
	const head = useBay((bay) => bay.openings[index]?.head ?? null);
	const sillDepth = useBay((bay) => bay.openings[index]?.sillDepth ?? 0);
	const set = (what: string, part: Partial<Opening>) =>
		editBay(`${what} of opening ${index + 1}`, (bay) => setOpening(bay, index, part));
	return (
		<ThingRow
			thing={{ kind: "opening", index }}
			name={`Opening ${index + 1}`}
			sign={index + 1}
			gist={
				<>
					{capital(wallName(wall, walls))}
					<span className="thing-figures">
						<Figure of={(state) => widthOf(bayOnTable(state).openings[index])} /> wide
					</span>
				</>
			}
		>
			<StretchFields
				of={(bay) => bay.openings[index]}
				name={`opening ${index + 1}`}
				set={(bay, part) => setOpening(bay, index, part)}
			/>
			<WallPick wall={wall} choose={(to) => set("wall", { wall: to })} />
			<LengthField
				label="Sill"
				value={sill}
				least={0}
				{...(head === null ? {} : { greatest: head - 1 })}
				commit={(mm) => set("sill", { sill: mm })}
				clear={() => set("sill", { sill: null })}
			/>
			<LengthField
				label="Head"
				value={head}
				least={(sill ?? 0) + 1}
				commit={(mm) => set("head", { head: mm })}
				clear={() => set("head", { head: null })}
			/>
			<LengthField
				label="Sill stands off"
				value={sillDepth}
				least={0}
				commit={(mm) => set("sill board", { sillDepth: mm })}
			/>
			<Button
				className="button"
				onPress={() => removeChosen(`remove opening ${index + 1}`, (bay) => removeOpening(bay, index))}
			>
				Remove opening {index + 1}
			</Button>
		</ThingRow>
	);
}

const widthOf = (opening: Opening | undefined) => (opening === undefined ? null : opening.to - opening.from);

/** The middle of a wall, with a hand's breadth on either side. */
function middlePart(bay: Bay, wall: number) {
	const length = wallLength(bay, wall);
	const margin = Math.min(150, length / 4);
	return { from: Math.round(margin), to: Math.round(length - margin) };
}

const HOLDS = ["opening"] as const;
