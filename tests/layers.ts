// Which package may import which: geometry ← survey ← setout ← {sheets, editor} ← {cli, app}; tests may import all.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync } from "vite";

interface Layer {
	/** The packages of ours that this one may import. */
	readonly below: readonly string[];
	/** Where, inside the package, Node's own modules may be used; `""` is everywhere. */
	readonly nodeIn: readonly string[];
	/** Where, inside the package, the insides of others may be reached by path. */
	readonly insidesIn?: string;
}

const layers: Readonly<Record<string, Layer>> = {
	geometry: { below: [], nodeIn: [] },
	survey: { below: ["geometry"], nodeIn: [] },
	setout: { below: ["geometry", "survey"], nodeIn: [] },
	sheets: { below: ["geometry", "survey", "setout"], nodeIn: ["src/write/pdf"] },
	editor: { below: ["geometry", "survey", "setout"], nodeIn: [] },
	cli: { below: ["geometry", "survey", "setout", "sheets"], nodeIn: [""] },
	app: { below: ["geometry", "survey", "setout", "sheets", "editor"], nodeIn: ["scripts/", "vite.config.ts"] },
};

/** Tests come in by the door, but for those of single parts, which lie behind it. */
const tests: Layer = { below: Object.keys(layers), nodeIn: [""], insidesIn: "units/" };

const sourceEnding = /\.[cm]?[jt]sx?$/;
const passedOver = new Set(["node_modules", "dist", "test-results"]);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
	const faults = layerFaults(fileURLToPath(new URL("..", import.meta.url)));
	for (const fault of faults) console.error(fault);
	process.exitCode = faults.length > 0 ? 1 : 0;
}

/** Every breach of the layers in the project at `root`, one plain line each, with file and line. */
export function layerFaults(root: string): string[] {
	const faults: string[] = [];
	for (const name of foldersIn(join(root, "packages"))) {
		const layer = layers[name];
		if (layer === undefined) {
			faults.push(
				`packages/${name}: not a package that the design knows; add it to tests/layers.ts with what it may import`,
			);
			continue;
		}
		faults.push(...packageFaults(root, join(root, "packages", name), name, layer));
	}
	if (existsSync(join(root, "tests"))) faults.push(...packageFaults(root, join(root, "tests"), "tests", tests));
	return faults;
}

function packageFaults(root: string, folder: string, name: string, layer: Layer): string[] {
	const faults = dependencyFaults(root, folder, name, layer);
	for (const file of sourcesIn(folder)) {
		for (const { specifier, line } of importsOf(file)) {
			const reason = importFault(root, folder, name, layer, file, specifier);
			if (reason !== undefined) faults.push(`${shown(root, file)}:${line}: imports ${specifier}: ${reason}`);
		}
	}
	return faults;
}

/** A package may not even declare one that it must not import. */
function dependencyFaults(root: string, folder: string, name: string, layer: Layer): string[] {
	const file = join(folder, "package.json");
	if (!existsSync(file)) return [`${shown(root, folder)}: has no package.json`];
	const { dependencies = {}, devDependencies = {} } = JSON.parse(readFileSync(file, "utf8"));
	return Object.keys({ ...dependencies, ...devDependencies })
		.map(ownPackage)
		.filter((other) => other !== undefined && !layer.below.includes(other.name))
		.map((other) => `${shown(root, file)}: depends on @baywright/${other?.name}: ${name} may not import it`);
}

/** Why this import is not allowed; undefined where it is. */
function importFault(
	root: string,
	folder: string,
	name: string,
	layer: Layer,
	file: string,
	specifier: string,
): string | undefined {
	const place = relative(folder, file).split(sep).join("/");
	// Is it a file beside this one?
	if (specifier.startsWith(".")) {
		const target = resolve(dirname(file), specifier);
		if (isWithin(folder, target) || isWithin(join(root, "examples"), target)) return undefined;
		const mayReachIn = layer.insidesIn !== undefined && place.startsWith(layer.insidesIn);
		if (mayReachIn && isWithin(join(root, "packages"), target)) return undefined;
		return "a path that leaves the package; import another package by its name";
	}
	// Is it one of Node's own?
	if (isNodeModule(specifier)) {
		return layer.nodeIn.some((start) => place.startsWith(start)) ? undefined : `no Node modules in ${name} here`;
	}
	// Is it one of ours?
	const other = ownPackage(specifier);
	if (other === undefined) return undefined;
	if (!layer.below.includes(other.name)) return `${name} may not import it`;
	return isDoor(root, other) ? undefined : `not a door of @baywright/${other.name} (see exports in its package.json)`;
}

interface OwnPackage {
	readonly name: string;
	/** As in `exports`: `.` for the package itself. */
	readonly door: string;
}

function ownPackage(specifier: string): OwnPackage | undefined {
	const [, name, rest] = /^@baywright\/([^/]+)(\/.*)?$/.exec(specifier) ?? [];
	return name === undefined ? undefined : { name, door: `.${rest ?? ""}` };
}

function isDoor(root: string, { name, door }: OwnPackage): boolean {
	const file = join(root, "packages", name, "package.json");
	return existsSync(file) && Object.hasOwn(JSON.parse(readFileSync(file, "utf8")).exports ?? {}, door);
}

function isNodeModule(specifier: string): boolean {
	return specifier.startsWith("node:") || builtinModules.includes(specifier);
}

interface Import {
	readonly specifier: string;
	/** Counted from 1. */
	readonly line: number;
}

/** Every import and re-export of a file, of types too, static or not. */
function importsOf(file: string): Import[] {
	const text = readFileSync(file, "utf8");
	const { program, errors } = parseSync(file, text);
	if (errors[0] !== undefined) throw new Error(`${file} cannot be read: ${errors[0].message}`);
	const imports: Import[] = [];
	visit(program, (node) => {
		const from = node.source ?? (node.type === "TSExternalModuleReference" ? node.expression : undefined);
		if (!isStringLiteral(from)) return;
		imports.push({ specifier: from.value, line: text.slice(0, from.start).split("\n").length });
	});
	return imports;
}

type SyntaxNode = Readonly<Record<string, unknown>>;

function visit(value: unknown, look: (node: SyntaxNode) => void): void {
	if (Array.isArray(value)) {
		for (const item of value) visit(item, look);
	} else if (typeof value === "object" && value !== null) {
		const node = value as SyntaxNode;
		if (typeof node.type === "string") look(node);
		for (const child of Object.values(node)) visit(child, look);
	}
}

function isStringLiteral(node: unknown): node is { readonly value: string; readonly start: number } {
	return typeof node === "object" && node !== null && "value" in node && typeof node.value === "string";
}

function foldersIn(folder: string): string[] {
	return readdirSync(folder, { withFileTypes: true })
		.filter((entry) => entry.isDirectory())
		.map((entry) => entry.name);
}

function sourcesIn(folder: string): string[] {
	return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
		if (passedOver.has(entry.name)) return [];
		const path = join(folder, entry.name);
		if (entry.isDirectory()) return sourcesIn(path);
		return sourceEnding.test(entry.name) ? [path] : [];
	});
}

function isWithin(folder: string, path: string): boolean {
	return path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}

function shown(root: string, path: string): string {
	return relative(root, path).split(sep).join("/");
}
