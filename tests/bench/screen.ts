// `npm run bench:screen`: what a frame of a drag costs in the browser (plan, update, draw), beside a plain canvas in one run: one
// canvas on an empty page that plans the same bay and draws the very same strokes, and does nothing else.

import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildApp, freePort, serveApp } from "@baywright/app/serve";
import { chromium, type Page } from "@playwright/test";
import { build } from "vite";
import { findBrowser, noBrowser } from "../journeys/browser.ts";
import { printTable } from "./table.ts";

const FRAMES = 240;

await main();

/** A bay of `walls` walls round half a circle, with a window in each and the corners to drag. */
function bayOf(walls: number) {
	const wide = walls <= 5 ? 900 : 420;
	const turn = Math.PI / walls;
	const corners: [number, number][] = [[0, 0]];
	for (let i = 0; i < walls; i++) {
		const heading = Math.PI / 2 - turn * (i + 0.5);
		const [x, y] = corners.at(-1) as [number, number];
		corners.push([Math.round(x + wide * Math.cos(heading)), Math.round(y + wide * Math.sin(heading))]);
	}
	return {
		format: "baywright-job",
		version: 1,
		title: `Drag ${walls}`,
		bays: [
			{
				id: "b1",
				corners: corners as readonly [number, number][],
				openings: corners.slice(1).map((_, wall) => ({ wall, from: 60, to: wide - 60, sill: 600, head: 2000 })),
				track: { system: "light-corded" },
			},
		] as const,
	};
}

/** What the page needs for the plain canvas, bundled. */
async function plainFrame(): Promise<string> {
	const entry = join(dirname(fileURLToPath(import.meta.url)), "plain-frame.ts");
	const built = await build({
		configFile: false,
		logLevel: "error",
		build: { write: false, lib: { entry, formats: ["iife"], name: "plainFrame" } },
	});
	const [first] = Array.isArray(built) ? built : [built];
	if (first === undefined || !("output" in first)) throw new Error("Broken invariant: the bundle came to nothing.");
	return first.output[0].code;
}

interface Costs {
	readonly frame: readonly number[];
	readonly plain: readonly number[];
}

async function main(): Promise<void> {
	const found = findBrowser();
	const port = await freePort(4860);
	if (found === undefined || port === undefined) throw new Error(noBrowser);
	const folder = join(dirname(fileURLToPath(import.meta.url)), `../node_modules/.cache/app-${port}`);
	await buildApp(folder);
	const { address, close } = await serveApp(folder, port);
	const browser = await chromium.launch({
		executablePath: found.path,
		env: { ...process.env, ...found.env } as Record<string, string>,
		args: ["--no-sandbox", "--disable-background-networking"],
	});
	const rows: string[][] = [];
	for (const [walls, slower] of [
		[5, 1],
		[5, 4],
		[30, 1],
	] as const) {
		const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
		const { frame, plain } = await costs(page, address, walls, slower);
		await page.close();
		rows.push([
			`${walls} walls${slower === 1 ? "" : `, processor ${slower} × slower`}`,
			...[0.5, 0.95].map((share) => at(frame, share).toFixed(2)),
			...[0.5, 0.95].map((share) => at(plain, share).toFixed(2)),
			...[0.5, 0.95].map((share) => (at(frame, share) / at(plain, share)).toFixed(2)),
		]);
	}
	printTable(
		`A frame of a drag, ${FRAMES} frames (ms)`,
		["bay", "median", "p95", "plain canvas median", "p95", "× median", "× p95"],
		rows,
	);
	await browser.close();
	await close();
}

/** The value that so large a share of the others do not pass. */
function at(values: readonly number[], share: number): number {
	return [...values].sort((a, b) => a - b)[Math.floor(values.length * share)] as number;
}

