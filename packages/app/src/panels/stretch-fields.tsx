import { NARROWEST, wallLength } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";

/** mm along the face from the wall's left corner. */
export interface Along {
	readonly wall: number;
	readonly from: number;
	readonly to: number;
}

interface Props {
	readonly of: (bay: Bay) => Along | undefined;
	/** What a history calls it: "the opening". */
	readonly name: string;
	readonly set: (bay: Bay, part: Partial<Along>) => Bay;
}

/** Where something stands along its wall: from either corner, and how wide it is. */
export function StretchFields({ of, name, set }: Props) {
	const from = useBay((bay) => of(bay)?.from ?? 0);
	const to = useBay((bay) => of(bay)?.to ?? 0);
	const length = useBay((bay) => wallLength(bay, of(bay)?.wall ?? 0));
	const edit = (what: string, part: Partial<Along>) => editBay(`${what} of ${name}`, (bay) => set(bay, part));
	return (
		<>
			<LengthField
				label="From left corner"
				value={from}
				least={0}
				greatest={Math.max(0, length - NARROWEST)}
				commit={(mm) => edit("place", { from: mm, to: Math.min(length, mm + to - from) })}
			/>
			<LengthField
				label="Width"
				value={to - from}
				least={NARROWEST}
				greatest={Math.max(NARROWEST, length - from)}
				commit={(mm) => edit("width", { to: from + mm })}
			/>
			<LengthField
				label="From right corner"
				value={length - to}
				least={0}
				greatest={Math.max(0, length - NARROWEST)}
				commit={(mm) => edit("place", { from: Math.max(0, length - mm - (to - from)), to: length - mm })}
			/>
		</>
	);
}

/** Takes the chosen thing away and lets go of it. */
export function removeChosen(label: string, change: (bay: Bay) => Bay): void {
	desk.getState().select(null);
	editBay(label, change);
}
