import type { CurtainSetOut } from "@baywright/setout";
import { LEADING, SIZES, textWidth, wrapped } from "../lettering/measure.ts";
import type { Mark } from "../paper/drawing.ts";
import type { Block } from "../paper/flow.ts";
import { line, rectangle, text } from "../paper/marks.ts";
import { at, type Box, boxAt } from "../paper/place.ts";
import { SCALES, scaleName } from "../paper/scales.ts";
import { continued, HEADING, headingItems } from "../paper/words.ts";
import { metresText } from "./curtain-figures.ts";
import { curtainTitle } from "./curtain-names.ts";
import type { ClothCuts, ClothLength } from "./cut-plan.ts";
import type { SheetOf } from "./sheet-of.ts";

/** At the left of a roll for its width, under it for the drops, mm of the paper. */
const LEFT = 7;
const UNDER = 6;
const BETWEEN = 3;
/** No more rows than this at the scale that is chosen, where there is one. */
const MOST_ROWS = 3;
/** A roll is drawn no higher than this where it need not be, mm of the paper. */
const TALLEST_ROLL = 40;

/** What is cut from one cloth, laid out along the roll to scale, in rows. */
export function cutPlanBlock(of: SheetOf, cuts: ClothCuts): Block {
	const { cloth, lengths } = cuts;
	const total = lengths.reduce((sum, { cutDrop }) => sum + cutDrop, 0) / 1000;
	const heading = `Cutting ${cloth.name || cloth.id}: ${metresText(total)}`;
	return (width, room) => {
		const scale = scaleOf(lengths, cloth.width, width - LEFT);
		return rollBlock(of, cuts, { heading, scale, first: 0 })(width, room);
	};
}

interface RollLook {
	readonly heading: string;
	readonly scale: number;
	/** How many lengths are drawn before. */
	readonly first: number;
}

function rollBlock(of: SheetOf, { cloth, lengths }: ClothCuts, { heading, scale, first }: RollLook): Block {
	return (width, room) => {
		const rows = rowsOf(lengths, (width - LEFT) * scale);
		const high = cloth.width / scale + UNDER;
		const told = first > 0 ? [] : wrapped(legend(of, cloth, scale), width, SIZES.small);
		const above = HEADING + told.length * SIZES.small * LEADING + 2;
		const count = Math.min(rows.length, Math.floor((room - above + BETWEEN) / (high + BETWEEN)));
		if (count < 1) return null;
		const before = (index: number) => rows.slice(0, index).reduce((sum, row) => sum + row.length, first);
		const drawn = rows
			.slice(0, count)
			.flatMap((row, i) => rowItems(of, { row, first: before(i), top: above + i * (high + BETWEEN), scale, cloth }));
		const rest = rows.slice(count).flat();
		return {
			height: above + count * (high + BETWEEN) - BETWEEN,
			items: [
				...headingItems(heading),
				...told.map((each, i) =>
					text(at(0, HEADING + SIZES.small * (1.2 + i * LEADING)), each, { height: SIZES.small, ink: "grey" }),
				),
				...drawn,
			],
			rest:
				rest.length === 0
					? null
					: rollBlock(of, { cloth, lengths: rest }, { heading: continued(heading), scale, first: before(count) }),
		};
	};
}

function legend({ about }: SheetOf, { repeat, match }: ClothCuts["cloth"], scale: number): string {
	const pattern =
		repeat === 0
			? "no pattern to match"
			: match === "straight"
				? `pattern every ${about(repeat)}: every length begins at the same place of it`
				: `pattern every ${about(repeat)}, half-drop: every next width begins half of it on`;
	return `${scaleName(scale)}. The heading is at the left of each length; dashed lines are the folds of heading and hem; toned is lost to the pattern or left over; ${pattern}.`;
}

function scaleOf(lengths: readonly ClothLength[], clothWidth: number, width: number): number {
	const longest = Math.max(...lengths.map(({ cutDrop }) => cutDrop));
	const usual = SCALES.filter((scale) => scale >= 20 && longest / scale <= width);
	return (
		usual.find((scale) => rowsOf(lengths, width * scale).length <= MOST_ROWS && clothWidth / scale <= TALLEST_ROLL) ??
		usual.at(-1) ??
		(SCALES.at(-1) as number)
	);
}

/** As many lengths in a row as go into so many mm of roll. */
function rowsOf(lengths: readonly ClothLength[], long: number): ClothLength[][] {
	const rows: ClothLength[][] = [];
	let used = Infinity;
	for (const each of lengths) {
		if (used + each.cutDrop > long + 1e-6) {
			rows.push([]);
			used = 0;
		}
		rows.at(-1)?.push(each);
		used += each.cutDrop;
	}
	return rows;
}

