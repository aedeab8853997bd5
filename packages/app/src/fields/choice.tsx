import { useId } from "react";

interface Props<Value extends string> {
	readonly label: string;
	readonly value: Value;
	readonly options: readonly (readonly [value: Value, word: string])[];
	readonly choose: (value: Value) => void;
	readonly labelHidden?: boolean;
}

/** One of a few, all in sight: a row of words with the chosen one underlined by the track. */
export function Choice<Value extends string>({ label, value, options, choose, labelHidden = false }: Props<Value>) {
	const name = useId();
	return (
		<div className="choice" role="radiogroup" aria-label={label}>
			{labelHidden ? null : (
				<span className="choice-label" aria-hidden="true">
					{label}
				</span>
			)}
			<div className="choice-options">
				{options.map(([option, word]) => (
					<label key={option} className="choice-option">
						<input
							className="hidden"
							type="radio"
							name={name}
							value={option}
							checked={option === value}
							onChange={() => choose(option)}
						/>
						{word}
					</label>
				))}
			</div>
		</div>
	);
}
