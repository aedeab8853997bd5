import { type Bay, cornerName, formatLength, type LengthUnit, wallName } from "@baywright/setout";
import { type HeightOf, obstacleName } from "./heights-to-take.ts";
import type { What } from "./next-to-take.ts";
import type { Untaken } from "./usual-readings.ts";

/** What the words need to know of the bay. */
export interface Site {
	readonly bay: Bay;
	readonly unit: LengthUnit;
	/** Turn at each corner, radians; under 0 at an external corner. Empty while the walls make no bay. */
	readonly turns: readonly number[];
	/** Track height, mm; null while nothing says it. */
	readonly height: number | null;
}

/** What to look for on the walls. */
export const IN_THE_WAY =
	"Pipes, switches, sensors, a vent: whatever is in the way of the track, the curtains or a drill.";

/** How a reading is taken, in plain sentences; common practice, no source, as far as it is not what the reading means. */
export function howTo(what: What, site: Site): string {
	if (what.kind === "more") return IN_THE_WAY;
	const words = what.kind === "height" ? howToTakeHeight(what.of, site) : howToTakeReading(what.reading, site);
	const again = what.kind === "reading" && what.again;
	return again ? `Hold the tape anew and leave the first figure aside. ${words}` : words;
}

function howToTakeReading(reading: Untaken, site: Site): string {
	const { bay, turns } = site;
	const walls = bay.walls.length;
	const corner = (index: number) => cornerName(index, walls);
	const wall = (index: number) => the(wallName(index, walls));
	switch (reading.kind) {
		case "run": {
			const [left, right] = [corner(reading.wall), corner(reading.wall + 1)];
			return isBowed(bay, reading.wall)
				? `Tape from ${left} straight to ${right}, not round the bow, ${level(site)}.`
				: `Tape along the wall from ${left} to ${right}, ${level(site)}.`;
		}
		case "diagonal":
			return `Tape straight across from ${corner(reading.from)} to ${corner(reading.to)}, ${level(site)}, the tape taut and clear of everything.`;
		case "angle":
			return isExternal(turns, reading.corner)
				? `Set a bevel round the outside of ${corner(reading.corner)}, its arms as far along the walls as they go. Write 360° less what it shows.`
				: `Set a bevel into ${corner(reading.corner)}, ${level(site)}, its arms as far along the walls as they go.`;
		case "chord":
			return isExternal(turns, reading.corner)
				? `Lay a straightedge on ${wall(reading.corner - 1)} so that it carries its face on past ${corner(reading.corner)}. Mark ${length(reading.arm, site)} from the corner on it and on ${wall(reading.corner)}, and tape from mark to mark.`
				: `Mark ${length(reading.arm, site)} from ${corner(reading.corner)} on both walls, ${level(site)}. Tape straight from mark to mark, to the millimetre.`;
		case "rise":
			return `Stretch a line from ${corner(reading.wall)} to ${corner(reading.wall + 1)} and measure from it to the wall, ${along(reading.at, site)}. Minus where the wall bows into the room.`;
		case "square":
			return `Carry the line of ${wall(reading.wall)} on with a straightedge and measure square off it to ${corner(reading.corner)}. Minus where the corner lies behind the line.`;
	}
}

function howToTakeHeight(of: HeightOf, { bay, unit, height }: Site): string {
	switch (of.kind) {
		case "sill":
			return "From the floor up to the sill, at both ends; write the greater.";
		case "head":
			return "From the floor up to the top of the opening, at both ends; write the greater.";
		case "ceiling":
			return "From the floor to the ceiling, at both ends and in the middle; write the least.";
		case "track": {
			const high = height === null ? "" : ` Left as it is: ${formatLength(height, unit, { unit: true })}.`;
			return `From the floor up to where the track is to hang. It is set level, whatever floor and ceiling do.${high}`;
		}
		case "from":
			return `From ${cornerName(bay.obstacles[of.obstacle]?.wall ?? 0, bay.walls.length)} along the wall to the near edge of ${obstacleName(bay, of.obstacle)}.`;
		case "width":
			return "From edge to edge, along the wall.";
		case "bottom":
			return "From the floor up to its lower edge. Left as it is where it goes down to the floor.";
		case "top":
			return "From the floor up to its upper edge. Left as it is where it goes up to the ceiling.";
		case "depth":
			return "From the wall out to its front; 0 where it is flush.";
	}
}

/** Arms and diagonals are taped where the track will hang, because walls are seldom plumb. */
const level = ({ height }: Site): string =>
	height === null ? "level, as high as the track will hang" : "at the height of the track";

const along = (at: number | null, site: Site): string =>
	at === null ? "in its middle" : `${length(at, site)} along the wall`;

const length = (mm: number, { unit }: Site): string => formatLength(mm, unit, { unit: true });

const isExternal = (turns: readonly number[], corner: number): boolean => (turns[corner] ?? 0) < 0;

const isBowed = ({ walls }: Bay, wall: number): boolean => (walls[wall]?.rise ?? 0) !== 0;

/** "the front wall", "wall 2–3". */
const the = (name: string): string => (name.startsWith("wall ") ? name : `the ${name}`);
