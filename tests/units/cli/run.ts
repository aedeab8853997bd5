import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { main } from "@baywright/cli";
import { onTestFinished } from "vitest";

export const root = fileURLToPath(new URL("../../../", import.meta.url));

/** The example jobs, as paths from the root of the project. */
export const examples = readdirSync(join(root, "examples"))
	.filter((name) => name.endsWith(".baywright.json"))
	.map((name) => `examples/${name}`)
	.sort();

const command = join(root, "packages/cli/bin/baywright.mjs");

interface Ran {
	readonly status: number | null;
	readonly out: string;
	readonly err: string;
	/** Lines on standard error. */
	readonly lines: readonly string[];
}

interface RunOptions {
	readonly cwd?: string;
	readonly input?: string | Uint8Array;
	readonly env?: Readonly<Record<string, string>>;
}

/** The real command in a process of its own, as a user's shell would start it. */
export function baywright(args: readonly string[], { cwd = root, input = "", env = {} }: RunOptions = {}): Ran {
	const { npm_lifecycle_event: _, INIT_CWD: __, BAYWRIGHT_DEBUG: ___, ...clean } = process.env;
	const { status, stdout, stderr, error } = spawnSync(process.execPath, [command, ...args], {
		cwd,
		input,
		env: { ...clean, ...env },
		encoding: "utf8",
		maxBuffer: 1 << 28,
	});
	if (error) throw error;
	return { status, out: stdout, err: stderr, lines: stderr.split("\n").slice(0, -1) };
}

/** An empty folder, gone when the test is over. */
export function emptyFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), "baywright-"));
	onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
	return folder;
}

/** A right-angled bay 900 by 1800, with whatever else is given for its job and its bay. */
export const jobText = (job: object = {}, bay: object = {}): string =>
	JSON.stringify({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b1",
				corners: [
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				],
				...bay,
			},
		],
		...job,
	});

/** The same command in this process, many times as fast: for whatever does not hang on the process itself. */
export async function baywrightHere(args: readonly string[], input = "", folder = root): Promise<Ran> {
	const said = { out: "", err: "" };
	const status = await main(args, {
		folder,
		debug: false,
		out: (text) => {
			said.out += text;
		},
		err: (text) => {
			said.err += text;
		},
		input: async () => new TextEncoder().encode(input),
	});
	return { status, ...said, lines: said.err.split("\n").slice(0, -1) };
}

/** A wall of 400 between two corners of 80° is too short for two bends of at least 225, and one past both would turn over 180°. */
export const tooTight = {
	corners: [
		[104.2, 0],
		[0, 590.9],
		[400, 590.9],
		[295.8, 0],
	],
};
