import { foundText, type Problem } from "./problem.ts";
import { JOB_FORMAT, JOB_VERSION } from "./schema.ts";

/** A file of version `from` made into one of version `from + 1`. Never changes its argument; never throws, whatever the file holds. */
export interface Migration {
	readonly from: number;
	readonly apply: (file: RawFile) => RawFile;
}

type RawFile = Readonly<Record<string, unknown>>;

type Migrated = { readonly ok: true; readonly file: unknown } | { readonly ok: false; readonly problem: Problem };

/** In order of version. Version 1 is the first, so nothing is older yet. */
const migrations: readonly Migration[] = [];

/**
 * Brings a file to the present version before it is checked. A file of another format or of a newer version is
 * refused: nothing else in it can be judged. All else, a missing version too, is left for the schema to name.
 */
export const migrate = (
	file: unknown,
	steps: readonly Migration[] = migrations,
	current: number = JOB_VERSION,
): Migrated => {
	if (!isRecord(file)) return { ok: true, file };
	if (file.format !== undefined && file.format !== JOB_FORMAT) {
		return refused("format", file.format, `"${JOB_FORMAT}": this is not a Baywright job`);
	}
	if (typeof file.version === "number" && file.version > current) {
		return refused(
			"version",
			file.version,
			`up to ${current}: the file was made by a newer Baywright, this one reads up to ${current}`,
		);
	}
	return { ok: true, file: steps.reduce(stepUp, file) };
};

const stepUp = (file: RawFile, step: Migration): RawFile =>
	file.version === step.from ? { ...step.apply(file), version: step.from + 1 } : file;

const refused = (path: string, value: unknown, allowed: string): Migrated => ({
	ok: false,
	problem: { path, found: foundText(value), allowed },
});

const isRecord = (value: unknown): value is RawFile =>
	typeof value === "object" && value !== null && !Array.isArray(value);
