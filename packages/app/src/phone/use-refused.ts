import { severityOf } from "@baywright/setout";
import { usePlan } from "../desk/on-table.ts";

/** Something stands in the way: nothing is to be cut or drilled by this plan. A bay without walls is not refused, only not begun. */
export const useRefused = (): boolean =>
	usePlan((plan) => plan.projections.length > 0 && plan.findings.some(({ code }) => severityOf(code) === "refusal"));
