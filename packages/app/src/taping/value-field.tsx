import { withReading } from "@baywright/editor";
import { capital, type LengthUnit, readingName } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay } from "../desk/on-table.ts";
import { AngleField } from "../fields/angle-field.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { type Bounded, boundsOf } from "./bounds.ts";
import type { Untaken } from "./usual-readings.ts";

interface ValueProps {
	readonly reading: Bounded;
	readonly label: string;
	readonly value: number | null;
	readonly commit: (value: number) => string | null;
}

/** What a reading of this kind reads: degrees for an angle, else a length. */
export function ValueField({ reading, label, value, commit }: ValueProps) {
	if (reading.kind === "angle") return <AngleField label={label} value={value} commit={commit} />;
	return <LengthField label={label} value={value} commit={commit} {...boundsOf(reading)} />;
}

/** Takes a reading that is not taken yet, by typing what it reads. */
export function TakeField({ reading }: { readonly reading: Untaken }) {
	const { walls } = useWording();
	const name = readingName(reading, walls);
	return (
		<ValueField
			key={name}
			reading={reading}
			label={capital(name)}
			value={null}
			commit={(value) => editBay(`take the ${name}`, (bay) => withReading(bay, { ...reading, value }))}
		/>
	);
}

/** What readings are put into words with. */
export function useWording(): { readonly unit: LengthUnit; readonly walls: number } {
	const unit = useDesk((state) => state.shown.display.length);
	const walls = useBay((bay) => bay.walls.length);
	return { unit, walls };
}
