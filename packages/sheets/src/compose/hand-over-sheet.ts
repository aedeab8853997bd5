import { capital, cautionsFor, cordAdvice, cordSentences, HEADING_NAMES } from "@baywright/setout";
import { SIZES } from "../lettering/measure.ts";
import type { Mark, Sheet } from "../paper/drawing.ts";
import { type Block, flow, whole } from "../paper/flow.ts";
import { layoutOn } from "../paper/frame.ts";
import { kept } from "../paper/kept.ts";
import { text } from "../paper/marks.ts";
import { at, widthOf } from "../paper/place.ts";
import { scaleName } from "../paper/scales.ts";
import { type TableData, table } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { type WriteIn, writeIn } from "../paper/write-in.ts";
import { curtainTitle } from "./curtain-names.ts";
import { elevationFigure } from "./elevation-figure.ts";
import { fittedTables } from "./fitted-tables.ts";
import { pagesOf } from "./pages.ts";
import { planFigure } from "./plan-figure.ts";
import type { SheetOf } from "./sheet-of.ts";

/** No more of a page is the plan's and the elevation's than this, mm. */
const TALLEST_PLAN = 88;
const TALLEST_ELEVATION = 70;

/** What whoever lives with the track is left with: what hangs there, how to keep it and to stay safe, and who signs for it. Null where no track fits. */
export function handOverSheet(of: SheetOf): Sheet | null {
	const { plan } = of;
	const layout = layoutOn(of.paper);
	const [first] = layout.columns;
	if (plan.chain === null || plan.path === null || first === undefined) return null;
	const width = widthOf(first);
	const above = planFigure(of, width, TALLEST_PLAN);
	const front = elevationFigure(of, plan.chain, width, TALLEST_ELEVATION);
	const fitted = fittedTables(of);
	const tables = [factTable(of), ...fitted];
	const blocks: Block[] = [
		plate(above, "seen from above", width),
		plate(front, `walls unrolled, seen from the room${front.hasCurtains ? ", curtains drawn back" : ""}`, width),
		table(factTable(of)),
		...fitted.map(table),
		...(fitted.length > 0
			? []
			: [
					entries([{ sign: "none", text: "Nothing was entered as fitted: the figures are the plan's." }], {
						heading: "As fitted",
					}),
				]),
		kept(entries(checkEntries(of), { heading: "Looked at together" }), layout),
		kept(entries(childEntries(of), { heading: "Small children" }), layout),
		kept(entries(careEntries(of), { heading: "Care" }), layout),
		writeIn(REMARKS),
		writeIn(SIGN_OFF),
	];
	return {
		name: "hand-over",
		bay: plan.id,
		title: "Hand-over sheet",
		pages: pagesOf(
			of,
			{ kind: "Hand-over", mark: "H" },
			flow(blocks, layout.columns).map((items, i) => ({ items, scale: i === 0 ? scaleName(above.scale) : "–" })),
		),
		figures: [{ name: "elevation", scale: front.scale, items: front.items }],
		tables,
		trueSize: false,
	};
}

const plate = (
	{ items, height, scale }: { readonly items: readonly Mark[]; readonly height: number; readonly scale: number },
	words: string,
	width: number,
): Block =>
	whole(height + 6, () => [
		...items,
		text(at(width / 2, height + 4), `${scaleName(scale)}, ${words}`, {
			height: SIZES.small,
			align: "centre",
			ink: "grey",
		}),
	]);

/** What hangs there. */
function factTable({ plan, bay, about }: SheetOf): TableData {
	const { system, path, height, brackets, pieces, curtains, cords } = plan;
	const rows: (readonly [string, string])[] = [
		["Track", `${system.name}, ${bay.track.mounting === "ceiling" ? "to the ceiling" : "on the wall"}`],
		["Height above the floor", height === null ? "not set" : about(height)],
		["Along the track", about(path?.length ?? 0)],
		["Brackets", String(brackets.length)],
		["Pieces", pieces.map(({ name, cutLength }) => `${name}, ${about(cutLength)}`).join("; ")],
		...curtains
			.filter(({ curtain }) => curtain !== null)
			.map(
				(curtain) =>
					[
						curtainTitle(curtain, curtains),
						`${HEADING_NAMES[curtain.heading]}, ${about(curtain.finishedWidth)} wide${curtain.drop === null ? "" : `, ${about(curtain.drop)} long`}, drawn back to the ${curtain.side}`,
					] as const,
			),
		...(cords === null
			? []
			: [
					[
						"Cord",
						`at the ${cords.side} end${cords.lowest === null ? "" : `, its loop down to ${about(cords.lowest)} above the floor`}`,
					] as const,
				]),
	];
	return {
		name: "hand-over",
		title: "What hangs here",
		columns: [
			{ heading: "what", of: "words" },
			{ heading: "as planned", of: "words" },
		],
		rows,
	};
}

