import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { findBrowser } from "./journeys/browser.ts";

let folder = "";

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "browsers-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

/** A program of that name that answers so to every question. */
function program(name: string, answer: string, status = 0): string {
	const path = join(folder, name);
	writeFileSync(path, `#!/bin/sh\necho "${answer}"\nexit ${status}\n`);
	chmodSync(path, 0o755);
	return path;
}

describe.runIf(process.platform !== "win32")("the browser for the journeys", () => {
	it("is the one that CHROMIUM_PATH names, before any on PATH", () => {
		program("chromium", "Chromium 140.0.1");
		const path = program("mine", "Chromium 141.0.2 built on a Tuesday");
		expect(findBrowser({ CHROMIUM_PATH: path, PATH: folder })).toMatchObject({ path, version: "Chromium 141.0.2" });
	});

	it("is not a named one that does not work", () => {
		const named = join(folder, "nothing-here");
		const found = findBrowser({ CHROMIUM_PATH: named, PATH: folder });
		expect(found?.version).toMatch(/\d/);
		expect(found?.path).not.toBe(named);
	});

	it("is one on PATH where only those installed are looked at", () => {
		const path = program("google-chrome", "Google Chrome 140.0.7339.16");
		expect(findBrowser({ PATH: folder, BAYWRIGHT_BROWSER: "installed" })).toMatchObject({
			path,
			version: "Chrome 140.0.7339.16",
		});
	});

	it("is never a stub that only says how to install the real one", () => {
		program("chromium", "please install the chromium package");
		program("chromium-browser", "Chromium 140.0.1", 1);
		const path = program("msedge", "Microsoft Edge 140.0.3485.54");
		expect(findBrowser({ PATH: folder, BAYWRIGHT_BROWSER: "installed" })).toMatchObject({ path });
	});

	it("comes by the one way that is asked for, or not at all", () => {
		program("chromium", "Chromium 140.0.1");
		expect(findBrowser({ PATH: folder, BAYWRIGHT_BROWSER: "named" })).toBeUndefined();
		expect(() => findBrowser({ BAYWRIGHT_BROWSER: "luck" })).toThrow(
			/BAYWRIGHT_BROWSER is luck: one of named, bundled/,
		);
	});
});
