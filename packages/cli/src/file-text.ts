import { cannotRead } from "./job-paths.ts";

export type FileText = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

/** What was read as UTF-8 text, or why there is none; `name` as people call it. */
export async function textOf(name: string, read: () => Promise<Uint8Array>): Promise<FileText> {
	let bytes: Uint8Array;
	try {
		bytes = await read();
	} catch (error) {
		return { ok: false, reason: cannotRead(name, error) };
	}
	try {
		return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
	} catch {
		return { ok: false, reason: `cannot read ${name}: found bytes that are not UTF-8 text, allowed UTF-8` };
	}
}
