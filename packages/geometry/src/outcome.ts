/** An answer, or the faults that stand in its way. Infeasible input is an answer, never an exception. */
export type Outcome<Value, Fault> =
	| { readonly ok: true; readonly value: Value }
	| { readonly ok: false; readonly faults: readonly Fault[] };

export const found = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value });

export const refused = <Fault>(...faults: Fault[]): { readonly ok: false; readonly faults: readonly Fault[] } => ({
	ok: false,
	faults,
});
