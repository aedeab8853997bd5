// Reads a ZIP file by its central directory. Shares no code with what writes them. Source: PKWARE, APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16.

import { inflateRawSync } from "node:zlib";

const END = 0x06054b50;
const ENTRY = 0x02014b50;

/** The texts in a ZIP file by their names; an error where it is none. */
export function readZip(bytes: Uint8Array): Map<string, string> {
	const file = Buffer.from(bytes);
	let end = file.length - 22;
	while (end >= 0 && file.readUInt32LE(end) !== END) end--;
	if (end < 0) throw new Error("no end of a central directory");
	const texts = new Map<string, string>();
	let at = file.readUInt32LE(end + 16);
	for (let left = file.readUInt16LE(end + 10); left > 0; left--) {
		if (file.readUInt32LE(at) !== ENTRY) throw new Error("no entry of a central directory");
		const method = file.readUInt16LE(at + 10);
		const packed = file.readUInt32LE(at + 20);
		const [name, extra, comment] = [28, 30, 32].map((field) => file.readUInt16LE(at + field)) as [
			number,
			number,
			number,
		];
		const local = file.readUInt32LE(at + 42);
		const start = local + 30 + file.readUInt16LE(local + 26) + file.readUInt16LE(local + 28);
		const data = file.subarray(start, start + packed);
		const whole = method === 0 ? data : inflateRawSync(data);
		texts.set(file.toString("utf8", at + 46, at + 46 + name), whole.toString("utf8"));
		at += 46 + name + extra + comment;
	}
	return texts;
}
