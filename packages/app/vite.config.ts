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
	build: {
		target: "es2022",
		// The drawing library and the controls are needed at once: one download, about 300 kB zipped at most.
		chunkSizeWarningLimit: 1200,
	},
});
