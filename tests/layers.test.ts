import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { layerFaults } from "./layers.ts";

const made: string[] = [];

afterEach(() => {
	for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

/** A small project of the given files, every package with a public door; answers its faults. */
function faultsOf(files: Readonly<Record<string, string>>): string[] {
	const root = mkdtempSync(join(tmpdir(), "layers-"));
	made.push(root);
	const folders = new Set(Object.keys(files).map((path) => /^tests|^packages\/\w+/.exec(path)?.[0] ?? path));
	const written = new Map<string, string>();
	for (const folder of [...folders, "packages/geometry"]) {
		written.set(`${folder}/package.json`, '{ "exports": { ".": "./src/index.ts" } }');
	}
	for (const [path, text] of Object.entries(files)) written.set(path, text);
	for (const [path, text] of written) {
		mkdirSync(dirname(join(root, path)), { recursive: true });
		writeFileSync(join(root, path), text);
	}
	return layerFaults(root);
}

describe("the layers", () => {
	it("hold in this project", () => {
		expect(layerFaults(fileURLToPath(new URL("..", import.meta.url)))).toEqual([]);
	});

	it("let a package import those below it, by name", () => {
		expect(
			faultsOf({
				"packages/setout/src/index.ts": 'import { point } from "@baywright/geometry";\nexport * from "./plan.ts";',
				"packages/cli/src/main.ts": 'import { readFile } from "node:fs/promises";\nimport "@baywright/setout";',
				"packages/app/src/gallery.tsx": 'import bay from "../../../examples/square.json";\nconst view = <p />;',
			}),
		).toEqual([]);
	});

	it.each([
		[
			"upward",
			"packages/geometry/src/a.ts",
			'import { planBay } from "@baywright/setout";',
			"geometry may not import it",
		],
		[
			"types too",
			"packages/geometry/src/a.ts",
			'import type { Bay } from "@baywright/setout";',
			"geometry may not import it",
		],
		["re-exports", "packages/geometry/src/a.ts", 'export * from "@baywright/setout";', "geometry may not import it"],
		["later ones", "packages/cli/src/a.ts", 'const app = await import("@baywright/app");', "cli may not import it"],
		[
			"types in place",
			"packages/cli/src/a.ts",
			'type Tool = import("@baywright/editor").Tool;',
			"cli may not import it",
		],
		["sideways", "packages/sheets/src/a.ts", 'import "@baywright/editor";', "sheets may not import it"],
		["and back", "packages/editor/src/a.tsx", 'import "@baywright/sheets";', "editor may not import it"],
		["past the door", "packages/setout/src/a.ts", 'import "@baywright/geometry/src/point.ts";', "not a door"],
		["over the wall", "packages/setout/src/a.ts", 'import "../../geometry/src/point.ts";', "leaves the package"],
		["Node, where pure", "packages/setout/src/a.ts", 'import { readFileSync } from "node:fs";', "no Node modules"],
		["Node by its short name", "packages/geometry/src/a.ts", 'import "fs/promises";', "no Node modules"],
		["Node beside the one writer", "packages/sheets/src/write/svg.ts", 'import "node:fs";', "no Node modules"],
		["Node on the screen", "packages/app/src/a.ts", 'import "node:path";', "no Node modules"],
	])("catch an import: %s", (_kind, path, text, reason) => {
		const faults = faultsOf({ [path]: `// a first line\n${text}\n` });
		expect(faults).toHaveLength(1);
		expect(faults[0]).toMatch(new RegExp(`^${path.replaceAll(".", "\\.")}:2: imports .*${reason}`));
	});

	it("let a test of a single part reach it by path, and no other test", () => {
		const text = 'import { round } from "../../packages/geometry/src/point.ts";';
		expect(faultsOf({ "tests/units/point.test.ts": text })).toEqual([]);
		expect(faultsOf({ "tests/published/point.test.ts": text })).toHaveLength(1);
	});

	it("let only the PDF writer of the sheets use Node", () => {
		expect(faultsOf({ "packages/sheets/src/write/pdf.ts": 'import { Buffer } from "node:buffer";' })).toEqual([]);
	});

	it("take no notice of an import that is only spoken of", () => {
		expect(
			faultsOf({
				"packages/geometry/src/a.ts": '// import "@baywright/setout";\nexport const a = \'import "node:fs"\';',
			}),
		).toEqual([]);
	});

	it("catch a folder that the design does not know", () => {
		expect(faultsOf({ "packages/helpers/src/index.ts": "export {};" })).toEqual([
			expect.stringContaining("packages/helpers: not a package that the design knows"),
		]);
	});

	it("catch a dependency that is declared and not yet imported", () => {
		expect(
			faultsOf({ "packages/setout/package.json": '{ "dependencies": { "@baywright/app": "workspace:*" } }' }),
		).toEqual(["packages/setout/package.json: depends on @baywright/app: setout may not import it"]);
	});
});
