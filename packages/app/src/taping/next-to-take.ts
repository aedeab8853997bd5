import { type Bay, type BayPlan, type Reading, readingName, SURE_ENOUGH } from "@baywright/setout";
import {
	type HeightOf,
	heightIn,
	heightName,
	heightsOfRoom,
	isUnsaid,
	measuresOfObstacles,
} from "./heights-to-take.ts";
import {
	checksOf,
	possibleReadings,
	readingKey,
	risesOf,
	runsOf,
	type Untaken,
	usualAtCorners,
} from "./usual-readings.ts";

/** The parts of a survey, in the order of the work. */
export const PARTS = ["walls", "corners", "heights", "obstacles"] as const;
export type Part = (typeof PARTS)[number];

/** One thing to tape. */
export interface ToTake {
	/** What it is kept by: its name, counted on where the same is taken again. */
	readonly key: string;
	/** `run of the front wall`. */
	readonly name: string;
	readonly part: Part;
	readonly what: What;
	/** As the job has it, mm or degrees; null where it has nothing. */
	readonly value: number | null;
	readonly state: "taken" | "skipped" | "open";
}

export type What =
	/** `index` among the bay's readings, null while it is not taken; `again` where the very same was read before. */
	| { readonly kind: "reading"; readonly reading: Untaken; readonly index: number | null; readonly again: boolean }
	| { readonly kind: "height"; readonly of: HeightOf }
	/** Whether anything else is on the walls. */
	| { readonly kind: "more" };

/** All that is taped or to be taped of a bay, in the order of the work, and what is asked now; null when all is done. */
export interface Taking {
	readonly list: readonly ToTake[];
	readonly asked: ToTake | null;
}

/** What is known of a bay. */
export type Known = Pick<BayPlan, "survey" | "pieces">;

/**
 * What is to be taped of a bay: its runs from the left and the rises of bowed walls; then what the survey asks for, where it has not settled
 * the usual readings of corners; then heights; then obstacles. `skipped` holds keys that are left as they are. `at` is the key that was gone
 * back to; else the first that is open is asked.
 */
export function toTake(bay: Bay, known: Known, skipped: ReadonlySet<string>, at: string | null): Taking {
	if (bay.walls.length === 0) return { list: [], asked: null };
	const walls = onWalls(bay, skipped);
	const corners = atCorners(bay, known, skipped, walls);
	const heights = heightsOfRoom(bay).map((of) => height(bay, of, "heights", skipped));
	const obstacles = measuresOfObstacles(bay).map((of) => height(bay, of, "obstacles", skipped));
	const list = [...walls, ...corners, ...heights, ...obstacles, more(skipped)];
	const asked = list.find(({ key }) => key === at) ?? list.find(({ state }) => state === "open") ?? null;
	return { list, asked };
}

/** What comes before an entry in the order of the work, to go back to; null at the first. */
export function before({ list, asked }: Taking): ToTake | null {
	const index = asked === null ? list.length : list.indexOf(asked);
	return list.slice(0, index).findLast(({ state }) => state !== "open") ?? null;
}

/** Runs and rises, each with all that was taken of it. */
function onWalls(bay: Bay, skipped: ReadonlySet<string>): ToTake[] {
	const taken = takenReadings(bay);
	return [...runsOf(bay), ...risesOf(bay)].flatMap((reading) => {
		const of = taken.filter(({ what }) => isSamePlace(what.reading, reading));
		return of.length > 0 ? of : [untaken(bay, reading, skipped)];
	});
}

/** All other readings as they were taken, those that were skipped, and what is wanted next. */
function atCorners(bay: Bay, known: Known, skipped: ReadonlySet<string>, walls: readonly ToTake[]): ToTake[] {
	const listed = new Set(walls.map(({ key }) => key));
	const isNew = ({ key }: ToTake) => !listed.has(key);
	const taken = takenReadings(bay).filter(isNew);
	const wanted = wantedAtCorners(bay, known, skipped)
		.map((reading) => untaken(bay, reading, skipped))
		.filter(isNew);
	const left = possibleReadings(bay)
		.map((reading) => untaken(bay, reading, skipped))
		.filter((each) => each.state === "skipped" && isNew(each) && wanted.every(({ key }) => key !== each.key));
	return [...taken, ...left, ...wanted];
}

/** What tells a wrong reading from those it might be mistaken for, else what the survey asks for; where it was skipped or the survey says nothing, the usual readings that are not taken yet. */
function wantedAtCorners(bay: Bay, { survey, pieces }: Known, skipped: ReadonlySet<string>): Untaken[] {
	const isOpen = (reading: Untaken) => untaken(bay, reading, skipped).state === "open";
	const isFresh = (reading: Untaken) => isOpen(reading) && timesTaken(bay, reading) === 0;
	const usual = usualAtCorners(bay).filter(isFresh);
	if (survey === null || !survey.settled) return usual;
	if (survey.telling !== null && isOpen(survey.telling)) return [survey.telling];
	if (survey.next !== null) return isOpen(survey.next.reading) ? [survey.next.reading] : usual;
	const isSure = pieces.length > 0 && pieces.every(({ sd }) => sd !== null && sd <= SURE_ENOUGH);
	if (!isSure) return usual;
	if (Math.round(survey.redundancy) > 0) return [];
	const checks = checksOf(bay);
	const check = checks.find(isFresh) ?? (bay.walls.length === 1 ? checks.find(isOpen) : undefined);
	return check === undefined ? [] : [check];
}

type TakenReading = ToTake & { readonly what: Extract<What, { kind: "reading" }> };

function takenReadings({ readings, walls }: Bay): TakenReading[] {
	const names = readings.map((reading) => readingName(reading, walls.length));
	return readings.map((reading, index) => {
		const name = names[index] as string;
		const time = names.slice(0, index).filter((each) => each === name).length;
		return {
			key: readingKey(name, time),
			name,
			part: time > 0 ? "corners" : partOf(reading),
			what: { kind: "reading", reading, index, again: time > 0 },
			value: reading.value,
			state: "taken",
		};
	});
}

function untaken(bay: Bay, reading: Untaken, skipped: ReadonlySet<string>): ToTake {
	const name = readingName(reading, bay.walls.length);
	const times = timesTaken(bay, reading);
	const key = readingKey(name, times);
	return {
		key,
		name,
		part: times > 0 ? "corners" : partOf(reading),
		what: { kind: "reading", reading, index: null, again: times > 0 },
		value: null,
		state: skipped.has(key) ? "skipped" : "open",
	};
}

function timesTaken({ readings, walls }: Bay, reading: Untaken): number {
	const name = readingName(reading, walls.length);
	return readings.filter((each) => readingName(each, walls.length) === name).length;
}

const partOf = ({ kind }: Pick<Reading, "kind">): Part => (kind === "run" || kind === "rise" ? "walls" : "corners");

const isSamePlace = (a: Untaken, b: Untaken): boolean =>
	a.kind === b.kind && "wall" in a && "wall" in b && a.wall === b.wall;

function height(bay: Bay, of: HeightOf, part: Part, skipped: ReadonlySet<string>): ToTake {
	const name = heightName(bay, of);
	const state = !isUnsaid(bay, of) ? "taken" : skipped.has(name) ? "skipped" : "open";
	return { key: name, name, part, what: { kind: "height", of }, value: heightIn(bay, of), state };
}

const MORE = "anything else on the walls";

const more = (skipped: ReadonlySet<string>): ToTake => ({
	key: MORE,
	name: MORE,
	part: "obstacles",
	what: { kind: "more" },
	value: null,
	state: skipped.has(MORE) ? "skipped" : "open",
});
