import { setImmediate } from "node:timers/promises";
import {
	FITS_WITHIN,
	GREATEST_SEED,
	type Simulation,
	type SimulationOrder,
	type SimulationRun,
	simulateBay,
	simulateRandomBays,
	USUAL_ERRORS,
} from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, severalJobs } from "../each-job.ts";
import { type ExitStatus, FAILED, PLANNED, REFUSED } from "../exit-status.ts";
import { type Options, readOptions } from "../options.ts";
import { type SimulatedBay, simulationText } from "../show/simulation.ts";
import { systemOf } from "../system-of.ts";
import { quoted } from "../text/plain.ts";
import type { World } from "../world.ts";

const OPTIONS = { count: { example: "1000" }, seed: { example: "1" }, json: "alone" } as const;
const MOST_BAYS = 1_000_000;

export const simulate: Command = {
	name: "simulate",
	usage: "simulate [JOB…] [--count 10000] [--seed 1] [--json]",
	summary: "how often a track fits the first time, however the bay is measured",
	about:
		"Measures bays over and over with the errors that tape and bevel have, plans each, and counts how often the worst piece is cut " +
		"within 5 mm of what the true bay needs: with the readings asked for, with every run and diagonal once and twice, with one " +
		"bevel reading a corner, and by the rule of the right angle. Without a JOB over random bays of three to five walls; with one over " +
		"its bays as they are settled now.",
	options: [
		["--count N", "bays measured; 10000 when left out"],
		["--seed N", "the same seed gives the same errors; 1 when left out"],
		["--json", "as data: one line for each job"],
	],
	example: "simulate --count 1000",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, OPTIONS);
	if (!options.ok) return complain(world, `simulate: ${options.message}`);
	const order = readOrder(options);
	if (typeof order === "string") return complain(world, `simulate: ${order}`);
	const write = (bays: readonly SimulatedBay[], name: string | null) => {
		const { count, seed } = order;
		const json = { count, seed, errors: USUAL_ERRORS, within: FITS_WITHIN, bays: bays.map(bayJson) };
		if (options.has("json")) world.out(`${JSON.stringify(name === null ? json : { job: name, ...json })}\n`);
		else world.out(simulationText(order, bays, name));
	};
	if (options.operands.length === 0) {
		const simulation = await watched(simulateRandomBays(order), world);
		if (simulation === null) return FAILED;
		write([{ id: null, simulation }], null);
		return PLANNED;
	}
	const several = severalJobs(options.operands, world);
	let brokenOff = false;
	return eachJob(options.operands, world, {
		planned: async (job, name) => {
			const bays: SimulatedBay[] = [];
			for (const bay of brokenOff ? [] : job.bays) {
				const began = simulateBay(bay, systemOf(job, bay.track.system), order);
				const simulation = began && (await watched(began, world));
				brokenOff = began !== null && simulation === null;
				if (brokenOff) break;
				bays.push({ id: bay.id, simulation });
			}
			if (brokenOff) return FAILED;
			write(bays, several ? name : null);
			return bays.some(({ simulation }) => simulation === null) ? REFUSED : PLANNED;
		},
	});
}

const bayJson = ({ id, simulation }: SimulatedBay) => ({ id, strategies: simulation?.strategies ?? null });

/** Between two looks at whether the user has broken off, and between two lines of progress, ms. */
const LOOK_UP = 100;

/** Runs to the end; null where the user broke off. */
async function watched(work: SimulationRun, world: World): Promise<Simulation | null> {
	let stopped = false;
	const unwatch = world.onBreak?.(() => {
		stopped = true;
	});
	try {
		let next = performance.now() + LOOK_UP;
		for (let step = work.next(); ; step = work.next()) {
			if (step.done) return step.value;
			if (performance.now() < next) continue;
			const { done, count } = step.value;
			world.progress?.(`simulate: ${done} of ${count} bays`);
			await setImmediate();
			next = performance.now() + LOOK_UP;
			if (!stopped) continue;
			world.progress?.("");
			complain(world, `simulate: broken off after ${done} of ${count} bays; nothing was written`);
			return null;
		}
	} finally {
		world.progress?.("");
		unwatch?.();
	}
}

function readOrder(options: Extract<Options<keyof typeof OPTIONS>, { readonly ok: true }>): SimulationOrder | string {
	const count = wholeNumber(options.value("count") ?? "10000", 1, MOST_BAYS);
	if (typeof count === "string") return `option --count: ${count}`;
	const seed = wholeNumber(options.value("seed") ?? "1", 0, GREATEST_SEED);
	return typeof seed === "string" ? `option --seed: ${seed}` : { count, seed };
}

function wholeNumber(text: string, least: number, most: number): number | string {
	const number = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
	return number >= least && number <= most
		? number
		: `found ${quoted(text)}, allowed a whole number from ${least} to ${most}`;
}
