/** A heading with what stands under it, after an empty line. */
export const section = (heading: string, lines: readonly string[]): string[] => ["", heading, ...lines];

/** `1 refusal`, `2 warnings`. */
export const count = (number: number, of: string): string => `${number} ${of}${number === 1 ? "" : "s"}`;
