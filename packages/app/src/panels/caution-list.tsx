import { cautionsFor } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { usePlan } from "../desk/on-table.ts";
import "../styles/cautions.css";

/** What to beware of: of every fitting, and on a corded track of its cords, as the job's region has it. */
export function CautionList() {
	const region = useDesk((state) => state.shown.region);
	const corded = usePlan((plan) => plan.cords !== null);
	return (
		<dl className="cautions">
			{cautionsFor(region, corded).map(({ about, text }) => (
				<div key={about}>
					<dt>{about}</dt>
					<dd>{text}</dd>
				</div>
			))}
		</dl>
	);
}
