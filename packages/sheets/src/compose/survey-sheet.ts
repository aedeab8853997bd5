import { cornerName, readingTask } from "@baywright/setout";
import type { Sheet } from "../paper/drawing.ts";
import { flow, whole } from "../paper/flow.ts";
import { layoutOn } from "../paper/frame.ts";
import { widthOf } from "../paper/place.ts";
import type { TableData } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { formTable, writeIn } from "../paper/write-in.ts";
import { pagesOf } from "./pages.ts";
import type { SheetOf } from "./sheet-of.ts";
import { readingsToTake, surveyForms } from "./survey-forms.ts";
import { surveySketch } from "./survey-sketch.ts";

/** A form to take on site: the bay's own sketch and a box for every reading; null where there are no walls to sketch. */
export function surveySheet(of: SheetOf): Sheet | null {
	const { plan } = of;
	const layout = layoutOn(of.paper);
	const [first] = layout.columns;
	if (plan.chain === null || first === undefined) return null;
	const sketch = surveySketch(of, plan.chain, widthOf(first));
	const forms = surveyForms(of, plan.chain);
	const blocks = [
		entries(beforeEntries(of), { heading: "Survey" }),
		whole(sketch.height, () => sketch.items),
		...forms.map(writeIn),
	];
	return {
		name: "survey",
		bay: plan.id,
		title: "Survey sheet",
		pages: pagesOf(
			of,
			{ kind: "Survey sheet", mark: "M" },
			flow(blocks, layout.columns).map((items) => ({ items, scale: "–" })),
		),
		figures: [],
		tables: [readingsTable(of), ...forms.slice(FORMS_OF_READINGS).map(formTable)],
		trueSize: false,
	};
}

/** Runs, diagonals and corners are readings, and go out as one table that can be read in again. */
const FORMS_OF_READINGS = 3;

function beforeEntries({ plan, bay, unit }: SheetOf): Entry[] {
	const wording = { unit, walls: plan.projections.length };
	const next = plan.survey?.next ?? null;
	return [
		{
			sign: "none",
			text: "Tape at the height of the track, from plaster to plaster, with the tape straight and level. Write down what it reads, unrounded. Take every reading twice, the second time from the other end.",
		},
		...(bay.readings.length === 0
			? []
			: [
					{
						sign: "none",
						text: `${bay.readings.length} ${bay.readings.length === 1 ? "reading is" : "readings are"} in the job already: one taken again counts as another.`,
					} as const,
				]),
		...(next === null
			? []
			: [
					{
						sign: "none",
						lead: `Take first: ${readingTask(next.reading, wording)}`,
						text: "It makes the cut lengths surer than any other.",
					} as const,
				]),
	];
}

/** In the form that the readings of a bay are read in from, the values still empty. */
function readingsTable(of: SheetOf): TableData {
	const walls = of.plan.projections.length;
	const corner = (index: number) => cornerName(index, walls).replace(/^the |^corner /, "");
	const headings = ["kind", "wall", "corner", "from", "to", "arm", "at", "value", "sd"] as const;
	return {
		name: "readings",
		title: "Readings",
		columns: headings.map((heading) => ({ heading, of: "words" })),
		rows: readingsToTake(of).map((reading) => {
			const cells: Partial<Record<(typeof headings)[number], string>> = {
				kind: reading.kind,
				...("wall" in reading ? { wall: String(reading.wall + 1) } : {}),
				...("corner" in reading ? { corner: corner(reading.corner) } : {}),
				...("from" in reading ? { from: corner(reading.from), to: corner(reading.to) } : {}),
				...("arm" in reading ? { arm: of.figure(reading.arm) } : {}),
			};
			return headings.map((heading) => cells[heading] ?? "");
		}),
	};
}
