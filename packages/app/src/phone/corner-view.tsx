import { SLIGHT_TURN } from "@baywright/geometry";
import { useState } from "react";
import { usePlanPart } from "../desk/on-table.ts";
import { Pick } from "../fields/pick.tsx";
import { CornerCard } from "../panels/corner-card/corner-card.tsx";

/** The corner card at hand: for a corner of the bay, or for an odd one that is in no bay. */
export function CornerView() {
	const corners = usePlanPart(({ chain }) =>
		(chain?.turns ?? []).flatMap((turn, corner) => (turn > SLIGHT_TURN ? [corner] : [])),
	);
	const [chosen, setChosen] = useState<string>(String(corners[0] ?? ODD));
	const corner = corners.find((each) => String(each) === chosen) ?? ODD;
	const key = String(corner);
	return (
		<section aria-label="Corner" className="corner-view">
			{corners.length === 0 ? null : (
				<Pick
					label="Work out"
					value={key}
					options={[...corners.map((each) => [String(each), `corner ${each}`] as const), [ODD, "an odd corner"]]}
					choose={setChosen}
				/>
			)}
			<CornerCard key={key} corner={corner} />
		</section>
	);
}

/** A corner of no bay. */
const ODD = "odd";
