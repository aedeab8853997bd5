import { unzlibSync } from "fflate";
import { bytesOfBase64 } from "./base64.ts";

/** Tables of a font that pair, join and move letters: without them letters stand by their widths alone, as they were reckoned. */
const LEFT_OUT = new Set(["GDEF", "GPOS", "GSUB", "STAT"]);

/**
 * A font in WOFF 1.0 (base64) as the plain font within, without what it leaves out. Source: W3C, WOFF File Format 1.0; OpenType, table
 * directory.
 */
export function plainFont(woff: string): Uint8Array {
	const packed = bytesOfBase64(woff);
	const read = new DataView(packed.buffer);
	const all = Array.from({ length: read.getUint16(12) }, (_, i) => {
		const entry = 44 + 20 * i;
		const [offset, length, size] = [4, 8, 12].map((field) => read.getUint32(entry + field)) as [number, number, number];
		const tag = String.fromCharCode(...packed.subarray(entry, entry + 4));
		const own = packed.subarray(offset, offset + length);
		return {
			tag,
			sum: read.getUint32(entry + 16),
			bytes: length < size ? unzlibSync(own, { out: new Uint8Array(size) }) : own,
		};
	});
	const tables = all.filter(({ tag }) => !LEFT_OUT.has(tag));
	const start = 12 + 16 * tables.length;
	const font = new Uint8Array(start + tables.reduce((sum, { bytes }) => sum + padded(bytes.length), 0));
	const write = new DataView(font.buffer);
	const power = Math.floor(Math.log2(tables.length));
	write.setUint32(0, read.getUint32(4));
	write.setUint16(4, tables.length);
	write.setUint16(6, 16 * 2 ** power);
	write.setUint16(8, power);
	write.setUint16(10, 16 * tables.length - 16 * 2 ** power);
	let offset = start;
	tables.forEach(({ tag, sum, bytes }, i) => {
		const entry = 12 + 16 * i;
		for (let k = 0; k < 4; k++) write.setUint8(entry + k, tag.charCodeAt(k));
		write.setUint32(entry + 4, sum);
		write.setUint32(entry + 8, offset);
		write.setUint32(entry + 12, bytes.length);
		font.set(bytes, offset);
		offset += padded(bytes.length);
	});
	return font;
}

/** Tables begin at multiples of four. */
const padded = (length: number): number => Math.ceil(length / 4) * 4;
