import type { ExitStatus } from "./exit-status.ts";
import { pairs } from "./text/pairs.ts";
import { wrap } from "./text/wrap.ts";
import type { World } from "./world.ts";

/** One command: what it is called, what its help says, what it does. */
export interface Command {
	readonly name: string;
	/** How it is typed, without `baywright`. */
	readonly usage: string;
	/** A few words for the overview. */
	readonly summary: string;
	/** One or two sentences. */
	readonly about: string;
	readonly options: readonly (readonly [option: string, meaning: string])[];
	readonly example: string;
	readonly run: (args: readonly string[], world: World) => Promise<ExitStatus>;
}

export function helpOf({ usage, about, options, example }: Command): string {
	const lines = [
		`baywright ${usage}`,
		"",
		...wrap(about),
		"",
		...pairs([...options, ["--help", "this page"]]),
		"",
		"Example:",
		`  baywright ${example}`,
	];
	return `${lines.join("\n")}\n`;
}
