import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { basename, resolve } from "node:path";
import { problemLine, serialiseJob } from "@baywright/setout";
import type { WallImport } from "@baywright/sheets/read";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { spoken } from "../each-job.ts";
import { type ExitStatus, PLANNED } from "../exit-status.ts";
import { cannotRead, STANDARD_INPUT } from "../job-paths.ts";
import { readOptions } from "../options.ts";
import { importText } from "../show/import.ts";
import { plain, quoted } from "../text/plain.ts";
import type { World } from "../world.ts";
import { writeWhole } from "../write-whole.ts";
import { IMPORT_OPTIONS, type ImportOrder, readImportOrder } from "./import-order.ts";

export const importWallsCommand: Command = {
	name: "import",
	usage: "import FILE [--layer NAME] [--unit mm] [--chain N] [--walls 2-4] [--out JOB]",
	summary: "a job from the walls of a drawing, DXF or SVG",
	about:
		"Takes a chain of walls from a drawing (DXF as text: LINE, ARC, LWPOLYLINE; or SVG) and writes a job with that bay, to standard output or a file. " +
		"Lines are joined where their ends meet; arcs become bowed walls. What was left out or guessed is said.",
	options: [
		[
			"--layer NAME",
			"the layer the walls are on, in SVG a group's label or id; when left out the one called after walls, else the fullest",
		],
		[
			"--unit mm|cm|m|in|ft",
			"what one unit of the drawing is; when left out as the file says, else a guess, which is said",
		],
		["--scale N", "the drawing is 1 : N"],
		["--join LENGTH", "ends up to this far apart are joined; 1 mm when left out"],
		[
			"--chain N",
			"which chain, the likeliest first: the longest, but of a wall drawn with both faces the one to the room; 1 when left out",
		],
		["--walls FIRST-LAST", "only these walls of it, numbered from the left as seen from the room"],
		["--other-side", "the room lies on the other side"],
		["--system ID", "the track system of the new bay; one that suits the walls when left out"],
		["--title TEXT", "of the job; the file's name when left out"],
		["--look", "shows what would be taken, and writes nothing"],
		["--out JOB", "where to; written whole or not at all"],
		["--force", "write over a file that is there"],
	],
	example: "import plan.dxf --layer WALLS --out bay.baywright.json",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, IMPORT_OPTIONS);
	if (!options.ok) return complain(world, `import: ${options.message}`);
	// Loaded only here: no other command needs the readers.
	const { bayOf, GREATEST_REACH, importWalls, LEAST_REACH, readDrawing } = await import("@baywright/sheets/read");
	const order = readImportOrder(options, [LEAST_REACH, GREATEST_REACH]);
	if (typeof order === "string") return complain(world, `import: ${order}`);
	const name = spoken(order.file);
	const bytes = await bytesOf(order.file, world);
	if (typeof bytes === "string") return complain(world, bytes);
	const read = readDrawing(bytes);
	if (!read.ok) return complain(world, `${name}: ${problemLine(read.problem)}`);
	const imported = importWalls(read.drawing, order.wish);
	if (!imported.ok) return complain(world, `${name}: ${problemLine(imported.problem)}`);
	const { walls } = imported;
	const [problem, ...more] = walls.problems;
	if (order.look) {
		world.out(importText(walls));
		if (problem === undefined) return PLANNED;
	}
	if (problem !== undefined) {
		const rest = more.length === 0 ? "" : `; and ${more.length} more`;
		return complain(world, `${name}: ${problemLine(problem)}${rest}`);
	}
	const title = order.title ?? titleOf(order.file);
	return write(serialiseJob(bayOf(walls, { title, name: title, system: order.system })), walls, order, world);
}

function write(text: string, walls: WallImport, { out, force }: ImportOrder, world: World): ExitStatus {
	if (out === undefined) {
		// Standard output is the job's; what must be known of it is said beside it.
		for (const note of walls.notes) world.err(`baywright: ${plain(note)}\n`);
		world.out(text);
		return PLANNED;
	}
	if (!force && existsSync(resolve(world.folder, out)))
		return complain(
			world,
			`import: found ${quoted(out)} there already, allowed another file, or --force to write over it; nothing was written`,
		);
	try {
		writeWhole(world.folder, out, text);
	} catch {
		return complain(
			world,
			`import: cannot write ${quoted(out)}, allowed a place where a file can be written; nothing was written`,
		);
	}
	world.out(`${importText(walls)}\nWritten to ${plain(out)}\n`);
	return PLANNED;
}

async function bytesOf(file: string, world: World): Promise<Uint8Array | string> {
	try {
		return file === STANDARD_INPUT ? await world.input() : await readFile(resolve(world.folder, file));
	} catch (error) {
		return cannotRead(file, error);
	}
}

const titleOf = (file: string): string =>
	file === STANDARD_INPUT
		? "Imported bay"
		: plain(basename(file).replace(/\.(?:dxf|svg)$/i, "")).slice(0, 80) || "Imported bay";
