import { builtInSystems } from "../library/built-in.ts";
import { builtInCloths } from "../library/built-in-cloths.ts";
import { foundText, type Problem } from "./problem.ts";

/**
 * Checks between one field of a job and another: indexes, ids, and pairs in order. They read the file as it came, so
 * that they can be made, and all be reported, when other fields are wrong; what has the wrong shape they pass over.
 */
export const referenceProblems = (file: unknown): Problem[] => {
	if (!isRecord(file)) return [];
	const job: Located = { raw: file, path: "" };
	const systems = records(job, "systems");
	const cloths = records(job, "cloths");
	const bays = records(job, "bays");
	const systemIds = [...new Set([...strings(systems, "id"), ...builtInSystems.map(({ id }) => id)])];
	const clothIds = [...new Set([...strings(cloths, "id"), ...builtInCloths.map(({ id }) => id)])];
	return [
		...repeated(systems, "id", "system"),
		...systems.flatMap((system) => projectionProblems(child(system, "projection"))),
		...repeated(cloths, "id", "cloth"),
		...repeated(records(job, "prices"), "item", "price"),
		...repeated(bays, "id", "bay"),
		...bays.flatMap((bay) => bayProblems(bay, systemIds, clothIds)),
	];
};

/** An object of the file and where it stands. */
interface Located {
	readonly raw: Readonly<Record<string, unknown>>;
	readonly path: string;
}

const bayProblems = (bay: Located, systemIds: readonly string[], clothIds: readonly string[]): Problem[] => {
	const curtains = records(bay, "curtains");
	const track = child(bay, "track");
	return [
		...track.flatMap((each) => idProblems(each, "system", systemIds)),
		...curtains.flatMap((curtain) => [
			...idProblems(curtain, "cloth", clothIds),
			...orderProblems(curtain, "from", "to"),
		]),
		...records(bay, "openings").flatMap((each) => [
			...orderProblems(each, "from", "to"),
			...orderProblems(each, "sill", "head"),
		]),
		...records(bay, "obstacles").flatMap((each) => [
			...orderProblems(each, "from", "to"),
			...orderProblems(each, "bottom", "top"),
		]),
		...records(bay, "walls").flatMap(noDrillProblems),
		...track.flatMap((each) => repeated(records(each, "bends"), "corner", "bend")),
		...indexProblems(bay, track),
	];
};

const indexProblems = (bay: Located, track: readonly Located[]): Problem[] => {
	const { corners, walls } = bay.raw;
	if (!Array.isArray(corners)) return [];
	const wallCount = Math.max(0, corners.length - 1);
	const wall = (at: Located): Problem[] => numberProblems(at, "wall", 0, wallCount - 1, "a wall of this bay");
	const corner = (at: Located, key: string): Problem[] =>
		numberProblems(at, key, 0, corners.length - 1, "a corner of this bay");
	const between = (at: Located): Problem[] =>
		numberProblems(at, "corner", 1, corners.length - 2, "a corner between two walls");

	const readings = records(bay, "readings");
	const ofKind = (...kinds: string[]) => readings.filter(({ raw }) => kinds.some((kind) => raw.kind === kind));
	const fitted = child(bay, "fitted");
	const onWalls = [
		...ofKind("run", "rise", "square"),
		...records(bay, "openings"),
		...records(bay, "obstacles"),
		...track.flatMap((each) => [
			...child(each, "start"),
			...child(each, "end"),
			...records(each, "joints"),
			...records(each, "brackets"),
		]),
		...fitted.flatMap((each) => records(each, "brackets")),
		...fitted.flatMap((each) =>
			records(each, "spans").flatMap((span) => [...child(span, "from"), ...child(span, "to")]),
		),
	];
	return [
		...(Array.isArray(walls) && walls.length > wallCount
			? [problem(bay, "walls", `at most ${wallCount}, one wall for each pair of corners`)]
			: []),
		...onWalls.flatMap(wall),
		...ofKind("angle", "chord").flatMap(between),
		...track.flatMap((each) => records(each, "bends").flatMap(between)),
		...ofKind("diagonal").flatMap((each) => [
			...corner(each, "from"),
			...corner(each, "to"),
			...diagonalProblems(each),
		]),
		...ofKind("square").flatMap((each) => [...corner(each, "corner"), ...squareProblems(each)]),
	];
};

