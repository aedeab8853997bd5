import {
	canRemoveCorner,
	insertCorner,
	LEAST_WALL,
	levelWall,
	mirror,
	otherSide,
	removeCorner,
	straightened,
	wallLength,
} from "@baywright/editor";
import { type Bay, cornerName, wallName } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, planOnTable } from "../desk/on-table.ts";
import { type Command, type Now, onDesk } from "./command.ts";

/** What is done to walls and corners. */
export const wallCommands: readonly Command[] = [
	{
		id: "mirror",
		words: "Mirror the bay left to right",
		also: "flip handed reverse",
		can: needsWalls,
		run: ({ desk: on }) => editBay("mirror left to right", (bay) => mirror(bay, trackLength({ desk: on }))),
	},
	{
		id: "other-side",
		words: "Put the room on the other side of the walls",
		also: "turn over inside out flip",
		can: needsWalls,
		run: ({ desk: on }) => editBay("the room on the other side", (bay) => otherSide(bay, trackLength({ desk: on }))),
	},
	{
		id: "level",
		words: "Level this wall",
		also: "turn rotate square up",
		can: needsWall,
		run: (now) => onWall(now, (wall, name) => editBay(`level the ${name}`, (bay) => levelWall(bay, wall))),
	},
	{
		id: "straighten",
		words: "Straighten this wall",
		also: "bow rise flatten",
		can: (now) => {
			const wall = chosenWall(now);
			if (wall === null) return needsWall(now);
			return bayOnTable(now.desk).walls[wall]?.rise === 0 ? "It is straight already." : null;
		},
		run: (now) => onWall(now, (wall, name) => editBay(`straighten the ${name}`, (bay) => straightened(bay, wall))),
	},
	{
		id: "insert-corner",
		words: "Put a corner in the middle of this wall",
		also: "add split insert",
		can: (now) => {
			const wall = chosenWall(now);
			if (wall === null) return needsWall(now);
			return wallLength(bayOnTable(now.desk), wall) < 2 * LEAST_WALL
				? "The wall is too short for one more corner."
				: null;
		},
		run: (now) =>
			onWall(now, (wall) => {
				editBay("put in a corner", (bay) => insertCorner(bay, wall, wallLength(bay, wall) / 2));
				desk.getState().select({ kind: "corner", index: wall + 1 });
			}),
	},
	{
		id: "remove-corner",
		words: "Remove this corner",
		also: "delete join walls",
		key: "Delete",
		can: (now) => {
			const corner = chosenCorner(now);
			if (corner === null) return onDesk(now) ?? "Choose a corner first.";
			return canRemoveCorner(bayOnTable(now.desk), corner) ? null : "A bay keeps at least one wall.";
		},
		run: (now) => {
			const corner = chosenCorner(now);
			if (corner === null) return;
			const name = cornerName(corner, bayOnTable(now.desk).walls.length);
			desk.getState().select(null);
			editBay(`remove ${name}`, (bay) => removeCorner(bay, corner));
		},
	},
];

function needsWalls(now: Now): string | null {
	return onDesk(now) ?? (bayOnTable(now.desk).walls.length === 0 ? "Draw a wall first." : null);
}

function needsWall(now: Now): string | null {
	return onDesk(now) ?? (chosenWall(now) === null ? "Choose a wall first." : null);
}

/** The wall chosen, by its bar or its bow; in a bay with only one, that one. */
function chosenWall({ desk: { selection, ...on } }: Now): number | null {
	if (selection?.kind === "wall" || selection?.kind === "bow") return selection.index;
	return (on.shown.bays[on.bay] as Bay).walls.length === 1 ? 0 : null;
}

const chosenCorner = ({ desk: { selection } }: Now): number | null =>
	selection?.kind === "corner" ? selection.index : null;

function onWall(now: Now, change: (wall: number, name: string) => void): void {
	const wall = chosenWall(now);
	if (wall !== null) change(wall, wallName(wall, bayOnTable(now.desk).walls.length));
}

const trackLength = ({ desk: on }: Pick<Now, "desk">): number | null => planOnTable(on).path?.length ?? null;
