import { setEnd, wallLength } from "@baywright/editor";
import { capital, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, useBay } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { PlaceFields } from "./place-fields.tsx";
import { Section } from "./section.tsx";
import { ThingRow } from "./thing-row.tsx";

/** Where the track begins and where it ends: on a wall, or with the bay. */
export function EndsPanel() {
	const walls = useBay((bay) => bay.walls.length);
	return (
		<Section title="Ends of the track" holds={HOLDS} gist={<EndsGist />}>
			{walls === 0 ? (
				<p className="quiet">No ends until there is a wall.</p>
			) : (
				<ul className="things">
					<EndRow index={0} />
					<EndRow index={1} />
				</ul>
			)}
		</Section>
	);
}

const ENDS = [
	{ key: "start", name: "left end", sign: "L" },
	{ key: "end", name: "right end", sign: "R" },
] as const;

function EndRow({ index }: { readonly index: 0 | 1 }) {
	const { key, name, sign } = ENDS[index];
	const set = useBay((bay) => bay.track[key]);
	const walls = useBay((bay) => bay.walls.length);
	const last = useBay((bay) => wallLength(bay, bay.walls.length - 1));
	const place = set ?? (index === 0 ? { wall: 0, at: 0 } : { wall: walls - 1, at: last });
	return (
		<ThingRow
			thing={{ kind: "track-end", index }}
			name={`${capital(name)} of the track`}
			sign={sign}
			gist={
				set === null ? (
					`At the bay’s ${name}`
				) : (
					<>
						{capital(wallName(set.wall, walls))}
						<span className="thing-figures">
							<Figure of={(state) => bayOnTable(state).track[key]?.at} />
						</span>
					</>
				)
			}
		>
			<PlaceFields
				place={place}
				set={(to) => {
					editBay(`${name} of the track`, (bay) => setEnd(bay, key, to));
				}}
			/>
			<Button
				className="button"
				isDisabled={set === null}
				onPress={() => {
					editBay(`track to the ${name} of the bay`, (bay) => setEnd(bay, key, null));
				}}
			>
				To the bay’s {name}
			</Button>
		</ThingRow>
	);
}

function EndsGist() {
	const set = useBay(({ track }) => track.start !== null || track.end !== null);
	return set ? "set" : "as the bay’s";
}

const HOLDS = ["track-end"] as const;
