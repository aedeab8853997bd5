import { CautionList } from "../panels/caution-list.tsx";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { RegionPick } from "../panels/region-pick.tsx";
import { Sheet } from "../shell/sheet.tsx";
import { phone } from "./views.ts";

/** What the plan must tell of this bay, and what every fitting brings with it. */
export function CautionsSheet() {
	return (
		<Sheet title="Cautions" wide onClose={() => phone.setState({ cautions: false })}>
			<div className="cautions-sheet">
				<FindingsPanel />
				<h3>For every fitting</h3>
				<RegionPick />
				<CautionList />
			</div>
		</Sheet>
	);
}
