/** Words to begin a line or a sentence with. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
