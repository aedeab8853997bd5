/** Words to go on within a sentence. */
export const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
