import { formatAngle, type LengthUnit, type Reading } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { GREATEST_ANGLE, readAngle } from "../fields/read-angle.ts";
import { TypedField } from "../fields/typed-field.tsx";

interface ValueProps {
	readonly reading: Pick<Reading, "kind"> & { readonly arm?: number };
	readonly label: string;
	readonly value: number | null;
	readonly commit: (value: number) => string | null;
}

/** What a reading of this kind reads: degrees for an angle, else a length. */
export function ValueField({ reading, label, value, commit }: ValueProps) {
	if (reading.kind === "angle")
		return (
			<TypedField
				label={label}
				text={value === null ? "" : formatAngle(value)}
				read={(text) => readAngle(text, GREATEST_ANGLE)}
				inputMode="decimal"
				commit={commit}
			/>
		);
	const signed = reading.kind === "rise" || reading.kind === "square";
	const bounds = signed ? { least: -LONGEST } : { least: LEAST };
	const greatest = reading.arm === undefined ? {} : { greatest: 2 * reading.arm - LEAST };
	return <LengthField label={label} value={value} commit={commit} {...bounds} {...greatest} />;
}

/** mm. */
const LEAST = 1;
const LONGEST = 10_000;

/** What readings are put into words with. */
export function useWording(): { readonly unit: LengthUnit; readonly walls: number } {
	const unit = useDesk((state) => state.shown.display.length);
	const walls = useBay((bay) => bay.walls.length);
	return { unit, walls };
}
