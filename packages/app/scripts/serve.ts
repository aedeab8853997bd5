import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { build, preview } from "vite";

const appFolder = fileURLToPath(new URL("..", import.meta.url));

/**
 * The app's own port. It stays the same from day to day where it can, because a browser keeps saved work by address:
 * on another port the open job would seem lost.
 */
export const homePort = 4720;

export interface Served {
	/** As a person would type it: `http://localhost:4720/`. */
	readonly address: string;
	readonly close: () => Promise<void>;
}

/** Builds the app into a folder; throws with the builder's message where that fails. */
export async function buildApp(folder: string): Promise<void> {
	await build({ root: appFolder, logLevel: "warn", build: { outDir: folder, emptyOutDir: true } });
}

/** Serves a built app to this computer only; the port must be free. */
export async function serveApp(folder: string, port: number): Promise<Served> {
	const server = await preview({
		root: appFolder,
		logLevel: "warn",
		build: { outDir: folder },
		preview: { port, strictPort: true, open: false },
	});
	return { address: `http://localhost:${port}/`, close: () => server.close() };
}

/** The first free port from `first` on; undefined where a hundred in a row are taken. */
export async function freePort(first: number = homePort): Promise<number | undefined> {
	for (let port = first; port < Math.min(first + 100, 65_536); port++) {
		if (await isFree(port)) return port;
	}
	return undefined;
}

/** Free on both of the computer's own addresses: `localhost` may mean either. */
export async function isFree(port: number): Promise<boolean> {
	return (await canListen(port, "127.0.0.1")) && (await canListen(port, "::1"));
}

function canListen(port: number, host: string): Promise<boolean> {
	return new Promise((resolve) => {
		const probe = createServer();
		// A computer without the newer kind of address is not a port that is taken.
		probe.once("error", (error: NodeJS.ErrnoException) =>
			resolve(error.code === "EADDRNOTAVAIL" || error.code === "EAFNOSUPPORT"),
		);
		probe.listen({ port, host, exclusive: true }, () => probe.close(() => resolve(true)));
	});
}
