import { type Command, helpOf } from "./command.ts";
import { check } from "./commands/check.ts";
import { corner } from "./commands/corner.ts";
import { importWallsCommand } from "./commands/import.ts";
import { plan } from "./commands/plan.ts";
import { remedy } from "./commands/remedy.ts";
import { settle } from "./commands/settle.ts";
import { sheets } from "./commands/sheets.ts";
import { simulate } from "./commands/simulate.ts";
import { complain, complainOf } from "./complain.ts";
import { type ExitStatus, FAILED, PLANNED } from "./exit-status.ts";
import { overview, version } from "./overview.ts";
import { quoted } from "./text/plain.ts";
import { processWorld, type World } from "./world.ts";

const commands: readonly Command[] = [plan, corner, check, settle, simulate, remedy, sheets, importWallsCommand];

/** Runs the command with what was typed after its name; gives the exit status. Never throws. */
export async function main(args: readonly string[], world: World = processWorld()): Promise<ExitStatus> {
	try {
		return await run(args, world);
	} catch (error) {
		complainOf(world, error);
		return FAILED;
	}
}

async function run([name, ...rest]: readonly string[], world: World): Promise<ExitStatus> {
	if (name === "--help" || name === "-h") return said(world, overview(commands));
	if (name === "--version") return said(world, `${version}\n`);
	const allowed = `${commands.map((each) => each.name).join(", ")}; see baywright --help`;
	if (name === undefined) return complain(world, `command: found nothing, allowed ${allowed}`);
	const command = commands.find((each) => each.name === name);
	if (command === undefined) return complain(world, `command: found ${quoted(name)}, allowed ${allowed}`);
	if (asksForHelp(rest)) return said(world, helpOf(command));
	return command.run(rest, world);
}

/** After `--` everything is the name of a file. */
function asksForHelp(args: readonly string[]): boolean {
	const end = args.indexOf("--");
	return args.slice(0, end < 0 ? args.length : end).some((arg) => arg === "--help" || arg === "-h");
}

function said(world: World, text: string): ExitStatus {
	world.out(text);
	return PLANNED;
}