interface RowOfRoll {
	readonly row: readonly ClothLength[];
	/** How many lengths come before it. */
	readonly first: number;
	readonly top: number;
	readonly scale: number;
	readonly cloth: ClothCuts["cloth"];
}

function rowItems(of: SheetOf, { row, first, top, scale, cloth }: RowOfRoll): Mark[] {
	const high = cloth.width / scale;
	let along = 0;
	const lengths = row.flatMap((length, i) => {
		const box = boxAt(LEFT + along / scale, top, length.cutDrop / scale, high);
		along += length.cutDrop;
		return lengthItems(of, length, first + i + 1, box, scale);
	});
	return [
		...lengths,
		...dropItems(of, row, top + high + 3.6, scale),
		rectangle("STACK", boxAt(LEFT, top, along / scale, high), { stroke: { pen: "wide" } }),
		text(at(LEFT - 2, top + high / 2), of.about(cloth.width), {
			height: SIZES.small,
			align: "centre",
			turn: Math.PI / 2,
			layer: "DIMENSIONS",
		}),
	];
}

/** The cut drop under every length; where lengths are shorter than it, under the first of those that are alike. */
function dropItems({ about }: SheetOf, row: readonly ClothLength[], base: number, scale: number): Mark[] {
	const items: Mark[] = [];
	let [along, free, said] = [0, 0, Number.NaN];
	for (const { cutDrop } of row) {
		const [left, long] = [LEFT + along / scale, cutDrop / scale];
		along += cutDrop;
		const wide = textWidth(about(cutDrop), SIZES.small);
		const fits = wide + 1 <= long;
		if ((!fits && said === cutDrop) || left < free) continue;
		const place = fits ? at(left + long / 2, base) : at(left, base);
		items.push(
			text(place, about(cutDrop), { height: SIZES.small, align: fits ? "centre" : "left", layer: "DIMENSIONS" }),
		);
		free = left + (fits ? long : wide + 1);
		said = cutDrop;
	}
	return items;
}

function lengthItems(
	of: SheetOf,
	{ cutDrop, needed, parts }: ClothLength,
	number: number,
	box: Box,
	scale: number,
): Mark[] {
	const { bay, plan } = of;
	const { headingTurning, hemTurning } = bay.makeUp;
	const fold = (mm: number) => {
		const x = box.left + mm / scale;
		return line("STACK", at(x, box.top), at(x, box.bottom), { pen: "narrow", dash: "dashed", ink: "grey" });
	};
	let across = box.top;
	const shares = parts.flatMap(({ curtain, share }, i): Mark[] => {
		const strip = { ...box, top: across, bottom: across + share * (box.bottom - box.top) };
		across = strip.bottom;
		const parting =
			i === 0 ? [] : [line("CUTS", at(strip.left, strip.top), at(strip.right, strip.top), { pen: "medium" })];
		if (curtain === null) return [rectangle("STACK", strip, { fill: "tint" }), ...parting];
		return [...parting, ...nameItems(curtain, plan.curtains, number, i === 0, strip)];
	});
	const lost = cutDrop - needed;
	return [
		...(lost > 0.05 ? [rectangle("STACK", { ...box, left: box.right - lost / scale }, { fill: "tint" })] : []),
		fold(headingTurning),
		fold(needed - hemTurning),
		...shares,
		line("CUTS", at(box.right, box.top), at(box.right, box.bottom), { pen: "wide" }),
	];
}

/** The number of the length and whose it is, as far as there is room. */
function nameItems(
	curtain: CurtainSetOut,
	all: readonly CurtainSetOut[],
	number: number,
	isFirst: boolean,
	box: Box,
): Mark[] {
	const middle = at((box.left + box.right) / 2, (box.top + box.bottom) / 2);
	const room = box.right - box.left - 2;
	const name = curtainTitle(curtain, all);
	const [whose, part] = name.split(", ");
	const parted =
		textWidth(name, SIZES.small) <= room ? [name] : [whose as string, ...(part === undefined ? [] : [part])];
	const rows = [
		...(isFirst ? [{ words: String(number), height: SIZES.usual, bold: true }] : []),
		...parted.map((words) => ({ words, height: SIZES.small, bold: false })),
	];
	const shown = rows.filter(
		({ words, height, bold }, i) => (i + 1) * 4 <= box.bottom - box.top && textWidth(words, height, bold) <= room,
	);
	return shown.map(({ words, ...style }, i) =>
		text(at(middle.x, middle.y + 1 + (i - (shown.length - 1) / 2) * 4), words, { ...style, align: "centre" }),
	);
}
