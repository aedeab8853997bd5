import type { WallChain } from "@baywright/geometry";
import { cornerName, longestArm, wallName } from "@baywright/setout";
import type { WriteIn } from "../paper/write-in.ts";
import type { SheetOf } from "./sheet-of.ts";

/** A reading that the form has a box for. */
export type ReadingToTake =
	| { readonly kind: "run"; readonly wall: number }
	| { readonly kind: "rise"; readonly wall: number }
	| { readonly kind: "diagonal"; readonly from: number; readonly to: number }
	| { readonly kind: "chord"; readonly corner: number; readonly arm: number };

/** All diagonals of a bay that has no more than these; of one that has more, those past one corner or two, and from end to end. */
const MOST_DIAGONALS = 10;

/** In the order in which they are best taken: runs, diagonals, corners, and the rise of every wall that is drawn bowed. */
export function readingsToTake({ plan, bay, unit }: SheetOf): ReadingToTake[] {
	const { chain } = plan;
	if (chain === null) return [];
	const walls = chain.walls.length;
	const diagonals = chain.corners.flatMap((_, from) =>
		chain.corners.slice(from + 2).map((__, i) => ({ kind: "diagonal", from, to: from + 2 + i }) as const),
	);
	const kept = diagonals.filter(
		({ from, to }) => diagonals.length <= MOST_DIAGONALS || to - from <= 3 || to - from === walls,
	);
	return [
		...chain.walls.map((_, wall) => ({ kind: "run", wall }) as const),
		...bay.walls.flatMap(({ rise }, wall) => (rise === 0 ? [] : [{ kind: "rise", wall } as const])),
		...kept,
		...chain.corners.slice(1, -1).flatMap((_, i) => {
			const arm = armAt(unit, chain, i + 1);
			return arm > 0 ? [{ kind: "chord", corner: i + 1, arm } as const] : [];
		}),
	];
}

const INCH = 25.4;

/** The longest arms of a chord at a corner, mm: whole inches where an inch tape reads them. */
function armAt(unit: SheetOf["unit"], { corners }: WallChain, corner: number): number {
	const arm = longestArm(corners, corner);
	return unit === "in" ? Math.floor(arm / INCH) * INCH : arm;
}

/** The boxes to write in, in the order of the work. The first three are the readings. */
export function surveyForms(of: SheetOf, chain: WallChain): WriteIn[] {
	const walls = chain.walls.length;
	return [
		runForm(of, walls),
		diagonalForm(of, walls),
		cornerForm(of, chain),
		heightForm(walls),
		openingForm(of, walls),
		obstacleForm(of),
		surfaceForm(walls),
	];
}

const box = (heading: string) => ({ heading, of: "box" }) as const;
const words = (heading: string) => ({ heading, of: "words" }) as const;

const numbered = (wall: number, walls: number): string => (walls === 1 ? "1" : `${wall + 1}  ${wallName(wall, walls)}`);

function runForm({ unit }: SheetOf, walls: number): WriteIn {
	return {
		name: "runs",
		title: "Runs and rises",
		how: "Run: straight from corner to corner, on a bowed wall too. Rise: lay a straightedge or a taut line from corner to corner and measure in its middle to the wall; + where the wall bows away from the room.",
		columns: [words("wall"), box(`run, ${unit}`), box("run again"), box("rise, if bowed"), box("rise again")],
		rows: Array.from({ length: walls }, (_, wall) => [numbered(wall, walls), "", "", "", ""]),
	};
}

function diagonalForm(of: SheetOf, walls: number): WriteIn {
	const rows = readingsToTake(of).flatMap((reading) =>
		reading.kind === "diagonal"
			? [[`${shortCorner(reading.from, walls)} – ${shortCorner(reading.to, walls)}`, "", ""]]
			: [],
	);
	return {
		name: "diagonals",
		title: "Diagonals",
		how: "Straight through the air from one corner to the other, at one height. They say more of the angles than any bevel does.",
		columns: [words("from – to"), box(`diagonal, ${of.unit}`), box("again")],
		rows: rows.length > 0 ? rows : [["none: one wall", "", ""]],
	};
}

