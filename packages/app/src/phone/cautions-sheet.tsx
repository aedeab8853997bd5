import { CAUTIONS } from "@baywright/setout";
import { FindingsPanel } from "../panels/findings-panel.tsx";
import { Sheet } from "../shell/sheet.tsx";
import { phone } from "./views.ts";

/** What the plan must tell of this bay, and what every fitting brings with it. */
export function CautionsSheet() {
	return (
		<Sheet title="Cautions" wide onClose={() => phone.setState({ cautions: false })}>
			<div className="cautions-sheet">
				<FindingsPanel />
				<h3>For every fitting</h3>
				<dl className="cautions">
					{CAUTIONS.map(({ about, text }) => (
						<div key={about}>
							<dt>{about}</dt>
							<dd>{text}</dd>
						</div>
					))}
				</dl>
			</div>
		</Sheet>
	);
}
