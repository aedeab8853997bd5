import { cautionsFor, severityOf } from "@baywright/setout";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { usePlan, usePlanPart } from "../desk/on-table.ts";
import { SeverityMark } from "../panels/severity-mark.tsx";
import { markTitle } from "../phone/mark-words.ts";
import { useMarks } from "../phone/use-marks.ts";
import { goToMark, phone } from "../phone/views.ts";

/** Always under the thumb on a phone: what to look out for, and what to do next. */
export function PhoneBar() {
	const told = usePlanPart((plan) =>
		// A bay without walls is only not begun.
		plan.projections.length === 0 ? [] : plan.findings.map((finding) => severityOf(finding.code)),
	);
	const corded = usePlan((plan) => plan.cords !== null);
	const region = useDesk((state) => state.shown.region);
	const worst = (["refusal", "warning", "note"] as const).find((each) => told.includes(each));
	return (
		<nav className="phone-bar" aria-label="Shortcuts">
			<Button className="button" onPress={() => phone.setState({ cautions: true })}>
				{worst === undefined ? null : <SeverityMark severity={worst} />}
				Cautions ({told.length + cautionsFor(region, corded).length})
			</Button>
			{worst === "refusal" ? <p className="phone-bar-word">Do not cut or drill</p> : <Next />}
		</nav>
	);
}

function Next() {
	const { marks, next } = useMarks();
	if (marks.length === 0) return null;
	if (next === null) return <p className="phone-bar-word">All {marks.length} done</p>;
	return (
		<Button className="button button-main" onPress={() => goToMark(next.name)}>
			Next: {markTitle(next)}
		</Button>
	);
}
