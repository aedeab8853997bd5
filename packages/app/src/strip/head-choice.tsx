import { type ReactNode, useId } from "react";

interface Props<Value extends string> {
	readonly label: string;
	/** Said before the choices, where they do not say it themselves. */
	readonly before?: ReactNode;
	readonly options: readonly (readonly [value: Value, words: string])[];
	readonly value: Value;
	readonly choose: (value: Value) => void;
}

/** One of a few in the head of the strip or the elevation. */
export function HeadChoice<Value extends string>({ label, before, options, value, choose }: Props<Value>) {
	const group = useId();
	return (
		<fieldset className="strip-ends" aria-label={label}>
			{before}
			{options.map(([option, words]) => (
				<label key={option} className="strip-end">
					<input type="radio" name={group} value={option} checked={value === option} onChange={() => choose(option)} />
					{words}
				</label>
			))}
		</fieldset>
	);
}

/** The unit as it is said in a head. */
export const HEAD_UNITS = { mm: "mm", cm: "cm", in: "inches" } as const;
