import { AT_95, formatLength, SURE_ENOUGH } from "@baywright/setout";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { usePlanPart } from "../desk/on-table.ts";
import { Agreement } from "./agreement.tsx";
import type { ToTake } from "./next-to-take.ts";
import { goTo } from "./taking.ts";

interface Props {
	readonly list: readonly ToTake[];
	/** What is asked now; null where nothing is. */
	readonly asked: ToTake | null;
}

/** How far the readings agree and how sure the cut length is by now; a reading in doubt, to be taken again. */
export function Standing({ list, asked }: Props) {
	const survey = usePlanPart((plan) => plan.survey);
	const suspect = survey?.suspects[0];
	const named = suspect === undefined ? [] : [...suspect.readings, ...suspect.alike];
	const doubted = list.filter(
		({ what }) => what.kind === "reading" && what.index !== null && named.includes(what.index),
	);
	const isChecked = survey !== null && Math.round(survey.redundancy) > 0;
	return (
		<div className="taking-standing">
			{isChecked ? <Agreement /> : null}
			{doubted.length === 0 ? null : (
				<div className="pair">
					{doubted.map(({ key }) => (
						<Button key={key} className="button" isDisabled={key === asked?.key} onPress={() => goTo(key)}>
							Take the {key} again
						</Button>
					))}
				</div>
			)}
			<Sureness asked={asked} />
		</div>
	);
}

/** The ± of the least sure cut length, and what the reading that is asked would make of it. */
function Sureness({ asked }: Pick<Props, "asked">) {
	const unit = useDesk((state) => state.shown.display.length);
	const pieces = usePlanPart((plan) => plan.pieces);
	const survey = usePlanPart((plan) => plan.survey);
	const next = survey?.next ?? null;
	const worst = pieces.reduce<(typeof pieces)[number] | null>(
		(most, piece) => (piece.sd !== null && (most?.sd ?? -1) < piece.sd ? piece : most),
		null,
	);
	if (worst === null || worst.sd === null) return null;
	const show = (sd: number) => `± ${formatLength(AT_95 * sd, unit, { unit: true, precision: 1 })}`;
	const isNext =
		next !== null &&
		asked?.what.kind === "reading" &&
		JSON.stringify(asked.what.reading) === JSON.stringify(next.reading);
	// A slip that nothing would show, or that shows, is not covered by any ±.
	const isSound = survey?.closes === true && survey.suspects.length === 0 && Math.round(survey.redundancy) > 0;
	const enough = isSound && worst.sd <= SURE_ENOUGH ? ", sure enough to cut" : "";
	return (
		<p className="taking-sure">
			Cut length{pieces.length > 1 ? ` of ${worst.name}` : ""} {show(worst.sd)}
			{isNext ? `, with this reading ${show(next.reaches)}` : enough}
		</p>
	);
}
