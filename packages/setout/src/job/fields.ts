import { z } from "zod";

/**
 * Building blocks of the file schemas. Every block says in plain words what it allows: that text is the message of
 * every issue it raises, so an error line can be put together without knowing which check failed.
 */

/** All the way down readonly: what a parsed file is. */
export type DeepReadonly<T> = T extends object ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> } : T;

/** An object with these keys and no others. `allowed` names the thing itself, for when there is no object at all. */
export const record = <Shape extends z.core.$ZodLooseShape>(
	shape: Shape,
	allowed: string,
): z.ZodObject<Shape, z.core.$strict> => {
	const known = `no such key; known here: ${Object.keys(shape).join(", ")}`;
	return z.strictObject(shape, { error: (issue) => (issue.code === "unrecognized_keys" ? known : allowed) });
};

export const list = <Item extends z.ZodType>(item: Item, of: string): z.ZodArray<Item> => {
	return z.array(item, { error: `a list of ${of}` });
};

/** A list that may be left out. */
export const listOrNone = <Item extends z.ZodType>(item: Item, of: string): z.ZodDefault<z.ZodArray<Item>> =>
	list(item, of).default([] as never);

export const pair = (allowed: string): z.ZodTuple<[z.ZodNumber, z.ZodNumber], null> => {
	const item = z.number({ error: "a number of mm" });
	return z.tuple([item, item], { error: allowed });
};

export const text = (fallback = ""): z.ZodDefault<z.ZodString> => z.string({ error: "text" }).default(fallback);

export const identifier = (): z.ZodString =>
	z.string({ error: ID_ALLOWED }).regex(/^(?!\s)[^\p{Cc}]{1,80}(?<!\s)$/u, { error: ID_ALLOWED });

const ID_ALLOWED = "text of 1 to 80 characters, with no space at either end";

export const oneOf = <const Values extends readonly [string, ...string[]]>(values: Values) =>
	z.enum(values, { error: `one of ${values.join(", ")}` });

/** Limits of a number; `over` and `under` are not themselves allowed. */
interface Range {
	readonly over?: number;
	readonly least?: number;
	readonly under?: number;
	readonly most?: number;
}

export const OVER_ZERO: Range = { over: 0 };
export const NOT_NEGATIVE: Range = { least: 0 };
/** For what is counted out along a track: less would be thousands of brackets. */
export const FROM_ONE: Range = { least: 1 };

/** Longest length taken, mm: a kilometre, far beyond any bay and near enough to reckon with. */
const LONGEST = 1_000_000;

/** A finite number of `unit`. */
export const amount = (unit: string, range: Range = {}): z.ZodNumber => limited(range, rangeText(unit, range));

/** A finite number of `unit`, or null, which is also what it is when left out. */
export const amountOrNull = (unit: string, range: Range = {}): z.ZodDefault<z.ZodNullable<z.ZodNumber>> =>
	limited(range, `${rangeText(unit, range)}, or null`)
		.nullable()
		.default(null);

export const mm = (range: Range = {}): z.ZodNumber => withinReach(limited(range, rangeText("mm", range)));

export const mmOrNull = (range: Range = {}): z.ZodDefault<z.ZodNullable<z.ZodNumber>> =>
	withinReach(limited(range, `${rangeText("mm", range)}, or null`))
		.nullable()
		.default(null);

const withinReach = (number: z.ZodNumber): z.ZodNumber =>
	number.lte(LONGEST, { error: `at most ${LONGEST} mm` }).gte(-LONGEST, { error: `at least -${LONGEST} mm` });

/** A place in a list, counted from 0. Whether the list is that long is for the reference checks. */
export const index = (of: string): z.ZodInt => {
	const error = `the number of ${of}, counted from 0`;
	return z.int({ error }).min(0, { error });
};

const limited = (range: Range, error: string): z.ZodNumber => {
	let number = z.number({ error });
	if (range.over !== undefined) number = number.gt(range.over, { error });
	if (range.least !== undefined) number = number.gte(range.least, { error });
	if (range.under !== undefined) number = number.lt(range.under, { error });
	if (range.most !== undefined) number = number.lte(range.most, { error });
	return number;
};

const rangeText = (unit: string, range: Range): string => {
	const limits = [
		range.over === undefined ? null : `over ${range.over}`,
		range.least === undefined ? null : `${range.least} or more`,
		range.under === undefined ? null : `under ${range.under}`,
		range.most === undefined ? null : `${range.most} or less`,
	].filter((limit) => limit !== null);
	const base = unit === "" ? "a number" : `a number of ${unit}`;
	return limits.length === 0 ? base : `${base}, ${limits.join(" and ")}`;
};
