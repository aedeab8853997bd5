/** Longest quoted text, in characters: enough to recognise it, short enough for one line. */
const LONGEST_QUOTE = 40;

/** Text from a file or a person as one line: nothing in it can break the line, hide in it or steer the terminal. */
export function plain(text: string): string {
	return text
		.replace(/\s+/g, " ")
		.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu, (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`);
}

/** In quotes and cut short. */
export function quoted(text: string): string {
	const characters = [...plain(text)];
	const short = characters.length > LONGEST_QUOTE ? [...characters.slice(0, LONGEST_QUOTE - 1), "…"] : characters;
	return `"${short.join("")}"`;
}
