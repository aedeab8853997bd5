#!/usr/bin/env node
// Runs the command straight from the sources: installs first where that has not been done, then runs one bundled file,
// which starts in a quarter of the time that translating every source takes. The bundle is used only while every
// source that went into it still has the very content that it was made from.

import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const cli = join(root, "packages/cli");
const cache = join(cli, "node_modules/.cache/bundle");
const ledger = join(cache, "sources.json");

/** A source changed this shortly before the bundling began may not be the one that was read (ms). */
const clockGrain = 20;

await main();

async function main() {
	leaveQuietlyWhenNobodyReads(process.stdout);
	leaveQuietlyWhenNobodyReads(process.stderr);
	const home = userFolder();
	installIfNeeded();
	const bundle = freshBundle() ?? (await makeBundle());
	process.chdir(home);
	process.env.INIT_CWD = home;
	const command = await import(pathToFileURL(bundle).href);
	try {
		process.exitCode = await command.main(process.argv.slice(2));
	} catch (error) {
		giveUp(firstFault(error));
	}
}

/** The folder that the user stood in: npm moves to the top of the project and leaves a note of where it came from. */
function userFolder() {
	const throughNpm = process.env.npm_lifecycle_event === "baywright";
	return (throughNpm && process.env.INIT_CWD) || process.cwd();
}

function installIfNeeded() {
	const wanted = ["node_modules/.modules.yaml", "packages/cli/node_modules/esbuild"];
	if (wanted.every((path) => existsSync(join(root, path)))) return;
	process.stderr.write("baywright: installing packages, once\n");
	// Everything that npm says goes to standard error: standard output is the plan's.
	const result = spawnSync("npm", ["run", "--silent", "setup"], {
		cwd: root,
		stdio: ["ignore", 2, 2],
		shell: process.platform === "win32",
	});
	if (result.status !== 0) giveUp("could not install its packages; run `npm run setup` to see why");
}

/** The bundle made earlier, unless any source has changed since. */
function freshBundle() {
	try {
		const { sources, print } = JSON.parse(readFileSync(ledger, "utf8"));
		const bundle = bundleFile(print);
		return printOf(sources) === print && existsSync(bundle) ? bundle : undefined;
	} catch {
		return undefined;
	}
}

async function makeBundle() {
	const { build } = await import("esbuild");
	const began = Date.now();
	const result = await build({
		absWorkingDir: root,
		entryPoints: [join(cli, "src/main.ts")],
		bundle: true,
		platform: "node",
		format: "esm",
		target: "node20",
		write: false,
		metafile: true,
		logLevel: "silent",
		// Packages in the older module form still call require for Node's own modules.
		banner: {
			js: 'import { createRequire as requireFrom } from "node:module";\nconst require = requireFrom(import.meta.url);',
		},
	}).catch((error) => giveUp(`cannot be built: ${firstFault(error)}`));
	const sources = sourcesOf(Object.keys(result.metafile.inputs));
	const print = printOf(sources);
	const bundle = bundleFile(print);
	keep(bundle, result.outputFiles[0].contents);
	const settled = sources.every((path) => statSync(join(root, path)).mtimeMs < began - clockGrain);
	if (settled) keep(ledger, JSON.stringify({ print, sources }));
	forgetOthers(bundle);
	return bundle;
}

/** Our own sources, with what decides how they are put together; installed packages are fixed by the lockfile. */
function sourcesOf(inputs) {
	const own = inputs.filter((path) => !path.includes("node_modules/"));
	const packages = readdirSync(join(root, "packages")).map((name) => `packages/${name}/package.json`);
	const settings = ["package.json", "pnpm-lock.yaml", "tsconfig.base.json", ...packages];
	return [...own, relative(root, fileURLToPath(import.meta.url)), ...settings]
		.filter((path) => existsSync(join(root, path)))
		.sort();
}

function printOf(sources) {
	const hash = createHash("sha256").update(process.version);
	for (const path of sources) hash.update(`\0${path}\0`).update(readFileSync(join(root, path)));
	return hash.digest("hex").slice(0, 24);
}

function bundleFile(print) {
	return join(cache, `baywright-${print}.mjs`);
}

/** Written beside and then renamed, so that a second run at the same moment never reads half a file. */
function keep(path, contents) {
	mkdirSync(cache, { recursive: true });
	const draft = `${path}.${process.pid}`;
	writeFileSync(draft, contents);
	renameSync(draft, path);
}

/** Bundles of older sources; the last hour's stay, for a run that has just chosen one. */
function forgetOthers(bundle) {
	for (const name of readdirSync(cache)) {
		const path = join(cache, name);
		const age = Date.now() - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0);
		if (name.startsWith("baywright-") && resolve(path) !== resolve(bundle) && age > 3_600_000)
			rmSync(path, { force: true });
	}
}

/** `baywright plan … | head` closes the pipe early: that is the reader's right, not a failure. */
function leaveQuietlyWhenNobodyReads(stream) {
	stream.on("error", (error) => {
		if (error.code === "EPIPE") process.exit();
		throw error;
	});
}

function firstFault(error) {
	const fault = error.errors?.[0];
	if (!fault) return String(error.message ?? error).split("\n")[0];
	const place = fault.location ? `${fault.location.file}:${fault.location.line}: ` : "";
	return place + fault.text;
}

function giveUp(reason) {
	process.stderr.write(`baywright: ${reason}\n`);
	process.exit(1);
}
