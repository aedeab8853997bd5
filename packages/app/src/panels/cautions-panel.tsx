import { useDesk } from "../desk/desk.ts";
import { CautionList } from "./caution-list.tsx";
import { RegionPick } from "./region-pick.tsx";
import { Section } from "./section.tsx";

/** What to beware of before anything is drilled, cut or hung. */
export function CautionsPanel() {
	const region = useDesk((state) => state.shown.region);
	return (
		<Section title="Cautions" gist={region === "other" ? "elsewhere" : region} open={false}>
			<RegionPick />
			<CautionList />
		</Section>
	);
}
