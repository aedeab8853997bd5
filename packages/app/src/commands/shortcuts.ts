import { desk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";
import { openJobFile, saveJobFile } from "../storage/job-file.ts";
import { copyInto, pasteText, removeChosenThing } from "./clipboard.ts";

/** Listens to the keys that hold everywhere, and to the clipboard. Gives back how to stop. */
export function listen(): () => void {
	const onCopy = (event: ClipboardEvent) => copyOrCut(event, false);
	const onCut = (event: ClipboardEvent) => copyOrCut(event, true);
	document.addEventListener("keydown", onKey);
	document.addEventListener("copy", onCopy);
	document.addEventListener("cut", onCut);
	document.addEventListener("paste", onPaste);
	return () => {
		document.removeEventListener("keydown", onKey);
		document.removeEventListener("copy", onCopy);
		document.removeEventListener("cut", onCut);
		document.removeEventListener("paste", onPaste);
	};
}

function onKey(event: KeyboardEvent): void {
	if (event.defaultPrevented || event.altKey) return;
	const command = event.ctrlKey || event.metaKey;
	const key = event.key.toLowerCase();
	if (command && key === "k") toggleCommands();
	else if (screen.getState().sheet !== null) return;
	else if (command && key === "s" && screen.getState().started) saveWithTyped();
	else if (command && key === "o") void openJobFile();
	else if (!command && key === "?" && !isTyping(event.target)) screen.getState().show({ kind: "keys" });
	else if (!command && (key === "delete" || key === "backspace") && isOnRow(event.target))
		removeChosenThing(desk.getState());
	else return;
	event.preventDefault();
}

/** What is typed and not yet settled is settled first, as when its field is left. */
function saveWithTyped(): void {
	if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
	void saveJobFile();
}

function toggleCommands(): void {
	const { sheet, show, close } = screen.getState();
	if (sheet?.kind === "commands") close();
	else show({ kind: "commands" });
}

function copyOrCut(event: ClipboardEvent, cut: boolean): void {
	if (!isOnThings(event.target) || event.clipboardData === null || hasMarkedText()) return;
	if (copyInto(event.clipboardData, cut)) event.preventDefault();
}

function onPaste(event: ClipboardEvent): void {
	if (!isOnThings(event.target) || event.clipboardData === null) return;
	event.preventDefault();
	pasteText(event.clipboardData.getData("text/plain"));
}

/** Text marked on the page is what is meant to be copied. */
const hasMarkedText = (): boolean => (getSelection()?.toString() ?? "") !== "";

/** The plan, or the row of one of its things; a field keeps its own clipboard. */
const isOnThings = (target: EventTarget | null): boolean =>
	!isTyping(target) && screen.getState().sheet === null && closest(target, "[data-plan], [data-row]") !== null;

const isOnRow = (target: EventTarget | null): boolean => !isTyping(target) && closest(target, "[data-row]") !== null;

const isTyping = (target: EventTarget | null): boolean => closest(target, "input, textarea, select, pre") !== null;

/** A browser gives the clipboard's events to the page where nothing that takes text has the focus. */
function closest(target: EventTarget | null, selector: string): Element | null {
	const focus = target instanceof Element && target !== document.body ? target : document.activeElement;
	return focus?.closest(selector) ?? null;
}