const numberProblems = (at: Located, key: string, first: number, last: number, allowed: string): Problem[] => {
	const value = at.raw[key];
	if (!isIndex(value) || (value >= first && value <= last)) return [];
	if (last < first) return [problem(at, key, `${allowed}, of which there is none`)];
	return [
		problem(at, key, first === last ? `${allowed}: ${first} is the only one` : `${allowed}: ${first} to ${last}`),
	];
};

const diagonalProblems = (reading: Located): Problem[] =>
	isIndex(reading.raw.from) && reading.raw.from === reading.raw.to
		? [problem(reading, "to", "another corner than from")]
		: [];

/** A corner at the end of the wall stands on its line whatever the bay: such a reading says nothing. */
const squareProblems = (reading: Located): Problem[] => {
	const { corner, wall } = reading.raw;
	const own = isIndex(corner) && isIndex(wall) && (corner === wall || corner === wall + 1);
	return own ? [problem(reading, "corner", `a corner that is not an end of wall ${wall}`)] : [];
};

const idProblems = (at: Located, key: string, ids: readonly string[]): Problem[] => {
	const value = at.raw[key];
	if (typeof value !== "string" || ids.includes(value)) return [];
	return [problem(at, key, ids.length === 0 ? "null: the job has none" : `one of ${ids.join(", ")}`)];
};

const repeated = (items: readonly Located[], key: string, thing: string): Problem[] => {
	const first = new Map<unknown, string>();
	return items.flatMap((item) => {
		const value = item.raw[key];
		if (typeof value !== "string" && typeof value !== "number") return [];
		const earlier = first.get(value);
		if (earlier !== undefined)
			return [problem(item, key, `${key === "id" ? "an" : "a"} ${key} that no other ${thing} has; ${earlier} has it`)];
		first.set(value, item.path);
		return [];
	});
};

const orderProblems = (at: Located, low: string, high: string): Problem[] => {
	const [from, to] = [at.raw[low], at.raw[high]];
	const wrong = typeof from === "number" && typeof to === "number" && from >= to;
	return wrong ? [problem(at, high, `more than ${low}, which is ${from}`)] : [];
};

const noDrillProblems = (wall: Located): Problem[] =>
	array(wall.raw.noDrill).flatMap((stretch, i) => {
		const [from, to] = array(stretch);
		const wrong = typeof from === "number" && typeof to === "number" && from >= to;
		return wrong
			? [
					{
						path: `${wall.path}.noDrill[${i}][1]`,
						found: foundText(to),
						allowed: `more than its start, which is ${from}`,
					},
				]
			: [];
	});

const projectionProblems = (projections: readonly Located[]): Problem[] =>
	projections.flatMap((at) => {
		const { min, max, default: usual } = at.raw;
		if (typeof min !== "number" || typeof max !== "number") return [];
		if (min > max) return [problem(at, "max", `min, which is ${min}, or more`)];
		const outside = typeof usual === "number" && (usual < min || usual > max);
		return outside ? [problem(at, "default", `from min, which is ${min}, to max, which is ${max}`)] : [];
	});

const problem = (at: Located, key: string, allowed: string): Problem => ({
	path: at.path === "" ? key : `${at.path}.${key}`,
	found: foundText(at.raw[key]),
	allowed,
});

const child = ({ raw, path }: Located, key: string): Located[] => {
	const value = raw[key];
	return isRecord(value) ? [{ raw: value, path: path === "" ? key : `${path}.${key}` }] : [];
};

const records = ({ raw, path }: Located, key: string): Located[] =>
	array(raw[key]).flatMap((item, i) =>
		isRecord(item) ? [{ raw: item, path: `${path === "" ? key : `${path}.${key}`}[${i}]` }] : [],
	);

const strings = (items: readonly Located[], key: string): string[] =>
	items.map(({ raw }) => raw[key]).filter((value) => typeof value === "string");

const array = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

const isIndex = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
	typeof value === "object" && value !== null && !Array.isArray(value);
