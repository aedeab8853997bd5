// Finds a Chromium for the journeys: the one that comes with the packages, else the first that works of those that a
// machine may have, down to one that can be fetched.

import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "@playwright/test";

export interface Browser {
	readonly path: string;
	/** What it calls itself. */
	readonly version: string;
	/** What its process needs beside the usual environment. */
	readonly env: Readonly<Record<string, string>>;
	/** What it is told when it starts. */
	readonly args: readonly string[];
}

type Environment = Readonly<Record<string, string | undefined>>;

/** The ways to a browser, in the order in which they are tried: first the one that is the same everywhere, and twice as quick as one with windows. */
const ways: Readonly<Record<string, (env: Environment) => Browser | undefined>> = {
	named: (env) => firstThatWorks([env.CHROMIUM_PATH]),
	bundled: unpackBundled,
	installed: (env) => firstThatWorks([...onPath(env.PATH ?? ""), ...usualPlaces(env)]),
	playwright: () => firstThatWorks([chromium.executablePath()]),
	fetched: fetchBrowser,
};

export const noBrowser =
	"No browser was found for the journeys. Install Chromium or Chrome, or set CHROMIUM_PATH to one that is installed.";

/** The first browser that works, or undefined. BAYWRIGHT_BROWSER may name one of the ways; then only that one is tried. */
export function findBrowser(env: Environment = process.env): Browser | undefined {
	const only = env.BAYWRIGHT_BROWSER;
	if (only !== undefined && !Object.hasOwn(ways, only)) {
		throw new RangeError(`BAYWRIGHT_BROWSER is ${only}: one of ${Object.keys(ways).join(", ")} is needed`);
	}
	for (const [name, way] of Object.entries(ways)) {
		if (only !== undefined && only !== name) continue;
		const browser = way(env);
		if (browser !== undefined) return browser;
	}
	return undefined;
}

function firstThatWorks(paths: readonly (string | undefined)[]): Browser | undefined {
	for (const path of paths) {
		const browser = path === undefined ? undefined : tried(path);
		if (browser !== undefined) return browser;
	}
	return undefined;
}

/** Asks a program for its version: some distributions put a stub there that only says how to install the real one. */
function tried(path: string, env: Readonly<Record<string, string>> = {}): Browser | undefined {
	if (!existsSync(path)) return undefined;
	// On Windows the question would open a window; being there has to do.
	if (process.platform === "win32") return { path, version: "unknown", env, args: [] };
	const answer = spawnSync(path, ["--version"], { encoding: "utf8", timeout: 20_000, env: { ...process.env, ...env } });
	const version = /(?:Chrom\w*|Edge)\D*\d+\.\d+\S*/.exec(answer.stdout ?? "")?.[0];
	return answer.status === 0 && version !== undefined ? { path, version, env, args: [] } : undefined;
}

function onPath(path: string): string[] {
	const names = [
		"chromium",
		"chromium-browser",
		"google-chrome",
		"google-chrome-stable",
		"chrome",
		"msedge",
		"microsoft-edge",
	];
	const ending = process.platform === "win32" ? ".exe" : "";
	return path
		.split(delimiter)
		.filter((folder) => folder !== "")
		.flatMap((folder) => names.map((name) => join(folder, name + ending)));
}

function usualPlaces(env: Environment): string[] {
	if (process.platform === "darwin") {
		return ["Chromium", "Google Chrome", "Microsoft Edge"].map(
			(name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
		);
	}
	if (process.platform === "win32") {
		const roots = [env.PROGRAMFILES, env["PROGRAMFILES(X86)"], env.LOCALAPPDATA].filter((root) => root !== undefined);
		const places = [
			"Chromium/Application/chrome.exe",
			"Google/Chrome/Application/chrome.exe",
			"Microsoft/Edge/Application/msedge.exe",
		];
		return roots.flatMap((root) => places.map((place) => join(root, place)));
	}
	return [
		"/usr/bin/chromium",
		"/usr/bin/chromium-browser",
		"/usr/lib/chromium/chromium",
		"/opt/google/chrome/chrome",
		"/opt/microsoft/msedge/msedge",
		"/snap/bin/chromium",
	];
}

/** The one that comes packed in a package: unpacked once into a cache folder of our own, with what it needs. */
function unpackBundled(): Browser | undefined {
	if (process.platform !== "linux" || process.arch !== "x64") return undefined;
	const door = import.meta.resolve("@sparticuz/chromium");
	const { version } = JSON.parse(readFileSync(new URL("../../package.json", door), "utf8"));
	const cache = fileURLToPath(new URL("../node_modules/.cache/chromium", import.meta.url));
	const folder = join(cache, version);
	if (!existsSync(folder) && !unpack(door, folder)) return undefined;
	const fonts = join(cache, "fonts.conf");
	writeFileSync(fonts, fontSettings(cache, folder));
	const env = { LD_LIBRARY_PATH: join(folder, "al2023/lib"), FONTCONFIG_FILE: fonts };
	const browser = tried(join(folder, "chromium"), env);
	// It draws without a graphics card: a process of its own for that costs a tenth of the time.
	return browser && { ...browser, args: ["--in-process-gpu"] };
}

/** Unpacks beside and then renames, so that one cut short is never taken for a whole one. */
function unpack(door: string, folder: string): boolean {
	const draft = `${folder}.draft`;
	rmSync(draft, { recursive: true, force: true });
	mkdirSync(draft, { recursive: true });
	// The package unpacks into the temporary folder and adds the libraries only where it believes itself to be on its
	// usual host. A process of its own keeps both settings out of ours.
	const script = `import bundled from ${JSON.stringify(door)}; await bundled.executablePath();`;
	const { status } = spawnSync(process.execPath, ["--input-type=module", "--eval", script], {
		env: { ...process.env, TMPDIR: draft, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs20.x" },
	});
	if (status === 0) renameSync(draft, folder);
	return status === 0;
}

/** A machine without a browser may have no fonts either: the package brings one. */
function fontSettings(cache: string, folder: string): string {
	const places = ["/usr/share/fonts", "/usr/local/share/fonts", join(folder, "fonts/fonts")];
	const lines = places.map((place) => `<dir>${place}</dir>`);
	return `<?xml version="1.0"?>\n<fontconfig>${lines.join("")}<cachedir>${join(cache, "fonts")}</cachedir></fontconfig>\n`;
}

/** The last resort: hundreds of megabytes from the network. */
function fetchBrowser(): Browser | undefined {
	const playwright = join(dirname(createRequire(import.meta.url).resolve("@playwright/test/package.json")), "cli.js");
	console.error("No browser is installed: fetching one for the journeys");
	spawnSync(process.execPath, [playwright, "install", "chromium"], { stdio: ["ignore", 2, 2], timeout: 600_000 });
	return firstThatWorks([chromium.executablePath()]);
}
