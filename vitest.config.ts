import { defineConfig } from "vitest/config";

export default defineConfig({
	test: {
		include: ["tests/**/*.test.ts"],
		exclude: ["**/node_modules/**", "tests/journeys/**"],
		allowOnly: false,
		// Two at once is what the smallest machine in use has; more only make each other slow.
		maxWorkers: 2,
		// Most of the time would go into loading the same packages anew for every file. So what a test changes beyond its
		// own objects it changes back.
		isolate: false,
		// Some properties are tried on thousands of bays.
		testTimeout: 60_000,
	},
});
