import { bendName, capital, cornerName, wallName } from "@baywright/setout";
import type { BendMark, BowMark, BracketMark, JointMark, SiteMark } from "./marks.ts";
import type { FittedBracket, Tick } from "./ticks.ts";

/** What stands in one row of the list. */
export interface MarkWords {
	/** "Bracket 3". */
	readonly title: string;
	/** Where it is and what it is beside. */
	readonly place: string;
	/** The figure to work by, mm. */
	readonly figure: number;
	/** What the figure is: where the tape is held, or the length along the curve. */
	readonly from: string;
	/** What the tape reads from the other corner, or how far the bend stands off. */
	readonly check: string;
}

type Show = (mm: number) => string;

/** `fitted`: what is kept of a ticked bracket, of which one that was measured is not called pinned. */
export function markWords(mark: SiteMark, walls: number, show: Show, fitted: FittedBracket | null = null): MarkWords {
	const title = capital(markTitle(mark));
	if (mark.kind === "bend") return { title, ...bendWords(mark, walls, show) };
	if (mark.kind === "bow") return { title, ...bowWords(mark, walls, show) };
	return { title, ...wallWords(mark, walls, show, isMeasured(fitted)) };
}

const isMeasured = (fitted: FittedBracket | null): boolean =>
	fitted !== null && (fitted.projection !== null || fitted.at !== fitted.planned);

/** "bracket 3". */
export const markTitle = ({ kind, number }: Pick<SiteMark, "kind" | "number">): string => `${kind} ${number}`;

/** What the plan has changed since a mark was ticked; "" where nothing. */
export function changeWords(mark: SiteMark, tick: Tick, walls: number, show: Show): string {
	if (tick.state === "reshaped" && (mark.kind === "bend" || mark.kind === "bow")) {
		const now = `radius ${show(mark.radius)}, sweep ${show(mark.sweep)}`;
		return `changed since it was ticked: was radius ${show(tick.was.radius)}, sweep ${show(tick.was.sweep)}, now ${now}`;
	}
	if (tick.state !== "moved" || (mark.kind !== "bracket" && mark.kind !== "joint")) return "";
	const { nearer, further, place } = mark;
	if (tick.was.wall !== place.wall)
		return `moved since it was ticked: was ${show(tick.was.at)} from ${cornerName(tick.was.wall, walls)} on the ${wallName(tick.was.wall, walls)}`;
	// Told from the corner that the large figure is taped from.
	const was = nearer.corner === place.wall ? tick.was.at : nearer.mm + further.mm - tick.was.at;
	return `moved since it was ticked: was ${show(was)}, now ${show(nearer.mm)}`;
}

/** What was measured of a bracket otherwise than planned, seen from the corner that its row reads from; "" where nothing. */
export function measuredWords(
	{ nearer, further, place }: BracketMark,
	fitted: FittedBracket | null,
	show: Show,
): string {
	if (fitted === null || fitted.wall !== place.wall) return "";
	const { at, planned, projection } = fitted;
	const onRow = (mm: number) => (nearer.corner === place.wall ? mm : nearer.mm + further.mm - mm);
	const off = planned === null ? 0 : onRow(at) - onRow(planned);
	return [
		...(off === 0 ? [] : [`${show(Math.abs(off))} ${off < 0 ? "nearer" : "further"} than planned`]),
		...(projection === null ? [] : [`projection ${show(projection)} taped`]),
	].join(", ");
}

function wallWords(
	mark: BracketMark | JointMark,
	walls: number,
	show: Show,
	measured: boolean,
): Omit<MarkWords, "title"> {
	const { place, nearer, further, curved } = mark;
	const more = mark.kind === "bracket" ? bracketNotes(mark, show, measured) : [];
	const both = show(nearer.mm) === show(further.mm);
	return {
		place: [wallName(place.wall, walls), ...(curved ? ["along the curve"] : []), ...more].join(", "),
		figure: nearer.mm,
		from: both ? "from either corner" : `from ${cornerName(nearer.corner, walls)}`,
		check: both ? "" : `${show(further.mm)} from ${cornerName(further.corner, walls)}`,
	};
}

function bracketNotes({ besideBend, standsOff, role }: BracketMark, show: Show, measured: boolean): string[] {
	const notes: string[] = [];
	if (besideBend?.side === "before") notes.push(`bend starts ${show(besideBend.mm)} on`);
	if (besideBend?.side === "after") notes.push(`bend ends ${show(besideBend.mm)} before`);
	if (role === "joint") notes.push("at a joint");
	if (role === "pinned" && !measured) notes.push("pinned");
	if (standsOff !== null) notes.push(`projection ${show(standsOff)}`);
	return notes;
}

function bendWords(mark: BendMark, walls: number, show: Show): Omit<MarkWords, "title"> {
	const { corners, radius, sweep, setBack, reverse } = mark;
	const [before, after] = setBack;
	const [first, last] = [corners[0] ?? 0, corners.at(-1) ?? 0];
	const on =
		before !== null && before >= 0
			? [`starts ${show(before)} before ${cornerName(first, walls)}`]
			: startWords(mark, show);
	const off = after !== null && after >= 0 ? [`ends ${show(after)} after ${cornerName(last, walls)}`] : [];
	const what = reverse ? "half of a reverse bend" : bendName(corners, walls);
	return {
		place: [what, `radius ${show(radius)}`, ...on, ...off].join(", "),
		figure: sweep,
		from: "sweep",
		check: offCorners(mark, walls, show),
	};
}

/** Past several corners the track runs by each of them at a distance of its own: the least and the greatest are told. */
function offCorners({ corners, gaps }: BendMark, walls: number, show: Show): string {
	if (gaps.length === 1) return `middle ${show(gaps[0] ?? 0)} off ${cornerName(corners[0] ?? 0, walls)}`;
	return `${show(Math.min(...gaps))} to ${show(Math.max(...gaps))} off its corners`;
}

function bowWords(mark: BowMark, walls: number, show: Show): Omit<MarkWords, "title"> {
	return {
		place: [wallName(mark.wall, walls), `radius ${show(mark.radius)}`, ...startWords(mark, show)].join(", "),
		figure: mark.sweep,
		from: "sweep, along the curve",
		check: "",
	};
}

const startWords = ({ on }: BendMark | BowMark, show: Show): string[] =>
	on === null ? [] : [`starts ${show(on.start)} from the left cut end of ${on.piece}`];
