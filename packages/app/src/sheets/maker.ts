import type { Desk } from "@baywright/editor";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { desk } from "../desk/desk.ts";
import type { Answer, Asked, Far, Made, MadeSheet, Order } from "./making.ts";
import { startWorker } from "./start-worker.ts";
import { type Wishes, wishes } from "./wishes.ts";

/** The sheets as they are shown: made anew behind the job, off the page's own thread. */
interface Making {
	/** Null until they were made for the first time. */
	readonly made: Made | null;
	/** Counts how often they were made: what was drawn before is of another making. */
	readonly making: number;
	/** How far making them has come; null while they stand. */
	readonly far: Far | null;
	readonly trouble: string;
	/** Pages as they were last drawn, by `pageKey`. */
	readonly drawn: Readonly<Record<string, DrawnPage>>;
}

interface DrawnPage {
	readonly url: string;
	readonly making: number;
}

const NONE: Making = { made: null, making: 0, far: null, trouble: "", drawn: {} };

const maker = createStore<Making>()(() => NONE);

export const useMaker = <Part>(select: (making: Making) => Part): Part => useStore(maker, select);

export const pageKey = ({ bay, name }: MadeSheet, page: number): string => `${bay} ${name} ${page}`;

/** ms that the job must rest before its sheets are made anew. */
const REST = 400;

let worker: Worker | null = null;
let watchers = 0;
let stop: (() => void) | null = null;
let due: ReturnType<typeof setTimeout> | null = null;

/** Keeps the sheets made for as long as someone looks at them. */
export function watchSheets(): () => void {
	watchers++;
	stop ??= begin();
	return () => {
		watchers--;
		// Whoever looks next may only be changing places.
		setTimeout(() => {
			if (watchers > 0) return;
			stop?.();
			stop = null;
		});
	};
}

function begin(): () => void {
	make();
	const stops = [
		desk.subscribe((now, before) => {
			const turned = now.bay !== before.bay && wishes.getState().of === "bay";
			if (now.job !== before.job || turned) makeSoon();
		}),
		wishes.subscribe((now, before) => {
			if (SHAPES.some((key) => now[key] !== before[key])) makeSoon();
		}),
	];
	return () => {
		for (const each of stops) each();
		dropWorker();
		if (due !== null) clearTimeout(due);
		due = null;
		for (const { url } of Object.values(maker.getState().drawn)) URL.revokeObjectURL(url);
		maker.setState(NONE);
	};
}

/** Wishes that the sheets themselves are made by; the others only choose among them. */
const SHAPES = ["of", "paper", "strips", "measured"] as const satisfies readonly (keyof Wishes)[];

function makeSoon(): void {
	if (due !== null) clearTimeout(due);
	due = setTimeout(make, REST);
}

export function make(): void {
	due = null;
	// What is still being made is of an older job.
	if (maker.getState().far !== null) dropWorker();
	maker.setState({ far: { done: 0, of: 1, doing: "the plan" }, trouble: "" });
	ask({ kind: "compose", order: orderOf(desk.getState(), wishes.getState()) });
}

/** Has a page drawn; `drawn` has it as soon as it is. */
export function drawPage(sheet: number, page: number): void {
	if (maker.getState().far === null) ask({ kind: "draw", sheet, page });
}

function ask(asked: Asked): void {
	worker ??= startWorker(receive, () => fail("the program that draws them could not be fetched. Reload the page."));
	worker.postMessage(asked);
}

function dropWorker(): void {
	worker?.terminate();
	worker = null;
}

function fail(why: string): void {
	dropWorker();
	maker.setState({ far: null, trouble: `The sheets could not be made: ${why}` });
}

function receive(answer: Answer): void {
	const { made, making, drawn } = maker.getState();
	if (answer.kind === "far") maker.setState({ far: answer.far });
	else if (answer.kind === "failed") fail(answer.why);
	else if (answer.kind === "composed") maker.setState({ made: answer.made, making: making + 1, far: null });
	else if (answer.kind === "drawn") {
		const sheet = made?.sheets[answer.sheet];
		if (sheet === undefined) return;
		const key = pageKey(sheet, answer.page);
		const before = drawn[key];
		maker.setState({ drawn: { ...drawn, [key]: { url: URL.createObjectURL(answer.svg), making } } });
		if (before !== undefined) URL.revokeObjectURL(before.url);
	}
}

/** What is asked for by the job as committed and the wishes. */
export function orderOf({ job, bay }: Desk, { of, paper, strips, measured }: Wishes): Order {
	const bays = job.bays.flatMap(({ id }, i) => (of === "job" || i === bay ? [id] : []));
	return { job, bays, options: { paper, strips, measured, date: today() } };
}

/** Where the user is. */
function today(): string {
	const now = new Date();
	const two = (number: number) => String(number).padStart(2, "0");
	return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
