/** A word to begin a line with. */
export function capital(word: string): string {
	return word.charAt(0).toUpperCase() + word.slice(1);
}
