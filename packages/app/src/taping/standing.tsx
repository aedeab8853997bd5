import { AT_95, formatLength, SURE_ENOUGH } from "@baywright/setout";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { usePlanPart } from "../desk/on-table.ts";
import { Agreement } from "./agreement.tsx";
import { inDoubt } from "./in-doubt.ts";
import type { ToTake } from "./next-to-take.ts";
import { goTo, showList } from "./taking.ts";
import type { Untaken } from "./usual-readings.ts";

interface Props {
	readonly list: readonly ToTake[];
	/** What is asked now; null where nothing is. */
	readonly asked: ToTake | null;
}

/** How far the readings agree and how sure the cut length is by now; a reading in doubt, to be taken again. */
export function Standing({ list, asked }: Props) {
	const survey = usePlanPart((plan) => plan.survey);
	const suspect = survey?.suspects[0];
	const doubted = inDoubt(survey).flatMap((index) =>
		list.filter(({ what }) => what.kind === "reading" && what.index === index),
	);
	const isChecked = survey !== null && Math.round(survey.redundancy) > 0;
	const tells = isAsked(asked, survey?.telling ?? null);
	// Whoever takes a doubted reading again is at the cure: that comes first then, and the doubt after it.
	const atCure = doubted.some(({ key }) => key === asked?.key);
	const offered = asked === null ? doubted : atCure || tells ? [] : doubted.slice(0, suspect?.readings.length);
	return (
		<div className="taking-standing" data-first={(doubted.length > 0 && asked !== null && !atCure) || undefined}>
			{isChecked ? <Agreement /> : null}
			{doubted.length === 0 || atCure ? null : (
				<div className="pair taking-cures">
					{tells ? <p>This reading helps to tell which is wrong.</p> : null}
					{offered.map(({ key }) => (
						<Button key={key} className="button" onPress={() => goTo(key)}>
							Take the {key} again
						</Button>
					))}
					{offered.length === doubted.length ? null : (
						<Button className="button" onPress={() => showList(true)}>
							All in doubt
						</Button>
					)}
				</div>
			)}
			<Sureness asked={asked} />
		</div>
	);
}

const isAsked = (asked: ToTake | null, reading: Untaken | null): boolean =>
	reading !== null && asked?.what.kind === "reading" && JSON.stringify(asked.what.reading) === JSON.stringify(reading);

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
	const isNext = next !== null && isAsked(asked, next.reading);
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
