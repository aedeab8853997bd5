import { renameSync, rmSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";

/** Writes a file beside its place and renames it there: whole, or not at all. Throws where the folder cannot be written. */
export function writeWhole(folder: string, name: string, content: string | Uint8Array): void {
	const path = resolve(folder, name);
	const beside = `${path}.${process.pid}.part`;
	try {
		writeFileSync(beside, content, { flag: "wx" });
		renameSync(beside, path);
	} catch (error) {
		rmSync(beside, { force: true });
		throw error;
	}
}
