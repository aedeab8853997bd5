import { useId } from "react";

interface Props<Value extends string> {
	readonly label: string;
	readonly value: Value;
	readonly options: readonly (readonly [value: Value, word: string])[];
	readonly choose: (value: Value) => void;
}

/** One of more than a few: the list that the system brings, which every device knows how to show. */
export function Pick<Value extends string>({ label, value, options, choose }: Props<Value>) {
	const id = useId();
	return (
		<div className="field">
			<label className="field-label" htmlFor={id}>
				{label}
			</label>
			<span className="field-box pick">
				<select id={id} value={value} onChange={(event) => choose(event.currentTarget.value as Value)}>
					{options.map(([option, word]) => (
						<option key={option} value={option}>
							{word}
						</option>
					))}
				</select>
			</span>
		</div>
	);
}
