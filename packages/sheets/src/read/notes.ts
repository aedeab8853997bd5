import { capital } from "@baywright/setout";
import { type Chain, type LayerChains, MOST_COMPARED } from "./chains.ts";
import type { DrawingLayer } from "./drawing.ts";
import { alongside } from "./faces.ts";
import type { Piece } from "./stroke.ts";
import type { ChosenUnit } from "./unit.ts";
import { lengthText } from "./wall-problems.ts";

interface Told {
	readonly layer: DrawingLayer;
	readonly unit: ChosenUnit;
	readonly found: LayerChains;
	readonly chain: Chain;
	readonly reach: number;
	/** Of the chain, with the room on their right. */
	readonly walls: readonly Piece[];
	readonly sideGuessed: boolean;
	/** Of the wall whose both faces the chain goes round, mm; null where it does not. */
	readonly thick: number | null;
}

/** Gaps up to this wide are told, mm: they may have been meant to meet. */
const WIDEST_TOLD = 100;
/** Notes of one kind before the rest are only counted. */
const MOST = 5;

/** What whoever takes this chain should know. */
export function notesOn({ layer, unit, found, chain, reach, walls, sideGuessed, thick }: Told): string[] {
	const { branches, twice, specks } = found;
	return [
		...(unit.guessed ? [`${capital(unit.why)}. Check a wall that you know.`] : []),
		...(sideGuessed ? ["Nothing in the drawing says on which side the room lies: it is a guess."] : []),
		...(thick === null
			? []
			: [
					`Its sides lie ${lengthText(thick)} apart: it is taken for the outline of a wall, and the face to the room for the bay.`,
				]),
		...otherFaces(chain, walls, found.chains, sideGuessed),
		...(chain.gap > SEEN ? [`Gaps up to ${lengthText(chain.gap)} wide were closed.`] : []),
		...(chain.dropped > 0
			? [`${count(chain.dropped, "piece", "pieces")} of it, no longer than ${lengthText(reach)}, left out.`]
			: []),
		...gapsFrom(chain, found.chains, reach),
		...few(
			branches.map(
				({ at, ends }) => `${ends} lines meet at ${place(at, unit.mm)}: chains end there, because walls do not branch.`,
			),
			"places where lines branch",
		),
		...(twice > 0 ? [`${count(twice, "line was", "lines were")} drawn twice.`] : []),
		...(specks > 0 ? [`${count(specks, "line", "lines")} no longer than ${lengthText(reach)} left out.`] : []),
		...few(
			layer.leftOut.map(
				({ what, count: times, place: where }) =>
					`Left out: ${times === 1 ? "" : `${times} times `}${what} (${times === 1 ? "" : "the first: "}${where}).`,
			),
			"kinds of things left out",
		),
	];
}

/** Narrower ones are only rounding, mm. */
const SEEN = 0.01;

/** Chains that are the other face of the same walls. */
function otherFaces(chain: Chain, walls: readonly Piece[], chains: readonly Chain[], sideGuessed: boolean): string[] {
	const lines = chains.slice(0, MOST_COMPARED).flatMap((other, i) => {
		const face = other === chain ? null : alongside({ walls, closed: chain.closed }, other);
		if (face === null) return [];
		const where = sideGuessed ? "away" : face.nearer ? "nearer to the room" : "further from the room";
		return [
			`Chain ${i + 1} runs along it ${lengthText(face.thick)} ${where}, as the other face of a wall does: the bay needs the face to the room.`,
		];
	});
	return few(lines, "chains that run along it");
}

/** Ends of other chains that an end of this one nearly meets. */
function gapsFrom(chain: Chain, chains: readonly Chain[], reach: number): string[] {
	if (chain.closed) return [];
	const endsOf = ({ walls }: Chain) => [walls[0]?.from, walls.at(-1)?.to].flatMap((end) => end ?? []);
	const own = endsOf(chain);
	const between = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);
	const gaps = chains.flatMap((other, i) => {
		if (other === chain || other.closed) return [];
		const wide = Math.min(...own.flatMap((end) => endsOf(other).map((there) => between(end, there))));
		return wide > reach && wide <= WIDEST_TOLD ? [{ wide, i }] : [];
	});
	const [a, b] = own;
	if (
		a !== undefined &&
		b !== undefined &&
		chain.walls.length > 2 &&
		between(a, b) > reach &&
		between(a, b) <= WIDEST_TOLD
	)
		gaps.push({ wide: between(a, b), i: -1 });
	return few(
		gaps
			.sort((one, two) => one.wide - two.wide)
			.map(({ wide, i }) =>
				i < 0
					? `Its own ends are only ${lengthText(wide)} apart.`
					: `A gap of ${lengthText(wide)} parts it from chain ${i + 1}: join ends up to ${Math.ceil(wide)} mm to close it.`,
			),
		"gaps to other chains",
	);
}

/** In the drawing's own figures, where it can be looked up. */
const place = ({ x, y }: { readonly x: number; readonly y: number }, mm: number): string =>
	`${Number((x / mm).toFixed(3))}, ${Number((y / mm).toFixed(3))} of the drawing`;

const few = (lines: readonly string[], rest: string): string[] =>
	lines.length <= MOST ? [...lines] : [...lines.slice(0, MOST), `And ${lines.length - MOST} more ${rest}.`];

const count = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;
