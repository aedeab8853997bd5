import { Radio, RadioGroup } from "react-aria-components";

interface Props<Value extends string> {
	readonly label: string;
	readonly value: Value;
	readonly options: readonly (readonly [value: Value, word: string])[];
	readonly choose: (value: Value) => void;
	readonly labelHidden?: boolean;
}

/** One of a few, all in sight: a row of words with the chosen one underlined by the track. */
export function Choice<Value extends string>({ label, value, options, choose, labelHidden = false }: Props<Value>) {
	return (
		<RadioGroup
			className="choice"
			aria-label={label}
			orientation="horizontal"
			value={value}
			onChange={(chosen) => choose(chosen as Value)}
		>
			{labelHidden ? null : (
				<span className="choice-label" aria-hidden="true">
					{label}
				</span>
			)}
			<div className="choice-options">
				{options.map(([option, word]) => (
					<Radio key={option} value={option} className="choice-option">
						{word}
					</Radio>
				))}
			</div>
		</RadioGroup>
	);
}
