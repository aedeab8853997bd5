import { describe, severityOf } from "@baywright/setout";
import { SIZES } from "../lettering/measure.ts";
import type { Sheet } from "../paper/drawing.ts";
import { type Block, flow, whole } from "../paper/flow.ts";
import { layoutOn } from "../paper/frame.ts";
import { text } from "../paper/marks.ts";
import { at, widthOf } from "../paper/place.ts";
import { scaleName } from "../paper/scales.ts";
import { table } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { cautionsAt } from "./cautions-at.ts";
import { workBlocks } from "./fitting-steps.ts";
import { tablesOf, wallTable } from "./fitting-tables.ts";
import { pagesOf } from "./pages.ts";
import { planFigure } from "./plan-figure.ts";
import type { SheetOf } from "./sheet-of.ts";

/** No part of a page is more the drawing's than this. */
const TALLEST_PLAN = 120;

/** Everything a fitter needs at the wall, in the order of the work; null where there are no walls to draw. */
export function fittingSheet(of: SheetOf): Sheet | null {
	const { plan } = of;
	if (plan.chain === null) return null;
	const layout = layoutOn(of.paper);
	const first = layout.columns[0];
	if (first === undefined) return null;
	const drawing = planFigure(of, widthOf(first), TALLEST_PLAN);
	const caption = [of.bay.name || `Bay ${plan.id}`, scaleName(drawing.scale), "seen from above"].join(", ");
	const plate = whole(drawing.height + 6, (width) => [
		...drawing.items,
		text(at(width / 2, drawing.height + 3), caption, { height: SIZES.small, align: "centre", ink: "grey" }),
	]);
	const tables = [wallTable(of), ...(plan.path === null ? [] : tablesOf(of))];
	const walls = drawing.left.length > 0 ? [table(wallTable(of, true))] : [];
	const bodies = flow(
		[plate, ...walls, ...beforeBlocks(of), ...(plan.path === null ? [] : workBlocks(of))],
		layout.columns,
	);
	return {
		name: "fitting",
		bay: plan.id,
		title: "Fitting sheet",
		pages: pagesOf(
			of,
			{ kind: "Fitting sheet", mark: "F" },
			bodies.map((items, i) => ({ items, scale: i === 0 ? scaleName(drawing.scale) : "–" })),
		),
		figures: [{ name: "plan", scale: drawing.scale, items: drawing.items }],
		tables,
		trueSize: false,
	};
}

/** What the sheet is of, and what must be known before anything is done by it. */
function beforeBlocks(of: SheetOf): Block[] {
	const { plan, bay, fine, about, unit } = of;
	const wording = { unit, walls: plan.projections.length };
	const grave = plan.findings.filter(({ code }) => severityOf(code) !== "note");
	const refused = grave.some(({ code }) => severityOf(code) === "refusal");
	const facts = [
		`${plan.system.name}, ${bay.track.mounting === "ceiling" ? "to the ceiling" : "on the wall"}`,
		plan.height === null ? "height not set" : `${about(plan.height)} above the floor`,
		...(plan.path === null ? [] : [`${fine(plan.path.length)} along the centre line`]),
	];
	const list: Entry[] = [
		{ sign: "none", text: `${facts.join("; ")}.` },
		taped(of),
		...(refused
			? [
					{
						sign: "none",
						lead: "Do not cut or drill by this sheet until what is refused below is settled.",
						text: "",
					} as const,
				]
			: []),
		...grave.map((finding): Entry => {
			const { title, message } = describe(finding, wording);
			return { sign: "dash", lead: title, text: message };
		}),
		...cautionsAt(of, "first"),
	];
	return [entries(list, { heading: "Before the first hole" })];
}

/** Whether the figures may be trusted, and what brackets round a figure mean. */
const taped = ({ plan }: SheetOf): Entry =>
	plan.survey === null
		? {
				sign: "none",
				lead: "Nothing is taped yet: every figure in brackets is only drawn.",
				text: "Tape the bay and plan again before anything is cut or drilled.",
			}
		: { sign: "none", text: "Figures in brackets are only drawn, not taped." };
