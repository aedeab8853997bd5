import { defineConfig } from "vite";

/** Bundles the bench as the app and the command are bundled, so that it measures what people run. */
export default defineConfig({
	root: import.meta.dirname,
	logLevel: "error",
	build: { ssr: "run.ts", outDir: "../node_modules/.cache/bench", emptyOutDir: true, minify: false, target: "node20" },
	ssr: { noExternal: true },
});
