// `npm run journeys`: builds the app, serves it, and lets a browser walk through it. What follows `--` goes to
// Playwright, as in `npm run journeys -- --grep drag`.

import { spawn } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildApp, freePort, serveApp } from "@baywright/app/serve";
import { findBrowser, noBrowser } from "./browser.ts";

const tests = fileURLToPath(new URL("..", import.meta.url));

try {
	process.exitCode = await main(process.argv.slice(2));
} catch (error) {
	process.exitCode = refuse(error instanceof Error ? error.message : String(error));
}

async function main(options: readonly string[]): Promise<number> {
	const browser = findBrowser();
	if (browser === undefined) return refuse(noBrowser);
	const port = await freePort(4820);
	if (port === undefined) return refuse("No port is free to serve the app on.");
	console.log(`${browser.version}, ${browser.path}`);
	// Not the folder that `npm start` serves from, nor that of another run: those may be in use.
	const folder = join(tests, `node_modules/.cache/app-${port}`);
	await buildApp(folder);
	const { address, close } = await serveApp(folder, port);
	const status = await playwright(options, {
		...process.env,
		JOURNEY_ADDRESS: address,
		JOURNEY_BROWSER: JSON.stringify(browser),
	});
	await close();
	return status;
}

function playwright(options: readonly string[], env: NodeJS.ProcessEnv): Promise<number> {
	const cli = join(dirname(createRequire(import.meta.url).resolve("@playwright/test/package.json")), "cli.js");
	const run = spawn(process.execPath, [cli, "test", "--config", "playwright.config.ts", ...options], {
		cwd: tests,
		env,
		stdio: "inherit",
	});
	return new Promise((resolve) => run.once("exit", (status) => resolve(status ?? 1)));
}

function refuse(reason: string): number {
	console.error(reason);
	return 1;
}
