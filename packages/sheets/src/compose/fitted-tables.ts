import { type BayPlan, bendName, bendsToMake, bowsToMake, readBendRecord, wallName } from "@baywright/setout";
import type { TableData } from "../paper/table.ts";
import type { SheetOf } from "./sheet-of.ts";

/** What is entered as done, held against the plan; nothing where nothing is. */
export function fittedTables(of: SheetOf): TableData[] {
	return [bracketTable(of), tickTable(of), cutTable(of)].filter(({ rows }) => rows.length > 0);
}

const NO_LONGER = "not in the plan any more";

function bracketTable({ plan, figure }: SheetOf): TableData {
	const walls = plan.projections.length;
	const rows = (plan.fitted?.brackets ?? []).map(({ wall, at, off, further }) => [
		wallName(wall, walls),
		figure(at),
		off === null ? NO_LONGER : sideways(off, figure),
		further === null
			? "not measured"
			: Math.abs(further) < SAME
				? "as planned"
				: `${figure(Math.abs(further))} ${further > 0 ? "further" : "nearer"}`,
	]);
	return {
		name: "fitted-brackets",
		title: "Brackets as fitted",
		columns: [
			{ heading: "wall", of: "words" },
			{ heading: "from its\nleft corner", of: "figures", bold: true },
			{ heading: "off its planned place", of: "words" },
			{ heading: "off the wall", of: "words" },
		],
		rows,
	};
}

/** mm: less does not show. */
const SAME = 0.05;

const sideways = (off: number, figure: (mm: number) => string): string =>
	Math.abs(off) < SAME ? "as planned" : `${figure(Math.abs(off))} to the ${off > 0 ? "right" : "left"}`;

/** What is ticked off by name: `bend-2`, `bow-1`, `joint-1`; a bracket too, where its place was not kept with its tick. */
function tickTable({ plan, bay, figure }: SheetOf): TableData {
	const { done } = bay.fitted;
	const records = done.flatMap((text) => readBendRecord(text) ?? []);
	const ticks = done.flatMap((name) => {
		const [, kind, number] = /^(bracket|bend|bow|joint)-(\d+)$/.exec(name) ?? [];
		if (kind === undefined || (kind === "bracket" && bay.fitted.brackets.length > 0)) return [];
		return [{ name, kind, number: Number(number) }];
	});
	return {
		name: "fitted-ticks",
		title: "Ticked off",
		columns: [
			{ heading: "what", of: "words" },
			{ heading: "where", of: "words" },
			{ heading: "radius when made", of: "figures" },
			{ heading: "sweep when made", of: "figures" },
		],
		rows: ticks.map(({ name, kind, number }) => {
			const record = records.find((each) => each.name === name);
			const made = record === undefined ? ["", ""] : [figure(record.radius), figure(record.sweep)];
			return [`${kind} ${number}`, placeOf(plan, kind, number - 1) ?? NO_LONGER, ...made];
		}),
	};
}

/** Where the plan has what was ticked; null where it has it no longer. */
function placeOf({ path, pieces, brackets, joints, projections }: BayPlan, kind: string, index: number): string | null {
	const walls = projections.length;
	if (path === null || pieces.length === 0) return null;
	if (kind === "bend") {
		const bend = bendsToMake(path)[index];
		return bend === undefined ? null : bendName(bend.corners, walls);
	}
	const on = { bracket: brackets, joint: joints, bow: bowsToMake(path) }[kind]?.[index];
	return on === undefined ? null : wallName(on.wall, walls);
}

const VERDICTS = {
	fits: "fits",
	long: "longer than needed",
	"short-in-play": "short, within what its ends have in hand",
	"too-short": "too short",
	"bends-apart": "its bends are not as far apart as is needed",
} as const;

function cutTable({ plan, figure }: SheetOf): TableData {
	return {
		name: "fitted-pieces",
		title: "Pieces as cut",
		columns: [
			{ heading: "piece", of: "words", bold: true },
			{ heading: "cut to", of: "figures", bold: true },
			{ heading: "the plan needs", of: "figures" },
			{ heading: "so it is", of: "words" },
		],
		rows: (plan.fitted?.cut ?? []).map(({ piece, cut, needed, verdict }) => [
			piece,
			figure(cut),
			figure(needed),
			VERDICTS[verdict],
		]),
	};
}
