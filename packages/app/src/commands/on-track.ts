import { pinOf, releasePin, setJoints, setRadius } from "@baywright/editor";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, planOnTable } from "../desk/on-table.ts";
import { type Command, type Now, onDesk } from "./command.ts";

/** What is done to the track. */
export const trackCommands: readonly Command[] = [
	{
		id: "release-radius",
		words: "Release the radius of this corner",
		also: "bend choose for me unset",
		can: (now) => {
			const corner = bendChosen(now);
			if (corner === null) return onDesk(now) ?? "Choose a corner or a bend first.";
			const set = bayOnTable(now.desk).track.bends.some((bend) => bend.corner === corner);
			return set ? null : "Its radius is chosen for you already.";
		},
		run: (now) => {
			const corner = bendChosen(now);
			if (corner !== null) editBay(`radius of corner ${corner} left to choose`, (bay) => setRadius(bay, corner, null));
		},
	},
	{
		id: "release-pin",
		words: "Release the pin of this bracket",
		also: "bracket unpin free",
		key: "Delete",
		can: (now) => {
			const { selection } = now.desk;
			if (selection?.kind !== "bracket") return onDesk(now) ?? "Choose a bracket first.";
			return pinChosen(now) === null ? "This bracket is not pinned." : null;
		},
		run: (now) => {
			const pin = pinChosen(now);
			if (pin === null) return;
			desk.getState().select(null);
			editBay("release a bracket", (bay) => releasePin(bay, pin));
		},
	},
	{
		id: "release-pins",
		words: "Release all pins",
		also: "brackets unpin",
		can: (now) => onDesk(now) ?? (bayOnTable(now.desk).track.brackets.length === 0 ? "No bracket is pinned." : null),
		run: () => editBay("release all pins", (bay) => ({ ...bay, track: { ...bay.track, brackets: [] } })),
	},
	{
		id: "joints-auto",
		words: "Joints where needed",
		also: "piece split automatic",
		can: (now) => onDesk(now) ?? (bayOnTable(now.desk).track.joints === "auto" ? "They are so already." : null),
		run: () => editBay("joints where needed", (bay) => setJoints(bay, "auto")),
	},
	{
		id: "joints-none",
		words: "No joints",
		also: "one piece",
		can: (now) => onDesk(now) ?? (bayOnTable(now.desk).track.joints === "none" ? "There are none already." : null),
		run: () => editBay("no joints", (bay) => setJoints(bay, "none")),
	},
	{
		id: "smoothest",
		words: "Line: smoothest",
		also: "fewest bends follow",
		can: (now) => onDesk(now) ?? (bayOnTable(now.desk).track.follow === "smoothest" ? "It is so already." : null),
		run: () => editBay("smoothest line", (bay) => ({ ...bay, track: { ...bay.track, follow: "smoothest" } })),
	},
	{
		id: "along-walls",
		words: "Line: along the walls",
		also: "follow parallel",
		can: (now) => onDesk(now) ?? (bayOnTable(now.desk).track.follow === "walls" ? "It is so already." : null),
		run: () => editBay("line along the walls", (bay) => ({ ...bay, track: { ...bay.track, follow: "walls" } })),
	},
];

function bendChosen({ desk: { selection } }: Now): number | null {
	return selection?.kind === "corner" || selection?.kind === "bend" ? selection.index : null;
}

function pinChosen({ desk: on }: Now): number | null {
	const { selection } = on;
	return selection?.kind === "bracket" ? pinOf(bayOnTable(on), planOnTable(on), selection.index) : null;
}
