import { gzipSync } from "node:zlib";
import { expect, test } from "@playwright/test";

/** What the page asks for before it can start, zipped: a phone on a building site has it in a few seconds. */
const MOST_KB = 300;

test("the script of the first load stays small", async ({ request }) => {
	const page = await (await request.get("./")).text();
	const entries = [...page.matchAll(/(?:src|href)="([^"]+\.js)"/g)].map(([, path]) => path as string);
	expect(entries.length).toBeGreaterThan(1);
	const sizes = await Promise.all(
		entries.map(async (path) => ({ path, kb: gzipSync(await (await request.get(path)).body()).length / 1000 })),
	);
	const total = sizes.reduce((sum, { kb }) => sum + kb, 0);
	const largest = sizes
		.sort((a, b) => b.kb - a.kb)
		.slice(0, 4)
		.map(({ path, kb }) => `${path} ${kb.toFixed(1)}`);
	expect(
		total,
		`The first load of script is ${total.toFixed(1)} kB zipped, at most ${MOST_KB} kB is allowed; the largest: ${largest.join(", ")}`,
	).toBeLessThanOrEqual(MOST_KB);
});
