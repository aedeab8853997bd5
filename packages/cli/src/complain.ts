import { type ExitStatus, FAILED } from "./exit-status.ts";
import { plain } from "./text/plain.ts";
import type { World } from "./world.ts";

/** One plain line on standard error. */
export function complain(world: World, line: string): ExitStatus {
	world.err(`baywright: ${plain(line)}\n`);
	return FAILED;
}

/** A failure of our own: one line all the same; the stack only for who asks for it. */
export function complainOf(world: World, error: unknown, about = ""): ExitStatus {
	const reason = error instanceof Error ? error.message : String(error);
	const status = complain(world, `${about}failed: ${reason.split("\n")[0]}`);
	if (world.debug && error instanceof Error) world.err(`${error.stack}\n`);
	return status;
}