/** Gone through with whoever takes it over. */
function checkEntries({ plan }: SheetOf): Entry[] {
	const tick = (words: string): Entry => ({ sign: "tick", text: words });
	return [
		tick("Every bracket was pulled on and holds."),
		tick("The curtains draw right across and back, over every joint and round every bend."),
		tick("No screw stands out, no cut end is sharp, and both ends of the track are closed."),
		...(plan.cords === null
			? []
			: [
					tick("The cord is taut, its tensioner is fixed, and its loop hangs no lower than this sheet says."),
					tick("What stands near the cord was looked at: no cot, bed, seat or anything to climb on."),
				]),
		tick("The system's own instructions were left here, and what belongs to its safety was explained."),
	];
}

/** What the region's rules are read to say, with their source and when it was looked at. */
function childEntries({ job, plan, unit, about }: SheetOf): Entry[] {
	const { where, says, source, checked } = cordAdvice(job.region);
	const general = cautionsFor(job.region, false).filter(({ about: what }) => /^cords/i.test(what));
	const { cords, system } = plan;
	const corded = system.corded && cords !== null;
	return [
		...(corded
			? general.map(({ text: words }): Entry => ({ sign: "dash", lead: "Cords", text: words }))
			: [
					{
						sign: "dash",
						lead: "No cord hangs from this track",
						text: "Should one ever be added, what follows holds for it.",
					} as const,
				]),
		...(corded
			? [
					{
						sign: "dash",
						lead: "This track's cord",
						text: cordSentences(cords, plan.projections.length, about).join(" "),
					} as const,
				]
			: []),
		{
			sign: "dash",
			lead: `${capital(where)}`,
			text: says,
			under: `Source: ${source}. Last checked ${checked}. Told here as it was read, and no proof that anything meets a rule: ask what holds where the track hangs${unit === "in" ? "; figures are given as in the source" : ""}.`,
		},
	];
}

/** Common practice, no source: said so on the sheet. */
function careEntries({ plan }: SheetOf): Entry[] {
	const dash = (words: string): Entry => ({ sign: "dash", text: words });
	return [
		dash(
			plan.cords === null
				? "Draw the curtains by hand or by a rod at their leading edge, never by pulling down."
				: "Draw the curtains by their cord, never by pulling at the cloth.",
		),
		dash("Wipe the track with a dry cloth. Put nothing on the runners that the system's instructions do not name."),
		dash("Wash or clean curtains and lining as the cloth's own label says; take them off the track first."),
		dash(
			"Twice a year look at every bracket, both ends and the joints; where one has moved, leave the curtains open and have it seen to.",
		),
		...(plan.cords === null
			? []
			: [
					dash(
						"Look at the cord and its tensioner at the same time: a frayed or slack cord is mended before it is used again.",
					),
				]),
		{
			sign: "none",
			text: "",
			under: "Common practice, no source. The system's own instructions and the cloth's label come first.",
		},
	];
}

const box = (heading: string) => ({ heading, of: "box" }) as const;

const REMARKS: WriteIn = {
	name: "remarks",
	title: "Not done, or to be seen to",
	how: "",
	columns: [box("what"), box("by whom and when")],
	rows: [
		["", ""],
		["", ""],
	],
};

const SIGN_OFF: WriteIn = {
	name: "sign-off",
	title: "Signed",
	how: "",
	columns: [{ heading: "", of: "words" }, box("name"), box("signature"), box("date")],
	rows: [
		["Fitted, and instructions left, by", "", "", ""],
		["Taken over as said above by", "", "", ""],
	],
};
