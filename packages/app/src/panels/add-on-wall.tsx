import type { Selection } from "@baywright/editor";
import { type Bay, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";

interface Props {
	readonly what: string;
	/** What is chosen once it is there. */
	readonly thing: (after: Bay, wall: number) => Selection;
	readonly add: (bay: Bay, wall: number) => Bay;
}

/** Adds a thing to the wall that is chosen, or to the middle one; there it is dragged and typed to its place. */
export function AddOnWall({ what, thing, add }: Props) {
	const walls = useDesk((state) => bayOnTable(state).walls.length);
	const wall = useDesk(({ selection }) =>
		selection?.kind === "wall" || selection?.kind === "bow" ? selection.index : (selection?.wall ?? null),
	);
	if (walls < 1) return null;
	const on = wall !== null && wall < walls ? wall : Math.floor((walls - 1) / 2);
	const name = theWall(on, walls);
	const article = /^[aeiou]/.test(what) ? "an" : "a";
	return (
		<Button
			className="button"
			onPress={() => {
				const before = desk.getState().job;
				editBay(`add ${article} ${what}`, (bay) => add(bay, on));
				const after = desk.getState();
				if (after.job === before) screen.getState().say(`No room on ${name} for ${article} ${what}.`);
				else after.select(thing(bayOnTable(after), on));
			}}
		>
			Add {article} {what} to {name}
		</Button>
	);
}

/** "the front wall", "wall 2–3". */
function theWall(wall: number, walls: number): string {
	const name = wallName(wall, walls);
	return name.startsWith("wall ") ? name : `the ${name}`;
}
