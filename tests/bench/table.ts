/** Median microseconds of one call, over enough calls to fill `budget` milliseconds after a warm-up of the same length. */
export function median(run: () => unknown, budget = 300): number {
	repeat(run, budget);
	return repeat(run, budget);
}

/** Keeps the measured work from being optimised away. */
let sink: unknown;

function repeat(run: () => unknown, budget: number): number {
	const until = performance.now() + budget;
	const once = timed(run, 1);
	const batch = Math.max(1, Math.round(0.2 / Math.max(once, 1e-4)));
	const samples = [once];
	do samples.push(timed(run, batch));
	while (performance.now() < until);
	return (samples.sort((a, b) => a - b)[samples.length >> 1] as number) * 1000;
}

/** Milliseconds a call. */
function timed(run: () => unknown, batch: number): number {
	const from = performance.now();
	for (let i = 0; i < batch; i++) sink = run();
	if (sink === undefined) throw new Error("Broken invariant: the measured work came to nothing.");
	return (performance.now() - from) / batch;
}

/** Exponent of growth: slope of log time over log size, least squares. */
export function growth(sizes: readonly number[], times: readonly number[]): number {
	const xs = sizes.map(Math.log);
	const ys = times.map(Math.log);
	const mx = xs.reduce((a, b) => a + b) / xs.length;
	const my = ys.reduce((a, b) => a + b) / ys.length;
	const top = xs.reduce((sum, x, i) => sum + (x - mx) * ((ys[i] as number) - my), 0);
	return top / xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
}

/** Prints a table with aligned columns, the first to the left. */
export function printTable(title: string, head: readonly string[], rows: readonly (readonly string[])[]): void {
	const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => (row[column] ?? "").length)));
	const line = (row: readonly string[]) =>
		row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] as number) : cell.padStart(widths[i] as number))).join("  ");
	console.log(`\n${title}\n${line(head)}\n${"-".repeat(widths.reduce((a, b) => a + b + 2, -2))}`);
	for (const row of rows) console.log(line(row));
}
