export const PLANNED = 0;
/** Bad input or a failure. */
export const FAILED = 1;
/** Planned, but something in it cannot be fitted. */
export const REFUSED = 2;

export type ExitStatus = typeof PLANNED | typeof FAILED | typeof REFUSED;

/** The status of several jobs together: a failure counts before a refusal. */
export function together(statuses: readonly ExitStatus[]): ExitStatus {
	if (statuses.includes(FAILED)) return FAILED;
	return statuses.includes(REFUSED) ? REFUSED : PLANNED;
}
