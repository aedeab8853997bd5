const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** The bytes of a text in base64. Written out, because what runs everywhere has no decoder in common. Source: RFC 4648. */
export function bytesOfBase64(text: string): Uint8Array {
	const length = text.endsWith("==") ? text.length - 2 : text.endsWith("=") ? text.length - 1 : text.length;
	const bytes = new Uint8Array(Math.floor((length * 3) / 4));
	let held = 0;
	let bits = 0;
	let at = 0;
	for (let i = 0; i < length; i++) {
		held = ((held << 6) | LETTERS.indexOf(text[i] as string)) & 0xffff;
		bits += 6;
		if (bits < 8) continue;
		bits -= 8;
		bytes[at++] = (held >> bits) & 0xff;
	}
	return bytes;
}
