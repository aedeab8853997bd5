import { TypedField } from "./typed-field.tsx";

interface Props {
	readonly label: string;
	readonly value: string;
	readonly instead?: string;
	readonly commit: (text: string) => string | null;
}

/** A word or a line, such as a title; may be left empty. */
export function TextLine({ label, value, commit, instead = "" }: Props) {
	return (
		<TypedField
			label={label}
			labelHidden
			align="start"
			text={value}
			instead={instead}
			read={(text) => ({ ok: true, value: text })}
			commit={commit}
			clear={() => commit("")}
		/>
	);
}
