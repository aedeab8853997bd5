import { type Cloth, type CurtainSetOut, formatLength, formatMass, HEADING_NAMES, libraryOf } from "@baywright/setout";
import type { TableData } from "../paper/table.ts";
import { curtainsToMake, curtainTitle } from "./curtain-names.ts";
import type { SheetOf } from "./sheet-of.ts";

/** How a curtain's finished width comes about, mm: it is the sum of the four. */
export interface WidthParts {
	readonly stretch: number;
	readonly overlap: number;
	readonly returns: number;
	readonly ease: number;
	/** Whether it turns back to the wall at its left edge and at its right one. */
	readonly turnsBack: readonly [left: boolean, right: boolean];
}

/** Slack (mm) in which a curtain reaches the track's end, as in the plan. */
const REACHES = 1;

export function widthParts({ plan, bay }: SheetOf, { from, to, finishedWidth }: CurtainSetOut): WidthParts {
	const { ease, returns: each } = bay.makeUp;
	const length = plan.path?.length ?? 0;
	const turnsBack = [from <= REACHES && each > 0, to >= length - REACHES && each > 0] as const;
	const returns = turnsBack.filter((turns) => turns).length * each;
	const stretch = to - from;
	return { stretch, returns, ease, overlap: finishedWidth - stretch - returns - ease, turnsBack };
}

export const clothOf = ({ job }: SheetOf, { cloth }: CurtainSetOut): Cloth | null =>
	libraryOf(job).cloths.find(({ id }) => id === cloth) ?? null;

/** What is made, figure by figure, and whence each comes. */
export function curtainTable(of: SheetOf, curtain: CurtainSetOut): TableData {
	const { plan, bay, about, unit } = of;
	const { makeUp } = bay;
	const { cutting, fullness, gliders, mass } = curtain;
	const cloth = clothOf(of, curtain);
	const { stretch, overlap, returns, ease } = widthParts(of, curtain);
	const whole = (mm: number) => formatLength(mm, unit);
	const sum = [
		`${whole(stretch)} of track`,
		...(overlap > 0.05 ? [`${whole(overlap)} overlap`] : []),
		...(returns > 0 ? [`${whole(returns)} return`] : []),
		...(ease > 0 ? [`${whole(ease)} ease`] : []),
	];
	const drop = curtain.drop;
	const rows: (readonly [string, string, string])[] = [
		["heading", HEADING_NAMES[curtain.heading], `fullness ${fullness}`],
		["finished width", about(curtain.finishedWidth), sum.join(" + ")],
		["finished drop", drop === null ? "not given" : about(drop), ""],
		["flat cloth", about(curtain.flatWidth), "without side turnings"],
	];
	if (cutting === null || cloth === null) rows.push(["cloth", "none chosen", "so nothing can be cut by this sheet"]);
	else {
		const { widths, cutDrop, lengths, metres, liningWidths, liningMetres } = cutting;
		const lined = drop === null ? "" : ` of ${about(drop + makeUp.headingTurning + makeUp.hemTurning)}`;
		rows.push(
			["widths", count(widths), `of ${about(cloth.width)}, with side turnings of ${about(makeUp.sideTurning)}`],
			["cut drop", cutDrop === null ? "not known" : about(cutDrop), dropSum(of, curtain, cloth)],
			["lengths to cut", String(lengths), lengths < widths ? "its half width comes off the curtain before" : ""],
			["cloth", metresText(metres), cloth.name || cloth.id],
			cloth.lining === null
				? ["lining", "none", ""]
				: [
						"lining",
						metresText(liningMetres),
						`${count(liningWidths)} widths${lined}, ${cloth.lining.name || "lining"}`,
					],
		);
	}
	rows.push(["hooks", String(gliders), "one for each glider"]);
	if (mass !== null) rows.push(["mass", `${formatMass(mass)} kg`, "made up, with its lining"]);
	return {
		name: `curtain-${plan.curtains.indexOf(curtain) + 1}`,
		title: curtainTitle(curtain, plan.curtains),
		columns: [
			{ heading: "what", of: "words" },
			{ heading: "to make", of: "figures", bold: true },
			{ heading: "from", of: "words" },
		],
		rows,
	};
}

/** How the cut drop comes about. */
function dropSum({ bay, about }: SheetOf, { drop, cutting }: CurtainSetOut, { repeat, match }: Cloth): string {
	const { headingTurning, hemTurning } = bay.makeUp;
	if (drop === null || cutting === null || cutting.cutDrop === null) return "the drop is not given";
	const needed = drop + headingTurning + hemTurning;
	const turned = `${about(needed)} with turnings`;
	if (repeat === 0) return turned;
	const repeats = Math.round((cutting.cutDrop / repeat) * 2) / 2;
	return `${turned}, up to ${repeats} × ${about(repeat)} of repeat${match === "straight" ? "" : ", half-drop"}`;
}

const count = (number: number | null): string => (number === null ? "–" : String(number));

export const metresText = (metres: number | null): string => (metres === null ? "not known" : `${metres.toFixed(2)} m`);

/** One row a curtain, for a spreadsheet. */
export function curtainsTable(of: SheetOf): TableData {
	const { plan, figure } = of;
	const figures = [
		"fullness",
		"finished width",
		"finished drop",
		"flat cloth",
		"widths",
		"lengths to cut",
		"cut drop",
		"metres",
		"lining widths",
		"lining metres",
		"hooks",
	];
	const maybe = (mm: number | null | undefined) => (mm === null || mm === undefined ? "" : figure(mm));
	const number = (value: number | null | undefined) => (value === null || value === undefined ? "" : String(value));
	return {
		name: "curtains",
		title: "Curtains",
		columns: [
			{ heading: "curtain", of: "words" },
			{ heading: "heading", of: "words" },
			{ heading: "cloth", of: "words" },
			...figures.map((heading) => ({ heading, of: "figures" }) as const),
		],
		rows: curtainsToMake(plan.curtains).map((curtain) => {
			const { cutting } = curtain;
			return [
				curtainTitle(curtain, plan.curtains),
				HEADING_NAMES[curtain.heading],
				curtain.cloth ?? "",
				String(curtain.fullness),
				figure(curtain.finishedWidth),
				maybe(curtain.drop),
				figure(curtain.flatWidth),
				number(cutting?.widths),
				number(cutting?.lengths),
				maybe(cutting?.cutDrop),
				number(cutting?.metres),
				number(cutting?.liningWidths),
				number(cutting?.liningMetres),
				String(curtain.gliders),
			];
		}),
	};
}
