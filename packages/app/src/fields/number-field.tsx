import { TypedField } from "./typed-field.tsx";

interface Props {
	readonly label: string;
	readonly value: number;
	readonly least: number;
	readonly greatest: number;
	readonly commit: (value: number) => string | null;
}

/** A bare number, such as a fullness: `2`, `2.25`, `2,25`. */
export function NumberField({ label, value, least, greatest, commit }: Props) {
	const allowed = `write a number from ${least} to ${greatest}`;
	return (
		<TypedField
			label={label}
			text={String(value)}
			inputMode="decimal"
			read={(text) => {
				const typed = text.trim();
				if (!/^\d+(?:[.,]\d+)?$/.test(typed)) return { ok: false, message: `“${typed}” is not a number: ${allowed}.` };
				const number = Number(typed.replace(",", "."));
				if (number < least || number > greatest) return { ok: false, message: `${typed} is out of reach: ${allowed}.` };
				return { ok: true, value: number };
			}}
			commit={commit}
		/>
	);
}
