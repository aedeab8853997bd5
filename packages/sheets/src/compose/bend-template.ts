import type { Bend } from "@baywright/geometry";
import type { Sheet } from "../paper/drawing.ts";
import { flow } from "../paper/flow.ts";
import { layoutOn, type SheetLayout } from "../paper/frame.ts";
import { heightOf, widthOf } from "../paper/place.ts";
import { type TableData, table } from "../paper/table.ts";
import { type Tile, type Tiling, tiled } from "../paper/tiling.ts";
import { type Entry, entries } from "../paper/words.ts";
import { type BentStretch, bentStretches } from "./bent-stretches.ts";
import { type PageBody, pagesOf } from "./pages.ts";
import { isSame, labelsOfAll } from "./same-templates.ts";
import { CHECK_BAR, type SheetOf } from "./sheet-of.ts";
import { stretchName, type TemplateDrawing, templateDrawing } from "./template-drawing.ts";
import { overviewBlocks } from "./template-overview.ts";
import { type Correction, holeOn, OVERLAP, tilePageItems } from "./tile-page.ts";

/** Every bend at true size, to be bent to; null where nothing is bent. Bends that are the same are drawn once. */
export function bendTemplates(of: SheetOf): Sheet | null {
	const layout = layoutOn(of.paper);
	const correction: Correction = { across: CHECK_BAR / of.measured.across, down: CHECK_BAR / of.measured.down };
	const templates = templatesOf(of, layout, correction);
	if (templates.length === 0) return null;
	// How many sheets go before the templates is known when they are laid out; what is said there of numbers does not change that.
	const fronts = frontPages(of, layout, templates, 0).length;
	const front = frontPages(of, layout, templates, fronts).map((items): PageBody => ({ items, scale: "–" }));
	const tiles = templates.flatMap((template) =>
		template.tiling.tiles.map((tile): PageBody => {
			const name = `Template ${template.number}`;
			const items = tilePageItems({
				...template,
				layout,
				tile,
				correction,
				name,
				called: calledFrom(template, fronts),
			});
			return { items, scale: "1:1" };
		}),
	);
	return {
		name: "bends",
		bay: of.plan.id,
		title: "Bend templates",
		pages: pagesOf(of, { kind: "Bend templates, true size", mark: "B" }, [...front, ...tiles]),
		figures: templates.map(({ number, drawing }) => ({ name: `bend-${number}`, scale: 1, items: drawing.items })),
		tables: [listTable(of, templates, fronts)],
		trueSize: true,
	};
}

interface Template {
	/** From 1. */
	readonly number: number;
	/** Alike, the one drawn first. */
	readonly stretches: readonly [BentStretch, ...BentStretch[]];
	readonly tiling: Tiling;
	readonly drawing: TemplateDrawing;
	/** Sheets of templates before it. */
	readonly before: number;
}

/** What a sheet of a template is called where `fronts` sheets go before all templates: its number in the title block. */
const calledFrom =
	({ before }: Template, fronts: number) =>
	({ number }: Tile): string =>
		String(fronts + before + number);

function templatesOf(of: SheetOf, layout: SheetLayout, correction: Correction): Template[] {
	const hole = holeOn(layout);
	const window = { width: widthOf(hole) / correction.across, height: heightOf(hole) / correction.down };
	let before = 0;
	return sameTogether(of, bentStretches(of.plan)).map((stretches, i) => {
		const [first] = stretches;
		const level = levelTurn(first);
		const { points } = templateDrawing(of, first, 0);
		const tiling = tiled({ points, window, overlap: OVERLAP, turns: TURNS.map((turn) => level + turn) });
		const drawings = stretches.map((each) => templateDrawing(of, each, levelTurn(each) - level + tiling.turn));
		const drawing = { ...(drawings[0] as TemplateDrawing), labels: labelsOfAll(drawings) };
		const template = { number: i + 1, stretches, tiling, drawing, before };
		before += tiling.tiles.length;
		return template;
	});
}

