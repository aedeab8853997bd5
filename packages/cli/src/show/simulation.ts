import { FITS_WITHIN, type Simulation, type SimulationOrder, type StrategyName, USUAL_ERRORS } from "@baywright/setout";
import { plain } from "../text/plain.ts";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import { section } from "./section.ts";

/** One bay measured over and over, or random ones (no id); null where no track fits it. */
export interface SimulatedBay {
	readonly id: string | null;
	readonly simulation: Simulation | null;
}

const MEASURED: Readonly<Record<StrategyName, string>> = {
	asked: "the readings asked for",
	once: "runs, diagonals, once",
	twice: "runs, diagonals, twice",
	bevel: "runs, a bevel a corner",
	"right-angle": "runs, right-angle rule",
	"as-taped": "the readings in the job",
};

/** How often the track fits the first time, way by way. */
export function simulationText(order: SimulationOrder, bays: readonly SimulatedBay[], file: string | null): string {
	const lines = [
		...(file === null ? [] : wrap(plain(file))),
		...wrap(
			`First fit: the worst piece cut within ${FITS_WITHIN} mm of what the bay needs, of ${order.count} bays measured with a tape good ` +
				`to ${USUAL_ERRORS.tape} mm and a bevel good to ${USUAL_ERRORS.bevel}° (one standard deviation), seed ${order.seed}.`,
		),
		...bays.flatMap(bayText),
		...(bays.length === 0 ? ["", "No bays in this job."] : []),
	];
	return `${lines.join("\n")}\n`;
}

function bayText({ id, simulation }: SimulatedBay): string[] {
	const heading = id === null ? "Random bays of three to five walls, corners of 90° to 165°" : `Bay ${plain(id)}`;
	if (simulation === null)
		return section(heading, ["  Its readings settle nothing or no track fits it: plan and settle say why."]);
	const walls = simulation.strategies[0]?.byWalls.map((each) => each.walls) ?? [];
	const rows = simulation.strategies.map(({ name, firstFit, readings, median, within95, byWalls }) => [
		MEASURED[name],
		readings.mean.toFixed(1),
		`${readings.least}–${readings.most}`,
		percent(firstFit),
		millimetres(median),
		millimetres(within95),
		...(walls.length > 1 ? byWalls.map((each) => percent(each.firstFit)) : []),
	]);
	const columns = [
		words("measured by"),
		...["readings", "from–to", "first\nfit, %", "half\nwithin", "95 %\nwithin"].map(figures),
		...(walls.length > 1 ? walls.map((number) => figures(`${number}\nwalls,\n%`)) : []),
	];
	return section(heading, table(columns, rows));
}

const percent = (share: number): string => (100 * share).toFixed(1);

const millimetres = (mm: number | null): string => (mm === null ? "no fit" : `${mm.toFixed(1)} mm`);
