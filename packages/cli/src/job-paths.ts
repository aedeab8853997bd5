import { type Dirent, readdirSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { quoted } from "./text/plain.ts";

const ENDING = ".baywright.json";

/** Standard input, as typed. */
export const STANDARD_INPUT = "-";

/** A job to read, or why there is none at what was typed. `name` is how the user would call it. */
export type JobPath =
	| { readonly ok: true; readonly name: string }
	| { readonly ok: false; readonly name: string; readonly reason: string };

/** The jobs meant by the files, folders and `-` typed, each once, in the order typed; those of a folder sorted by name. */
export function jobPaths(operands: readonly string[], folder: string): JobPath[] {
	const paths = new Map<string, JobPath>();
	for (const operand of operands) {
		for (const path of pathsAt(operand, folder)) {
			const key = path.name === STANDARD_INPUT ? STANDARD_INPUT : resolve(folder, path.name);
			if (!paths.has(key)) paths.set(key, path);
		}
	}
	return [...paths.values()];
}

/** Whether only one job can be meant: a folder may hold any number. */
export function isOneJob(operands: readonly string[], folder: string): boolean {
	const [only, ...more] = operands;
	return only !== undefined && more.length === 0 && (only === STANDARD_INPUT || !isFolder(resolve(folder, only)));
}

function pathsAt(operand: string, folder: string): JobPath[] {
	if (operand === STANDARD_INPUT || !isFolder(resolve(folder, operand))) return [{ ok: true, name: operand }];
	try {
		const names = jobsUnder(resolve(folder, operand)).sort();
		if (names.length > 0) return names.map((name) => ({ ok: true, name: join(operand, name) }));
		return [
			{
				ok: false,
				name: operand,
				reason: `found no job in the folder ${quoted(operand)}, allowed a folder with *${ENDING} in it`,
			},
		];
	} catch (error) {
		return [{ ok: false, name: operand, reason: cannotRead(operand, error) }];
	}
}

/** All the way down, but not into installed packages, hidden folders or links to folders, which may lead round in a ring. */
function jobsUnder(folder: string): string[] {
	return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
		if (entry.isDirectory()) {
			if (entry.name === "node_modules" || entry.name.startsWith(".")) return [];
			return jobsUnder(join(folder, entry.name)).map((name) => join(entry.name, name));
		}
		return entry.name.endsWith(ENDING) && isFile(folder, entry) ? [entry.name] : [];
	});
}

/** What cannot be looked at is taken for a file: reading it will say why. */
function isFolder(path: string): boolean {
	try {
		return statSync(path).isDirectory();
	} catch {
		return false;
	}
}

const isFile = (folder: string, entry: Dirent): boolean =>
	entry.isFile() || (entry.isSymbolicLink() && !isFolder(join(folder, entry.name)));

/** Why a file or folder could not be read, in plain words. */
export function cannotRead(name: string, error: unknown): string {
	const { code, message } = error as NodeJS.ErrnoException;
	const reasons: Readonly<Record<string, string>> = {
		ENOENT: "no such file",
		ENOTDIR: "no such file",
		EACCES: "no permission to read it",
		EPERM: "no permission to read it",
		ENAMETOOLONG: "the name is too long",
		ELOOP: "the links lead round in a ring",
	};
	return `cannot read ${name}: ${reasons[code ?? ""] ?? message}`;
}
