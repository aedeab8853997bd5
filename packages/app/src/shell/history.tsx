import { useEffect } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";

/** Back and forward through everything done to the job, by button and by key. */
export function History() {
	const back = useDesk((state) => state.past.at(-1)?.label);
	const forward = useDesk((state) => state.future.at(-1)?.label);
	useEffect(() => {
		document.addEventListener("keydown", onKey);
		return () => document.removeEventListener("keydown", onKey);
	}, []);
	return (
		<div className="pair">
			<Button
				className="button"
				isDisabled={back === undefined}
				aria-label={back === undefined ? "Undo" : `Undo: ${back}`}
				onPress={goBack}
			>
				Undo
			</Button>
			<Button
				className="button"
				isDisabled={forward === undefined}
				aria-label={forward === undefined ? "Redo" : `Redo: ${forward}`}
				onPress={goForward}
			>
				Redo
			</Button>
		</div>
	);
}

function goBack(): void {
	const step = desk.getState().past.at(-1);
	if (!step) return;
	desk.getState().undo();
	screen.getState().say(`Undone: ${step.label}`);
}

function goForward(): void {
	const step = desk.getState().future.at(-1);
	if (!step) return;
	desk.getState().redo();
	screen.getState().say(`Redone: ${step.label}`);
}

function onKey(event: KeyboardEvent): void {
	if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target) || screen.getState().sheet !== null)
		return;
	const key = event.key.toLowerCase();
	if (key === "z" && !event.shiftKey) goBack();
	else if (key === "y" || (key === "z" && event.shiftKey)) goForward();
	else return;
	event.preventDefault();
}

/** In a field with something typed the browser's own undo is the one meant. */
function isTyping(target: EventTarget | null): boolean {
	return target instanceof HTMLInputElement && target.dataset.draft !== undefined;
}
