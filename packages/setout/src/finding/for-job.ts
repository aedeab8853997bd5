import type { Finding } from "./finding.ts";

/** A bay's finding as one of its job: the bay named, remedy paths from the root of the job. */
export function forJob(finding: Finding, bay: number, id: string): Finding {
	const fromJob = (path: string) => `/bays/${bay}${path}`;
	return {
		...finding,
		where: { bay: id, ...finding.where },
		remedies: finding.remedies.map((remedy) => ({
			...remedy,
			change: remedy.change.map((operation) => ({ ...operation, path: fromJob(operation.path) })),
		})),
	};
}
