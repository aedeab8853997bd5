import { defineConfig } from "@playwright/test";

// Both are set by journeys/run.ts, which finds the browser and serves the built app: `npm run journeys`.
const browser = JSON.parse(process.env.JOURNEY_BROWSER ?? "{}");
const address = process.env.JOURNEY_ADDRESS ?? "http://localhost:4820/";

export default defineConfig({
	testDir: "journeys",
	testMatch: "*.journey.ts",
	outputDir: "node_modules/.cache/journeys",
	forbidOnly: true,
	fullyParallel: true,
	workers: 2,
	timeout: 60_000,
	expect: { timeout: 10_000 },
	use: {
		baseURL: address,
		viewport: { width: 1280, height: 800 },
		locale: "en-GB",
		timezoneId: "Europe/London",
		screenshot: "only-on-failure",
		// A trace costs a third of the time: `npm run journeys -- --grep drag --trace on` has one.
		trace: "off",
		launchOptions: {
			executablePath: browser.path,
			env: { ...process.env, ...browser.env },
			// The journeys visit only our own pages, and a browser under root or in a container has no sandbox to use.
			chromiumSandbox: false,
			args: ["--disable-background-networking", ...(browser.args ?? [])],
		},
	},
});
