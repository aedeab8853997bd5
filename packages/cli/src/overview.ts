import type { Command } from "./command.ts";
import { pairs } from "./text/pairs.ts";
import { wrap } from "./text/wrap.ts";

/** As in package.json, which a test holds it to. */
export const version = "0.1.0";

/** What `baywright --help` says. */
export function overview(commands: readonly Command[]): string {
	const lines = [
		"baywright COMMAND …",
		"",
		...wrap("Sets out a curtain track in a bay window: how to bend it, cut it, and where its brackets go."),
		"",
		...pairs(commands.map(({ usage, summary }) => [usage, summary])),
		"",
		...pairs([
			["COMMAND --help", "what a command does and takes"],
			["--version", "the version"],
		]),
		"",
		...wrap(
			"JOB is a job file, a folder (every *.baywright.json in it and below) or - for standard input; there may be several. " +
				"Exit status: 0 planned, 2 planned with a refusal, 1 bad input or a failure.",
		),
		"",
		"Example:",
		"  baywright plan examples/quay-cottage.baywright.json",
	];
	return `${lines.join("\n")}\n`;
}
