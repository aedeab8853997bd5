import {
	AT_95,
	type Bay,
	cornerName,
	type Job,
	mayChangeSentence,
	readingFigure,
	readingName,
	readingTask,
	type SettledAnswer,
	SURE_ENOUGH,
	surveyFaultSentence,
	suspectSentence,
	withinText,
} from "@baywright/setout";
import { plain } from "../text/plain.ts";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { type Lengths, lengthsIn, unitLine } from "./lengths.ts";
import { count, section } from "./section.ts";

type Settled = Extract<SettledAnswer, { readonly ok: true }>;

/** A job's bays as their readings settle them. `file` heads it where there are several. */
export function surveyText(job: Job, answers: readonly SettledAnswer[], file: string | null): string {
	const lengths = lengthsIn(job.display.length);
	const lines = [
		...(file === null ? [] : wrap(plain(file))),
		...job.bays.flatMap((bay, i) => [...(i === 0 ? [] : [""]), ...bayText(bay, answers[i] as SettledAnswer, lengths)]),
		...(job.bays.length === 0 ? ["No bays in this job."] : []),
	];
	return `${lines.join("\n")}\n`;
}

function bayText(bay: Bay, answer: SettledAnswer, lengths: Lengths): string[] {
	const heading = wrap(`Bay ${plain(bay.id)}${bay.name.trim() === "" ? "" : `: ${plain(bay.name)}`}`);
	const wording = { unit: lengths.unit, walls: bay.walls.length };
	if (!answer.ok) {
		const sentences = answer.faults.map((fault) => surveyFaultSentence(fault, bay.readings, wording));
		return [...heading, ...sentences.flatMap((sentence) => wrap(`NOT SETTLED: ${sentence}`, { indent: "  " }))];
	}
	return [
		...heading,
		...wrap(`${agreement(answer, wording)} ${unitLine(lengths.unit)}`, { indent: "  " }),
		...suspectsText(answer, wording),
		...readingsText(answer, wording),
		...placesText(answer, lengths),
		...cutsText(answer, lengths),
		...wantedText(answer, wording, lengths),
	];
}

interface Words {
	readonly unit: Lengths["unit"];
	readonly walls: number;
}

function agreement({ survey }: Settled, wording: Words): string {
	const { readings, redundancy, closes, closesWithin } = survey;
	if (readings.length === 0) return "Nothing has been taped: the corners are as drawn.";
	const taken = count(readings.length, "reading");
	const spare = Math.round(redundancy);
	if (spare === 0) return `${taken}, none of them checked by another.`;
	const said = `${taken}, ${spare} more than needed`;
	const within = withinText(closesWithin, wording);
	return closes
		? `${said}: the bay closes within ${within}.`
		: `${said}: the bay DOES NOT CLOSE, readings are up to ${within} out.`;
}

/** The likeliest explanation, and others only where it does not make everything close or cannot be told from them. */
function suspectsText({ survey, telling }: Settled, wording: Words): string[] {
	const { suspects } = survey;
	if (suspects.length === 0) return [];
	const shown = suspects[0]?.without.closes ? suspects.slice(0, 1) : suspects.slice(0, MOST_SUSPECTS);
	const sentences = shown.map((suspect) => suspectSentence(suspect, survey, wording));
	const lines = [
		...sentences,
		telling === null
			? "Take again what is doubted before anything else."
			: `Before anything else take the ${readingTask(telling, wording)}: it helps to tell which is wrong.`,
	];
	return section(
		"Readings to doubt",
		lines.flatMap((line) => wrap(line, { indent: "  " })),
	);
}

const MOST_SUSPECTS = 3;

function readingsText({ survey }: Settled, wording: Words): string[] {
	if (survey.readings.length === 0) return [];
	const rows = survey.readings.map(({ reading, residual, standardized }, i) => [
		String(i + 1),
		readingName(reading, wording.walls),
		readingFigure(reading, reading.value, wording),
		readingFigure(reading, residual, wording),
		standardized === null ? "not checked" : withoutMinusNought(standardized.toFixed(1)),
	]);
	const columns = [
		figures("no."),
		words("reading"),
		...["taken", "adjusted\nless taken", "over its\nown sd"].map(figures),
	];
	return section("Readings", table(columns, rows));
}

const withoutMinusNought = (text: string): string => text.replace(/^-(?=[0.]+$)/, "");

function placesText({ survey }: Settled, { figure }: Lengths): string[] {
	const { corners, covariance } = survey;
	const walls = corners.length - 1;
	const spread = (column: number) => figure(AT_95 * Math.sqrt(covariance[column]?.[column] ?? 0));
	const rows = corners.map(({ x, y }, i) => [
		cornerName(i, walls),
		figure(x),
		figure(y),
		spread(2 * i),
		spread(2 * i + 1),
	]);
	const columns = [words("corner"), ...["x", "y", "± x", "± y"].map(figures)];
	return section("Corners, ± at 95 %, seen from the left end", table(columns, rows));
}

function cutsText({ cuts }: Settled, { fine }: Lengths): string[] {
	if (cuts === null) return section("Cut lengths", ["  No track fits the bay as it is settled; plan says why."]);
	return section(
		"Cut lengths",
		cuts.flatMap(({ piece, value, sd, mayChange }) => [
			`  Piece ${piece}: ${fine(value)} ± ${fine(AT_95 * sd)} (95 %)`,
			...(mayChange === null ? [] : wrap(mayChangeSentence(mayChange), { indent: "    " })),
		]),
	);
}

function wantedText({ wanted, cuts, survey }: Settled, wording: Words, { fine, figure }: Lengths): string[] {
	const goal = `± ${fine(AT_95 * SURE_ENOUGH)}`;
	if (wanted.length === 0)
		return cuts === null
			? []
			: section("Next", wrap(`${enough(survey)} every cut length is within ${goal}.`, { indent: "  " }));
	const rows = wanted.map(({ reading, reaches }, i) => [
		String(i + 1),
		readingTask(reading, wording),
		`± ${figure(AT_95 * reaches)}`,
	]);
	const columns = [
		figures("no."),
		words("take"),
		figures(cuts === null ? "track then" : "least sure\ncut length then"),
	];
	return section(`Readings to take until every cut length is within ${goal}`, table(columns, rows));
}

/** No ± covers a reading that is wrong, nor one that nothing checks. */
function enough({ closes, suspects, redundancy }: Settled["survey"]): string {
	if (!closes || suspects.length > 0) return "Take again what is doubted: with that put right";
	return Math.round(redundancy) === 0 ? "Nothing checks these readings yet: with no slip in them" : "Enough is taped:";
}