const shortCorner = (corner: number, walls: number): string => cornerName(corner, walls).replace(/^the /, "");

function cornerForm({ unit, about }: SheetOf, chain: WallChain): WriteIn {
	const walls = chain.walls.length;
	const rows = chain.corners.slice(1, -1).map((_, i) => {
		const arm = armAt(unit, chain, i + 1);
		return [cornerName(i + 1, walls), arm > 0 ? about(arm) : "", "", "", ""];
	});
	return {
		name: "corners",
		title: "Corners",
		how: "Chord: mark the same arm along both walls from the corner, as long as the walls let it be, and measure straight between the marks; at an external corner carry one wall on past it with a straightedge. Or set a bevel into the corner and read the angle.",
		columns: [words("corner"), box("both arms"), box(`chord, ${unit}`), box("chord again"), box("angle by bevel, °")],
		rows: rows.length > 0 ? rows : [["none: one wall", "", "", "", ""]],
	};
}

const heightForm = (walls: number): WriteIn => ({
	name: "heights",
	title: "Heights",
	how: "Above the finished floor, plumb. The track is set level, not parallel to a ceiling: so take them at several places.",
	columns: [
		words("what"),
		box("at the left end"),
		box(walls === 1 ? "in the middle" : "in the middle of the bay"),
		box("at the right end"),
	],
	rows: [
		["ceiling", "", "", ""],
		["floor, lower than its highest place by", "", "", ""],
		["track, as wished", "", "", ""],
	],
});

/** Lines to spare for what is not drawn yet. */
const SPARE_OPENINGS = 1;
const SPARE_OBSTACLES = 3;

function openingForm({ bay }: SheetOf, walls: number): WriteIn {
	const drawn = bay.openings.map(({ wall }) => [String(wall + 1), "", "", "", "", ""]);
	const spare = Array.from({ length: Math.max(SPARE_OPENINGS, drawn.length === 0 ? walls : 0) }, () => [
		"",
		"",
		"",
		"",
		"",
		"",
	]);
	return {
		name: "openings",
		title: "Windows and doors",
		how: "From the corner at the left of their wall, along the face, to either edge of the reveal. Sill and head above the floor. Sill board: how far it stands off the wall.",
		columns: [
			box("wall"),
			box("to its left edge"),
			box("to its right edge"),
			box("sill"),
			box("head"),
			box("sill board off the wall"),
		],
		rows: [...drawn, ...spare],
	};
}

function obstacleForm({ bay }: SheetOf): WriteIn {
	const drawn = bay.obstacles.map(({ kind, wall }) => [kind.replace("-", " "), String(wall + 1), "", "", "", "", ""]);
	const spare = Array.from({ length: SPARE_OBSTACLES }, () => ["", "", "", "", "", "", ""]);
	return {
		name: "obstacles",
		title: "In the way",
		how: "Switches, sockets, radiators, handles, pipes, vents, sensors, lintels: from the corner at the left of their wall to either edge, bottom and top above the floor, and how far they stand off the wall. Where a cable goes up or down from one, say so.",
		columns: [
			box("what"),
			box("wall"),
			box("to its left edge"),
			box("to its right edge"),
			box("bottom"),
			box("top"),
			box("off the wall"),
		],
		rows: [...drawn, ...spare],
	};
}

const MATERIALS = ["batten or timber", "masonry", "plasterboard", "concrete", "joists", "not known"];

const surfaceForm = (walls: number): WriteIn => ({
	name: "surfaces",
	title: "What is to be drilled",
	how: "Knock, look at what an old hole shows, and ask. What is not known is said so: it is found out by a trial hole.",
	columns: [words("where"), ...MATERIALS.map((heading) => ({ heading, of: "tick" }) as const), box("remarks")],
	rows: [...Array.from({ length: walls }, (_, wall) => numbered(wall, walls)), "ceiling"].map((where) => [
		where,
		...MATERIALS.map(() => ""),
		"",
	]),
});
