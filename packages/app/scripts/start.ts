// `npm start`: builds the app and serves it to this computer.

import { fileURLToPath } from "node:url";
import { buildApp, freePort, isFree, serveApp } from "./serve.ts";

const folder = fileURLToPath(new URL("../dist", import.meta.url));

try {
	await start();
} catch (error) {
	stop(error instanceof Error ? error.message : String(error));
}

async function start(): Promise<void> {
	const port = await choosePort(process.env.PORT);
	console.log("Building the app");
	await buildApp(folder);
	const { address, close } = await serveApp(folder, port);
	console.log(`Baywright is at ${address} (Ctrl-C stops it)`);
	const leave = (): void => {
		const exit = (): never => process.exit(0);
		close().then(exit, exit);
	};
	process.once("SIGINT", leave);
	process.once("SIGTERM", leave);
}

/** The port that PORT asks for, or one of our own that is free. Looked at before the build, so that nobody waits for a no. */
async function choosePort(wanted: string | undefined): Promise<number> {
	if (wanted === undefined || wanted === "") {
		return (await freePort()) ?? stop("No free port was found; name one, as in PORT=8080 npm start.");
	}
	const port = Number(wanted);
	if (!Number.isInteger(port) || port < 1 || port > 65_535) {
		return stop(`PORT is ${wanted}: a whole number from 1 to 65535 is needed.`);
	}
	if (!(await isFree(port))) return stop(`Port ${port} is taken; leave PORT out and a free one is chosen.`);
	return port;
}

function stop(reason: string): never {
	console.error(reason);
	process.exit(1);
}
