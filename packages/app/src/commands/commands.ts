import type { Command } from "./command.ts";
import { clipCommands } from "./on-clip.ts";
import { historyCommands, jobCommands, pageCommands, toolCommands } from "./on-page.ts";
import { trackCommands } from "./on-track.ts";
import { wallCommands } from "./on-walls.ts";

/** Everything that can be done from the list of commands, in the order in which it is listed. */
export const commands: readonly Command[] = [
	...wallCommands,
	...trackCommands,
	...toolCommands,
	...clipCommands,
	...historyCommands,
	...jobCommands,
	...pageCommands,
];

/** The commands in which every word typed is found, those whose own words begin with it first. */
export function findCommands(text: string): readonly Command[] {
	const words = text
		.toLowerCase()
		.split(/\s+/)
		.filter((word) => word !== "");
	if (words.length === 0) return commands;
	const found = commands.filter((it) => {
		const all = `${it.words} ${it.also ?? ""}`.toLowerCase();
		return words.every((word) => all.includes(word));
	});
	const rank = (it: Command) => {
		const at = it.words.toLowerCase().indexOf(words[0] as string);
		return at === 0 ? 0 : at > 0 ? 1 : 2;
	};
	return found.toSorted((a, b) => rank(a) - rank(b));
}
