import { severityOf } from "@baywright/setout";
import { Button } from "react-aria-components";
import { usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { SeverityMark } from "../panels/severity-mark.tsx";

/** Always under the thumb on a phone: what to look out for, and the corner card. */
export function PhoneBar() {
	const worst = usePlan((plan) => {
		const severities = plan.findings.map((finding) => severityOf(finding.code));
		return (["refusal", "warning", "note"] as const).find((each) => severities.includes(each)) ?? null;
	});
	const count = usePlan((plan) => plan.findings.length);
	return (
		<nav className="phone-bar" aria-label="Shortcuts">
			<a className="button" href="#findings">
				{worst === null ? null : <SeverityMark severity={worst} />}
				Findings ({count})
			</a>
			<Button
				className="button button-main"
				onPress={() => screen.getState().show({ kind: "corner-card", corner: null })}
			>
				Corner card
			</Button>
		</nav>
	);
}
