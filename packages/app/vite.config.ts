import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
	root: fileURLToPath(new URL(".", import.meta.url)),
	// Addresses inside the built app are relative, so that it works from any folder of any server.
	base: "./",
	plugins: [react()],
	// Only this computer can reach either server.
	server: { host: "127.0.0.1" },
	preview: { host: "127.0.0.1" },
	// So that a worker, too, loads a writer only when one is asked for.
	worker: { format: "es" },
	build: {
		target: "es2022",
		// The drawing library and the controls are needed at once: one download, 300 kB zipped at most (the size journey).
		chunkSizeWarningLimit: 1200,
		rolldownOptions: {
			// Modules of the project do nothing but export: one that only a sheet uses comes with that sheet.
			treeshake: { moduleSideEffects: [{ test: /packages\/(geometry|setout)\/src\//, sideEffects: false }] },
			// Zipped as one, the first load is 7 kB smaller than in its twenty pieces.
			output: { codeSplitting: { groups: [{ name: "start", tags: ["$initial"] }] } },
		},
	},
});
