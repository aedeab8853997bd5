import type { Desk } from "@baywright/editor";
import { AT_95, type BayPlan, formatSpread, type LengthUnit } from "@baywright/setout";
import { planOnTable, usePlan } from "../desk/on-table.ts";
import { Figure } from "./figure.tsx";

interface Props {
	/** One standard deviation of the figure, mm; null where there is none. */
	readonly of: (plan: BayPlan) => number | null | undefined;
	readonly className?: string;
}

/** How sure a figure of a taped bay is, at 95 %: nothing where nothing was taped, and three dots while a drag goes on. */
export function PlusMinus({ of, className = "under" }: Props) {
	const isTaped = useTaped();
	return isTaped ? <Figure className={className} of={(desk) => sdOf(desk, of)} format={plusMinus} none="± …" /> : null;
}

/** Whether figures come with their ±. */
export const useTaped = (): boolean => usePlan((plan) => plan.survey?.settled === true && plan.path !== null);

/** mm: less than this rounds to nought and is not told. */
const LEAST_TOLD = 0.05;

/** A figure that has no ± of its own though the others have theirs. */
const NO_SD = 0;

function sdOf(desk: Desk, of: Props["of"]): number | null {
	const plan = planOnTable(desk);
	return of(plan) ?? (isHasty(plan) ? null : NO_SD);
}

const isHasty = ({ pieces }: BayPlan): boolean => (pieces[0]?.sd ?? null) === null;

/** `± 2.1`. */
const plusMinus = (sd: number, unit: LengthUnit): string =>
	AT_95 * sd < LEAST_TOLD ? "" : `± ${formatSpread(sd, unit)}`;
