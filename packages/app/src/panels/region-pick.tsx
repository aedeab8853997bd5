import type { Region } from "@baywright/setout";
import { desk, useDesk } from "../desk/desk.ts";
import { Pick } from "../fields/pick.tsx";

/** Where the track hangs: whose rules its cautions are from. */
export function RegionPick() {
	const region = useDesk((state) => state.shown.region);
	return (
		<Pick
			label="Cautions as in"
			value={region}
			options={REGIONS}
			choose={(to) => {
				desk.getState().change("region of the cautions", [{ op: "replace", path: "/region", value: to }]);
			}}
		/>
	);
}

const REGIONS: readonly (readonly [Region, string])[] = [
	["GB", "Great Britain"],
	["IE", "Ireland"],
	["EU", "European Union"],
	["US", "United States"],
	["CA", "Canada"],
	["AU", "Australia"],
	["other", "elsewhere: the strictest listed"],
];
