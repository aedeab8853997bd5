import { formatAngle } from "@baywright/setout";
import { GREATEST_ANGLE, readAngle } from "./read-angle.ts";
import { TypedField } from "./typed-field.tsx";

interface Props {
	readonly label: string;
	/** Room angle, degrees; null where nothing is set. */
	readonly value: number | null;
	/** degrees */
	readonly greatest?: number;
	readonly commit: (degrees: number) => string | null;
	readonly labelHidden?: boolean;
	readonly onFocus?: () => void;
	readonly onRefused?: (refused: boolean) => void;
}

/** A room angle in degrees. */
export function AngleField({ value, greatest = GREATEST_ANGLE, ...rest }: Props) {
	return (
		<TypedField
			text={value === null ? "" : formatAngle(value)}
			read={(text) => readAngle(text, greatest)}
			inputMode="decimal"
			{...rest}
		/>
	);
}
