import type { OrderLine } from "./job-order.ts";

/** So much of a part: pieces as a number, metres to the tenth with their unit. */
export const amountText = (amount: number, unit: OrderLine["unit"]): string =>
	unit === "m" ? `${amount.toFixed(1)} m` : String(amount);

/** What one costs: to the hundredth, or as fine as it was given. */
export const priceText = (each: number): string => {
	const given = each.toFixed(4).replace(/0+$/, "");
	return given.length > each.toFixed(2).length ? given : each.toFixed(2);
};
