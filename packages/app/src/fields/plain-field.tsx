import { useId } from "react";

interface Props {
	readonly label: string;
	readonly text: string;
	readonly change: (text: string) => void;
	/** The unit of a bare number, shown at the end of the field. */
	readonly unit?: string;
	/** Why what is typed would not do; "" where it would. */
	readonly refused: string;
}

/** A field of a small form: what is typed waits for the form's own button. */
export function PlainField({ label, text, change, refused, unit }: Props) {
	const id = useId();
	return (
		<div className="field field-end" data-invalid={refused === "" ? undefined : true}>
			<label className="field-label" htmlFor={id}>
				{label}
			</label>
			<span className="field-box">
				<input
					id={id}
					type="text"
					value={text}
					autoComplete="off"
					spellCheck={false}
					aria-invalid={refused === "" ? undefined : true}
					aria-describedby={refused === "" ? undefined : `${id}-error`}
					onChange={(event) => change(event.currentTarget.value)}
				/>
				{unit === undefined ? null : (
					<span className="field-unit" aria-hidden="true">
						{unit}
					</span>
				)}
			</span>
			{refused === "" ? null : (
				<p className="field-error" id={`${id}-error`} role="alert">
					{refused}
				</p>
			)}
		</div>
	);
}
