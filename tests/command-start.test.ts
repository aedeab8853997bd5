import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, beforeEach, describe, expect, it } from "vitest";

const cli = fileURLToPath(new URL("../packages/cli", import.meta.url));
let root = "";

/** A project in miniature round the real start file, with a command that tells what it was given. */
beforeEach(() => {
	root = realpathSync(mkdtempSync(join(tmpdir(), "command-")));
	put("node_modules/.modules.yaml", "");
	put("packages/cli/package.json", '{ "type": "module" }');
	put("packages/cli/src/part.ts", 'export const part: string = "first";');
	put(
		"packages/cli/src/main.ts",
		[
			'import { part } from "./part.ts";',
			"export async function main(args: readonly string[]): Promise<number> {",
			'	if (args[0] === "fail") throw new Error("broken inside");',
			'	for (let line = 0; line < Number(args[0] ?? 1); line++) console.log(part + " " + process.cwd());',
			"	return 2;",
			"}",
		].join("\n"),
	);
	mkdirSync(join(root, "packages/cli/bin"));
	copyFileSync(join(cli, "bin/baywright.mjs"), join(root, "packages/cli/bin/baywright.mjs"));
	mkdirSync(join(root, "packages/cli/node_modules"));
	symlinkSync(
		realpathSync(join(cli, "node_modules/esbuild")),
		join(root, "packages/cli/node_modules/esbuild"),
		"junction",
	);
	mkdirSync(join(root, "desk"));
});

afterEach(() => rmSync(root, { recursive: true }));

function put(path: string, text: string): void {
	mkdirSync(dirname(join(root, path)), { recursive: true });
	writeFileSync(join(root, path), text);
}

function command(args: readonly string[], cwd = root, env: Readonly<Record<string, string>> = {}) {
	const { npm_lifecycle_event: _, INIT_CWD: __, ...usual } = process.env;
	const start = join(root, "packages/cli/bin/baywright.mjs");
	const { status, stdout, stderr } = spawnSync(process.execPath, [start, ...args], {
		cwd,
		encoding: "utf8",
		env: { ...usual, ...env },
	});
	return { status, stdout, stderr };
}

describe("the command's start", () => {
	it("passes on arguments, output and exit status", () => {
		expect(command(["2"])).toEqual({ status: 2, stdout: `first ${root}\nfirst ${root}\n`, stderr: "" });
	});

	it("never runs code that has since changed, however soon", () => {
		for (const word of ["first", "other", "third", "first"]) {
			put("packages/cli/src/part.ts", `export const part: string = "${word}";`);
			expect(command([]).stdout).toBe(`${word} ${root}\n`);
		}
	});

	it("runs where the user stands, and through npm where npm was called", () => {
		const desk = join(root, "desk");
		expect(command([], desk).stdout).toBe(`first ${desk}\n`);
		expect(command([], root, { npm_lifecycle_event: "baywright", INIT_CWD: desk }).stdout).toBe(`first ${desk}\n`);
		expect(command([], desk, { npm_lifecycle_event: "test", INIT_CWD: root }).stdout).toBe(`first ${desk}\n`);
	});

	it("says in one line what went wrong", () => {
		expect(command(["fail"])).toEqual({ status: 1, stdout: "", stderr: "baywright: broken inside\n" });
		put("packages/cli/src/part.ts", "export const part = ;");
		const { status, stderr } = command([]);
		expect(status).toBe(1);
		expect(stderr).toMatch(/^baywright: cannot be built: packages\/cli\/src\/part\.ts:1: .*\n$/);
	});

	it.runIf(process.platform !== "win32")("ends quietly when its reader has read enough", () => {
		const start = join(root, "packages/cli/bin/baywright.mjs");
		const line = `"${process.execPath}" "${start}" 100000 | head -n 1`;
		const { stdout, stderr } = spawnSync("sh", ["-c", line], { cwd: root, encoding: "utf8" });
		expect(stdout).toBe(`first ${root}\n`);
		expect(stderr).toBe("");
	});
});
