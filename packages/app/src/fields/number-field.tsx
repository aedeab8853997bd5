import { TypedField } from "./typed-field.tsx";

interface Props {
	readonly label: string;
	/** Null where nothing is set. */
	readonly value: number | null;
	readonly least: number;
	readonly greatest: number;
	readonly commit: (value: number) => string | null;
	/** Present where the field may be emptied. */
	readonly clear?: () => string | null;
	/** Shown at the end of the field. */
	readonly unit?: string;
	readonly instead?: string;
}

/** A bare number, such as a fullness: `2`, `2.25`, `2,25`. */
export function NumberField({ label, value, least, greatest, ...rest }: Props) {
	const allowed = `write a number from ${least} to ${greatest}`;
	return (
		<TypedField
			label={label}
			text={value === null ? "" : String(value)}
			inputMode="decimal"
			read={(text) => {
				const typed = text.trim();
				if (!/^\d+(?:[.,]\d+)?$/.test(typed)) return { ok: false, message: `“${typed}” is not a number: ${allowed}.` };
				const number = Number(typed.replace(",", "."));
				if (number < least || number > greatest) return { ok: false, message: `${typed} is out of reach: ${allowed}.` };
				return { ok: true, value: number };
			}}
			{...rest}
		/>
	);
}
