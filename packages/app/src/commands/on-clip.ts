import { removeThing } from "@baywright/editor";
import { desk } from "../desk/desk.ts";
import { bayOnTable, planOnTable } from "../desk/on-table.ts";
import { copyToClipboard, cutToClipboard, pasteFromClipboard, removeChosenThing } from "./clipboard.ts";
import { type Command, type Now, onDesk } from "./command.ts";

/** Copying, pasting and taking away. */
export const clipCommands: readonly Command[] = [
	{
		id: "copy",
		words: "Copy the chosen opening or obstacle, or the bay",
		key: "Ctrl+C on the plan",
		can: onDesk,
		run: () => void copyToClipboard(),
	},
	{
		id: "cut",
		words: "Cut the chosen opening or obstacle",
		key: "Ctrl+X on the plan",
		can: (now) => {
			const kind = now.desk.selection?.kind;
			return (
				onDesk(now) ?? (kind === "opening" || kind === "obstacle" ? null : "Choose an opening or an obstacle first.")
			);
		},
		run: () => void cutToClipboard(),
	},
	{ id: "paste", words: "Paste", key: "Ctrl+V on the plan", can: onDesk, run: () => void pasteFromClipboard() },
	{
		id: "remove",
		words: "Remove what is chosen",
		also: "delete take away",
		key: "Delete",
		can: cannotRemove,
		run: () => void removeChosenThing(desk.getState()),
	},
];

function cannotRemove(now: Now): string | null {
	const { selection } = now.desk;
	if (selection === null) return onDesk(now) ?? "Choose something first.";
	const removal = removeThing(bayOnTable(now.desk), planOnTable(now.desk), selection);
	return removal.ok ? null : removal.why;
}
