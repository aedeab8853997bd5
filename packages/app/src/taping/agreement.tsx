import { suspectSentence, withinText } from "@baywright/setout";
import { usePlanPart } from "../desk/on-table.ts";
import { useWording } from "./value-field.tsx";

/** How far the readings agree, or which of them is in doubt; nothing while they settle nothing. */
export function Agreement() {
	const survey = usePlanPart((plan) => plan.survey);
	const wording = useWording();
	if (survey === null || !survey.settled) return null;
	const [suspect] = survey.suspects;
	const within = withinText(survey.closesWithin, wording);
	const words =
		suspect !== undefined
			? suspectSentence(suspect, survey, wording)
			: Math.round(survey.redundancy) === 0
				? "Nothing checks these readings yet: a slip in one would not show."
				: survey.closes
					? `Closes within ${within}.`
					: `The readings are up to ${within} out.`;
	return (
		<p className={suspect === undefined && survey.closes ? "readings-close" : "readings-doubt"} role="status">
			{words}
		</p>
	);
}
