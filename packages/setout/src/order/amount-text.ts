import type { OrderLine } from "./job-order.ts";

/** So much of a part: pieces as a number, metres to the tenth with their unit. */
export const amountText = (amount: number, unit: OrderLine["unit"]): string =>
	unit === "m" ? `${amount.toFixed(1)} m` : String(amount);
