// `npm test`: every check of the project, one after another, up to the first that fails. Names of steps may follow, as
// in `npm test -- lint units`.

import { spawn } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

interface Tally {
	readonly passed: number;
	readonly failed: number;
}

interface Step {
	readonly name: string;
	/** What it looks at, for a person who reads that it failed. */
	readonly looksAt: string;
	/** What follows `npm run`. */
	readonly run: readonly string[];
	/** Where the step counts tests: reads its report. */
	readonly count?: (report: string) => Tally;
}

const root = fileURLToPath(new URL("..", import.meta.url));
const reports = join(root, "tests/node_modules/.cache/reports");

const steps: readonly Step[] = [
	{ name: "lint", looksAt: "style and likely mistakes", run: ["lint"] },
	{ name: "types", looksAt: "types", run: ["types"] },
	{ name: "layers", looksAt: "which package imports which", run: ["layers"] },
	{ name: "unused", looksAt: "code and packages that nothing uses", run: ["unused"] },
	{
		name: "units",
		looksAt: "tests of single parts",
		run: ["units", "--", "--reporter=dot", "--reporter=json", `--outputFile.json=${reportOf("units")}`],
		count: countUnits,
	},
	{
		name: "journeys",
		looksAt: "the built app in a browser",
		run: ["journeys", "--", "--reporter=line,json"],
		count: countJourneys,
	},
];

process.exitCode = await main(process.argv.slice(2));

async function main(names: readonly string[]): Promise<number> {
	const unknown = names.find((name) => !steps.some((step) => step.name === name));
	if (unknown !== undefined) {
		console.error(`There is no step ${unknown}; the steps are ${steps.map((step) => step.name).join(", ")}.`);
		return 1;
	}
	rmSync(reports, { recursive: true, force: true });
	mkdirSync(reports, { recursive: true });
	const began = performance.now();
	let passed = 0;
	let failed = 0;
	for (const step of steps.filter(({ name }) => names.length === 0 || names.includes(name))) {
		const outcome = await runStep(step);
		passed += outcome.passed;
		failed += outcome.failed;
		if (failed > 0) {
			console.log(`\nStopped at ${step.name} (${step.looksAt}); \`npm run ${step.name}\` runs it alone.`);
			break;
		}
	}
	console.log(`\nall together  ${seconds(performance.now() - began)}`);
	console.log(`${passed} passed, ${failed} failed`);
	return failed > 0 ? 1 : 0;
}

/** Runs one step; what it prints is shown only if it fails. A step that fails without a failed test counts as one. */
async function runStep(step: Step): Promise<Tally> {
	const began = performance.now();
	if (process.stdout.isTTY) process.stdout.write(`${step.name} …\r`);
	const { status, output } = await npmRun(step);
	const counted = step.count?.(step.name) ?? { passed: 0, failed: 0 };
	const failed = status === 0 ? counted.failed : Math.max(counted.failed, 1);
	if (failed > 0) console.log(output.trimEnd());
	const count = counted.passed + counted.failed === 0 ? "" : `  ${counted.passed} passed, ${counted.failed} failed`;
	const line = [step.name.padEnd(12), failed > 0 ? "FAILED" : "passed", seconds(performance.now() - began)].join("  ");
	console.log(line + count);
	return { passed: counted.passed, failed };
}

function npmRun(step: Step): Promise<{ status: number; output: string }> {
	const child = spawn("npm", ["run", "--silent", ...step.run], {
		cwd: root,
		// Colours for a person at a terminal, none for a log, whatever the tools would choose through a pipe.
		env: {
			...process.env,
			...(process.stdout.isTTY ? { FORCE_COLOR: "1" } : { NO_COLOR: "1" }),
			PLAYWRIGHT_JSON_OUTPUT_FILE: reportOf("journeys"),
		},
		stdio: ["ignore", "pipe", "pipe"],
		shell: process.platform === "win32",
	});
	const chunks: Buffer[] = [];
	child.stdout.on("data", (chunk: Buffer) => chunks.push(chunk));
	child.stderr.on("data", (chunk: Buffer) => chunks.push(chunk));
	return new Promise((resolve) => {
		child.once("close", (status) => resolve({ status: status ?? 1, output: Buffer.concat(chunks).toString("utf8") }));
	});
}

function countUnits(name: string): Tally {
	const { numPassedTests = 0, numFailedTests = 0 } = readReport(name);
	return { passed: numPassedTests, failed: numFailedTests };
}

/** A journey that passes only at a second try has failed. */
function countJourneys(name: string): Tally {
	const { expected = 0, unexpected = 0, flaky = 0 } = readReport(name).stats ?? {};
	return { passed: expected, failed: unexpected + flaky };
}

function readReport(name: string) {
	try {
		return JSON.parse(readFileSync(reportOf(name), "utf8"));
	} catch {
		return {};
	}
}

function reportOf(name: string): string {
	return join(reports, `${name}.json`);
}

function seconds(milliseconds: number): string {
	return `${(milliseconds / 1000).toFixed(1).padStart(6)} s`;
}
