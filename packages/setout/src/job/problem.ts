import type { z } from "zod";

/** Something wrong in a file: where, what is there, and what may be there. */
export interface Problem {
	/** `bays[0].walls[2].rise`; empty for the file as a whole. */
	readonly path: string;
	readonly found: string;
	readonly allowed: string;
}

/** One plain line for a person. */
export const problemLine = ({ path, found, allowed }: Problem): string =>
	`${path === "" ? "the file" : path}: found ${found}, allowed ${allowed}`;

/** Longest quoted text in a problem, in characters: enough to recognise it, short enough for one line. */
const LONGEST_QUOTE = 40;

/** What was found, in words short enough for one line. */
export const foundText = (value: unknown): string => {
	if (value === undefined) return "nothing";
	if (typeof value === "string") return quoted(value);
	if (Array.isArray(value)) return value.length === 0 ? "an empty list" : `a list of ${value.length}`;
	if (typeof value === "object" && value !== null) return "an object";
	if (typeof value === "function" || typeof value === "symbol") return `a ${typeof value}`;
	return String(value);
};

/** A path as in `bays[0].walls[2].rise`. */
const pathText = (path: readonly PropertyKey[]): string => path.map(stepText).join("").replace(/^\./, "");

/** The problems of a file that does not match its schema. `file` is what was parsed. */
export const issueProblems = (file: unknown, issues: readonly z.core.$ZodIssue[]): Problem[] =>
	issues.flatMap((issue) => problemsAt(file, issue, issue.path));

const problemsAt = (file: unknown, issue: z.core.$ZodIssue, path: readonly PropertyKey[]): Problem[] => {
	const inner = issue.code === "invalid_union" ? meantBranch(issue.errors) : undefined;
	if (inner !== undefined) return inner.flatMap((each) => problemsAt(file, each, [...path, ...each.path]));
	const paths = issue.code === "unrecognized_keys" ? issue.keys.map((key) => [...path, key]) : [path];
	return paths.map((each) => ({ path: pathText(each), found: foundText(valueAt(file, each)), allowed: issue.message }));
};

/** The alternative whose own shape was right and only something inside it wrong: the one that was meant. */
const meantBranch = (branches: readonly (readonly z.core.$ZodIssue[])[]): readonly z.core.$ZodIssue[] | undefined =>
	branches.find((issues) => issues.length > 0 && issues.every((issue) => issue.path.length > 0));

const valueAt = (file: unknown, path: readonly PropertyKey[]): unknown =>
	path.reduce<unknown>(
		(value, key) =>
			typeof value === "object" && value !== null && Object.hasOwn(value, key) ? (value as never)[key] : undefined,
		file,
	);

const stepText = (key: PropertyKey): string => {
	if (typeof key === "number") return `[${key}]`;
	const name = String(key);
	return /^[A-Za-z_$][\w$]{0,39}$/.test(name) ? `.${name}` : `[${quoted(name)}]`;
};

/** In quotes, cut short, and with nothing in it that could break the line or hide in it. */
const quoted = (text: string): string => {
	const short = text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE - 1)}…` : text;
	const visible = short.replace(
		/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu,
		(c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`,
	);
	return visible.includes('"') ? `“${visible}”` : `"${visible}"`;
};
