import type { CurtainSetOut } from "@baywright/setout";
import type { Sheet } from "../paper/drawing.ts";
import { type Block, flow, whole } from "../paper/flow.ts";
import { layoutOn } from "../paper/frame.ts";
import { kept } from "../paper/kept.ts";
import { shifted } from "../paper/shifted.ts";
import { type TableData, table } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { curtainDrawing, DRAWING_WIDTH } from "./curtain-drawing.ts";
import { clothOf, curtainsTable, curtainTable } from "./curtain-figures.ts";
import { curtainsToMake } from "./curtain-names.ts";
import { cutPlan } from "./cut-plan.ts";
import { cutPlanBlock } from "./cut-plan-drawing.ts";
import { pagesOf } from "./pages.ts";
import { refusedEntries } from "./refused.ts";
import type { SheetOf } from "./sheet-of.ts";

/** What the workroom makes and cuts; null where the job names no curtain. */
export function workroomSheet(of: SheetOf): Sheet | null {
	const { plan, bay } = of;
	const curtains = curtainsToMake(plan.curtains);
	if (curtains.length === 0) return null;
	const layout = layoutOn(of.paper);
	const cuts = cutPlan(curtains, (curtain) => clothOf(of, curtain), bay.makeUp.headingTurning + bay.makeUp.hemTurning);
	const blocks = [
		entries(beforeEntries(of, curtains), { heading: "Before cutting" }),
		...curtains.map((curtain) => curtainBlock(of, curtain)),
		table(makeUpTable(of)),
		...cuts.map((each) => kept(cutPlanBlock(of, each), layout)),
	];
	return {
		name: "workroom",
		bay: plan.id,
		title: "Workroom sheet",
		pages: pagesOf(
			of,
			{ kind: "Workroom sheet", mark: "W" },
			flow(blocks, layout.columns).map((items) => ({ items, scale: "–" })),
		),
		figures: [],
		tables: [curtainsTable(of), makeUpTable(of)],
		trueSize: false,
	};
}

function beforeEntries(of: SheetOf, curtains: readonly CurtainSetOut[]): Entry[] {
	const { plan, about } = of;
	const noDrop = curtains.some(({ drop }) => drop === null);
	return [
		...refusedEntries(of, "cut cloth"),
		{
			sign: "none",
			text: `For ${plan.system.name}${plan.height === null ? "" : `, ${about(plan.height)} above the floor`}. Left and right as seen from the room. Widths are along the track's centre line${plan.survey === null ? "; nothing is taped yet, so do not cut by them" : ""}.`,
		},
		...(noDrop
			? [
					{
						sign: "none",
						lead: "A drop is not given",
						text: "What depends on it is not worked out: measure it on the hung track, from the hook to where the hem is to be.",
					} as const,
				]
			: []),
		{
			sign: "tick",
			text: "Measure the cloth off the roll: width between selvedges, repeat, and flaws, before the first cut.",
		},
	];
}

/** A curtain's figures with its drawing beside them. */
const curtainBlock = (of: SheetOf, curtain: CurtainSetOut): Block => {
	const drawing = curtainDrawing(of, curtain);
	return (width, room) => {
		const laid = table(curtainTable(of, curtain))(width - DRAWING_WIDTH - GAP, Infinity);
		if (laid === null) return null;
		const height = Math.max(laid.height, drawing.height + TOP);
		return whole(height, () => [
			...laid.items,
			...drawing.items.map((item) => shifted(item, width - DRAWING_WIDTH, TOP)),
		])(width, room);
	};
};

/** Between figures and drawing, and over the drawing, mm. */
const GAP = 6;
const TOP = 4;

function makeUpTable({ bay, figure }: SheetOf): TableData {
	const { overlap, returns, ease, widths, sideTurning, headingTurning, hemTurning } = bay.makeUp;
	return {
		name: "make-up",
		title: "Make-up",
		columns: [
			{ heading: "overlap where\ntwo meet, in all", of: "figures" },
			{ heading: "return", of: "figures" },
			{ heading: "ease", of: "figures" },
			{ heading: "side turning\neach", of: "figures" },
			{ heading: "heading\nturning", of: "figures" },
			{ heading: "hem\nturning", of: "figures" },
			{ heading: "widths", of: "figures" },
		],
		rows: [
			[
				...[overlap, returns, ease, sideTurning, headingTurning, hemTurning].map(figure),
				widths === "whole" ? "whole" : "halves allowed",
			],
		],
	};
}
