import { wallLength } from "@baywright/editor";
import type { WallPlace } from "@baywright/setout";
import { useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { WallPick } from "./wall-pick.tsx";

interface Props {
	readonly place: WallPlace;
	readonly set: (place: WallPlace) => void;
}

/** A place on a wall face: which wall, and how far from either of its corners. */
export function PlaceFields({ place: { wall, at }, set }: Props) {
	const length = useBay((bay) => wallLength(bay, wall));
	const put = (to: number) => {
		set({ wall, at: to });
		return null;
	};
	return (
		<>
			<WallPick wall={wall} choose={(to) => set({ wall: to, at })} />
			<LengthField label="From left corner" value={at} least={0} greatest={length} commit={put} />
			<LengthField
				label="From right corner"
				value={length - at}
				least={0}
				greatest={length}
				commit={(mm) => put(length - mm)}
			/>
		</>
	);
}
