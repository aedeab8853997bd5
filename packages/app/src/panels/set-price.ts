import { desk } from "../desk/desk.ts";

/** Puts what one of a part costs into the job's list, or takes it out (null). Null, as a field takes it: nothing is wrong. */
export function setPrice(item: string, each: number | null): null {
	const { job, change } = desk.getState();
	const others = job.prices.filter((price) => price.item !== item);
	const at = job.prices.findIndex((price) => price.item === item);
	const value = each === null ? others : others.toSpliced(at < 0 ? others.length : at, 0, { item, each });
	change(each === null ? `no price for ${item}` : `price of ${item}`, [{ op: "replace", path: "/prices", value }]);
	return null;
}
