import { resolve } from "node:path";
import type { Readable } from "node:stream";

/** What the command touches outside itself. */
export interface World {
	/** Folder that paths are relative to: where the user stands. */
	readonly folder: string;
	/** Whether a failure of our own is shown with its stack. */
	readonly debug: boolean;
	readonly out: (text: string) => void;
	readonly err: (text: string) => void;
	readonly input: () => Promise<Uint8Array>;
	/** Shows how far long work has come, in place of what was shown before; left out where nobody watches. */
	readonly progress?: (text: string) => void;
	/** Calls `stop` when the user breaks off; what it returns ends that. Left out where nobody can. */
	readonly onBreak?: (stop: () => void) => () => void;
}

/** The world of this process. npm leaves in `INIT_CWD` where the user stood when it moved away. */
export function processWorld(): World {
	const { env, stdin, stdout, stderr } = process;
	return {
		folder: resolve(env.INIT_CWD || process.cwd()),
		debug: env.BAYWRIGHT_DEBUG === "1",
		out: (text) => stdout.write(text),
		err: (text) => stderr.write(text),
		input: () => allOf(stdin),
		...(stderr.isTTY ? { progress: (text: string) => stderr.write(`\r\u001b[K${text}`) } : {}),
		onBreak: (stop) => {
			process.once("SIGINT", stop);
			return () => process.off("SIGINT", stop);
		},
	};
}

async function allOf(stream: Readable): Promise<Uint8Array> {
	const chunks: Uint8Array[] = [];
	for await (const chunk of stream) chunks.push(chunk);
	return Buffer.concat(chunks);
}
