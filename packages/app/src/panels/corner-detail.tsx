import { canRemoveCorner, removeCorner } from "@baywright/editor";
import { capital, cornerName, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { useBay } from "../desk/on-table.ts";
import { removeChosen } from "./stretch-fields.tsx";

interface Props {
	readonly corner: number;
	readonly walls: number;
}

/** What can be done with one corner: taken out, its two walls become one; at an end of the bay its wall goes. */
export function CornerDetail({ corner, walls }: Props) {
	const removable = useBay((bay) => canRemoveCorner(bay, corner));
	const name = cornerName(corner, walls);
	const end = corner === 0 || corner === walls;
	return (
		<div className="corner-detail">
			<Button
				className="button"
				isDisabled={!removable}
				onPress={() => removeChosen(`remove ${name}`, (bay) => removeCorner(bay, corner))}
			>
				Remove {name}
			</Button>
			<p className="quiet">
				{!removable
					? "A bay keeps at least one wall."
					: end
						? `The ${wallName(corner === 0 ? 0 : walls - 1, walls)} goes with it.`
						: `${capital(wallName(corner - 1, walls))} and ${wallName(corner, walls)} become one.`}
			</p>
		</div>
	);
}