/** Drags a corner round in small circles and takes the time of every frame; then replays the strokes of the last one on a plain canvas. */
async function costs(page: Page, address: string, walls: number, slower: number): Promise<Costs> {
	await page.addInitScript(() => {
		Reflect.deleteProperty(window, "showSaveFilePicker");
		Reflect.deleteProperty(window, "showOpenFilePicker");
	});
	// The transpiler names inner functions by a helper that the page has not.
	await page.addInitScript("globalThis.__name = (it) => it");
	await page.goto(address);
	await page.addScriptTag({ content: await plainFrame() });
	const chooser = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: "Open a job file" }).click();
	await (await chooser).setFiles({
		name: "drag.baywright.json",
		mimeType: "application/json",
		buffer: Buffer.from(JSON.stringify(bayOf(walls))),
	});
	await page.locator("[data-plan]").waitFor();
	await page.evaluate(() => document.fonts.ready);
	await page.waitForTimeout(600);
	const corner = Math.floor(walls / 2);
	const file = bayOf(walls);
	const [x, y] = file.bays[0].corners[corner] as [number, number];
	const place = await page.locator("[data-plan]").evaluate(
		(plan: HTMLElement, [x, y]) => {
			const { left, top } = plan.getBoundingClientRect();
			const scale = Number(plan.dataset.scale);
			return {
				left: left + Number(plan.dataset.x) + (x as number) * scale,
				top: top + Number(plan.dataset.y) - (y as number) * scale,
			};
		},
		[x, y],
	);
	await page.mouse.move(place.left, place.top);
	await page.mouse.down();
	await page.mouse.move(place.left + 6, place.top + 6, { steps: 3 });
	const session = await page.context().newCDPSession(page);
	if (slower !== 1) await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
	return page.evaluate(drag, { place, frames: FRAMES, file, corner, at: [x, y] as const });
}

/** Runs in the page. */
async function drag({
	place,
	frames,
	file,
	corner,
	at,
}: {
	place: { left: number; top: number };
	frames: number;
	file: unknown;
	corner: number;
	at: readonly [number, number];
}): Promise<{ frame: number[]; plain: number[] }> {
	const plan = document.querySelector("[data-plan]") as HTMLElement;
	const canvases = [...plan.querySelectorAll("canvas")];
	const nextFrame = () => new Promise<number>((go) => requestAnimationFrame(() => go(performance.now())));
	const frame: number[] = [];
	type Stroke = { readonly name: string; readonly set: boolean; readonly given: readonly unknown[] };
	let strokes: Stroke[] | null = null;
	const proto = CanvasRenderingContext2D.prototype;
	const before = Object.getOwnPropertyDescriptors(proto);

	for (let i = 0; i < frames; i++) {
		await nextFrame();
		if (i === frames - 1) strokes = record();
		const angle = (i / 24) * 2 * Math.PI;
		const event = new PointerEvent("pointermove", {
			pointerId: 1,
			pointerType: "mouse",
			bubbles: true,
			buttons: 1,
			clientX: place.left + 26 * Math.cos(angle),
			clientY: place.top + 26 * Math.sin(angle),
		});
		// Whatever the move asks to be drawn with the next frame comes between these two.
		let started = 0;
		requestAnimationFrame(() => {
			started = performance.now();
		});
		const from = performance.now();
		plan.dispatchEvent(event);
		await Promise.resolve();
		const updated = performance.now() - from;
		await nextFrame();
		const drawn = performance.now() - started;
		if (i > 20 && i < frames - 1) frame.push(updated + drawn);
	}
	Object.defineProperties(proto, before);

	const plain: number[] = [];
	const sheet = document.createElement("canvas");
	const like = canvases[0] as HTMLCanvasElement;
	sheet.width = like.width;
	sheet.height = like.height;
	const pen = sheet.getContext("2d") as unknown as Record<string, unknown> & CanvasRenderingContext2D;
	const planWith = (
		globalThis as unknown as { planWith: (file: unknown, corner: number) => (x: number, y: number) => number }
	).planWith;
	const replan = planWith(file, corner);
	for (let i = 0; i < frames; i++) {
		await nextFrame();
		const angle = (i / 24) * 2 * Math.PI;
		const from = performance.now();
		replan(at[0] + Math.round(90 * Math.cos(angle)), at[1] + Math.round(90 * Math.sin(angle)));
		pen.reset();
		for (const { name, set, given } of strokes ?? []) {
			if (set) pen[name] = given[0];
			else (pen[name] as (...given: readonly unknown[]) => unknown)(...given);
		}
		if (i > 20) plain.push(performance.now() - from);
	}
	return { frame, plain };

	function record(): Stroke[] {
		const list: Stroke[] = [];
		for (const [name, property] of Object.entries(before)) {
			if (typeof property.value === "function" && name !== "constructor" && name !== "getImageData") {
				const real = property.value as (...given: unknown[]) => unknown;
				Object.defineProperty(proto, name, {
					...property,
					value(this: CanvasRenderingContext2D, ...given: unknown[]) {
						if (canvases.includes(this.canvas)) list.push({ name, set: false, given });
						return real.apply(this, given);
					},
				});
			} else if (property.set !== undefined) {
				const { set } = property;
				Object.defineProperty(proto, name, {
					...property,
					set(this: CanvasRenderingContext2D, value: unknown) {
						if (canvases.includes(this.canvas)) list.push({ name, set: true, given: [value] });
						set.call(this, value);
					},
				});
			}
		}
		return list;
	}
}
