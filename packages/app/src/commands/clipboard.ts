import { clipOf, clipText, type Desk, onBay, paste, readClip, removeThing, type Selection } from "@baywright/editor";
import { wallName } from "@baywright/setout";
import { desk } from "../desk/desk.ts";
import { bayOnTable, planOnTable } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";

const say = (word: string) => screen.getState().say(word);

/** The text of what is chosen, and what it is called; null where there is nothing to copy. */
function copied({ job, bay, selection }: Desk): { readonly text: string; readonly what: string } | null {
	const clip = clipOf(job, bay, selection);
	return clip === null ? null : { text: clipText(clip), what: clip.kind === "bay" ? "bay" : clip.kind };
}

/** Puts what is chosen into a copy event's own clipboard. False where there is nothing to copy. */
export function copyInto(data: DataTransfer, cut: boolean): boolean {
	const clip = copied(desk.getState());
	if (clip === null) return false;
	if (cut && !isThing(desk.getState().selection)) {
		say("Choose an opening or an obstacle to cut it.");
		return false;
	}
	data.setData("text/plain", clip.text);
	if (cut) removeChosenThing(desk.getState());
	say(`${cut ? "Cut" : "Copied"} the ${clip.what}`);
	return true;
}

export async function copyToClipboard(): Promise<void> {
	const clip = copied(desk.getState());
	if (clip !== null && (await written(clip.text))) say(`Copied the ${clip.what}`);
}

export async function cutToClipboard(): Promise<void> {
	const state = desk.getState();
	const clip = copied(state);
	if (clip === null || !isThing(state.selection) || !(await written(clip.text))) return;
	removeChosenThing(state);
	say(`Cut the ${clip.what}`);
}

export async function pasteFromClipboard(): Promise<void> {
	try {
		pasteText(await navigator.clipboard.readText());
	} catch {
		say("The browser did not allow pasting from here: press Ctrl+V on the plan.");
	}
}

/** Puts copied text into the job, or says why it cannot be. */
export function pasteText(text: string): void {
	const read = readClip(text);
	if (!read.ok) {
		say(read.message);
		return;
	}
	const { job, bay, selection } = desk.getState();
	const pasted = paste(job, bay, read.clip, wallIn(selection));
	if (!pasted.ok) {
		say(pasted.message);
		return;
	}
	desk.getState().commit(pasted.label, pasted.job);
	if (pasted.bay !== bay) desk.getState().showBay(pasted.bay);
	desk.getState().select(pasted.selection);
	const { walls } = bayOnTable(desk.getState());
	const on = read.clip.kind === "bay" ? "" : placeOf(pasted.selection, walls.length);
	say(`Pasted the ${read.clip.kind}${on}`);
}

/** Takes away what is chosen, or says why it cannot go. */
export function removeChosenThing(state: Desk): boolean {
	const { selection, job, bay } = state;
	if (selection === null) return false;
	const removal = removeThing(bayOnTable(state), planOnTable(state), selection);
	if (!removal.ok) {
		say(removal.why);
		return false;
	}
	desk.getState().select(null);
	desk.getState().commit(
		removal.label,
		onBay(job, bay, () => removal.bay),
	);
	return true;
}

const isThing = (selection: Selection | null): boolean =>
	selection?.kind === "opening" || selection?.kind === "obstacle";

const wallIn = (selection: Selection | null): number | null =>
	selection?.kind === "wall" || selection?.kind === "bow" ? selection.index : null;

function placeOf(selection: Selection | null, walls: number): string {
	const { openings, obstacles } = bayOnTable(desk.getState());
	const list = selection?.kind === "opening" ? openings : obstacles;
	const wall = selection === null ? undefined : list[selection.index]?.wall;
	return wall === undefined ? "" : ` on the ${wallName(wall, walls)}`;
}

async function written(text: string): Promise<boolean> {
	try {
		await navigator.clipboard.writeText(text);
		return true;
	} catch {
		say("The browser did not allow copying from here: press Ctrl+C on the plan.");
		return false;
	}
}