/** Turns tried for a template: level as in the plan, then further round. */
const TURNS = Array.from({ length: 37 }, (_, i) => (((i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 5) / 180) * Math.PI);

/** So that the line from where the stretch begins to where it ends runs level, the room below it. */
function levelTurn({ bends }: BentStretch): number {
	const [first, last] = [bends[0] as Bend, bends.at(-1) as Bend];
	return -Math.atan2(last.to.y - first.from.y, last.to.x - first.from.x);
}

/** Stretches that give the same template, together; groups in the order in which their first comes. */
function sameTogether(of: SheetOf, stretches: readonly BentStretch[]): (readonly [BentStretch, ...BentStretch[]])[] {
	const groups: { readonly drawing: TemplateDrawing; readonly stretches: [BentStretch, ...BentStretch[]] }[] = [];
	for (const stretch of stretches) {
		const drawing = templateDrawing(of, stretch, levelTurn(stretch));
		const own = groups.find((group) => isSame(group.drawing, drawing));
		if (own === undefined) groups.push({ drawing, stretches: [stretch] });
		else own.stretches.push(stretch);
	}
	return groups.map((group) => group.stretches);
}

const frontPages = (of: SheetOf, layout: SheetLayout, templates: readonly Template[], fronts: number) =>
	flow(
		[
			table(listTable(of, templates, fronts)),
			...overviewBlocks(
				templates.map((template) => ({
					...template,
					name: `Template ${template.number}`,
					called: calledFrom(template, fronts),
				})),
			),
			entries(HOW_TO, { heading: "How to use them" }),
		],
		layout.columns,
	);

const HOW_TO: readonly Entry[] = [
	{
		sign: "tick",
		lead: "Print",
		text: "Every sheet at 100 % (actual size), never fitted to the page, on one side, on paper of the size in the title block.",
	},
	{
		sign: "tick",
		lead: "Check",
		text: "On every sheet both bars must measure 100 mm by a steel rule. If they do not, do not bend to it: enter what they measure and print again.",
	},
	{
		sign: "tick",
		lead: "Join",
		text: "Cut along the dashed line where a sheet meets another. Lay crosses of the same name over one another and tape the sheets down flat.",
	},
	{
		sign: "tick",
		lead: "Try it in the bay",
		text: "With the ring on the corner the wall faces must lie along the walls. Where they do not, measure again before anything is bent.",
	},
	{
		sign: "tick",
		lead: "Bend",
		text: "Mark start, middle and end of the bend on the track, with length to spare beyond. Bend a little at a time, as the system's own instructions say, and offer up until both edges lie on their lines.",
	},
	{
		sign: "tick",
		lead: "Cut last",
		text: "Only when the bent track lies on the paper. Wear gloves and eye protection; cut ends are sharp: deburr them.",
	},
];

/** One row for each bend of each template. */
function listTable({ plan, figure, angle }: SheetOf, templates: readonly Template[], fronts: number): TableData {
	const walls = plan.projections.length;
	const rows = templates.flatMap((template) => {
		const [first] = template.stretches;
		const called = template.tiling.tiles.map(calledFrom(template, fronts));
		return first.bends.map((bent, i) => [
			i === 0 ? String(template.number) : "",
			template.stretches.map(({ bends }) => stretchName(bends[i] as Bend, walls)).join(", "),
			angle(Math.abs(bent.turn)),
			figure(bent.radius),
			figure(Math.min(bent.start + bent.length, first.to) - Math.max(bent.start, first.from)),
			i === 0 ? [...new Set([called[0], called.at(-1)])].join("–") : "",
		]);
	});
	return {
		name: "bends",
		title: "Bend templates",
		columns: [
			{ heading: "template", of: "figures", bold: true },
			{ heading: "for", of: "words" },
			{ heading: "turns by", of: "figures" },
			{ heading: "radius", of: "figures" },
			{ heading: "sweep", of: "figures" },
			{ heading: "on sheets", of: "figures" },
		],
		rows,
		note: "Radius and sweep along the centre line of the track. Bends that are the same are drawn once.",
	};
}
