import type { EntryField } from "@baywright/editor";
import { type KeyboardEvent, useId } from "react";
import { useDesk } from "../desk/desk.ts";
import { toolbox, useToolbox } from "../desk/toolbox.ts";

/** What is typed while walls are drawn: the run and the angle of the wall to come. Typing on the plan writes here too. */
export function WallEntry() {
	const entry = useToolbox((state) => state.entry);
	const said = useToolbox((state) => state.said);
	const walls = useDesk(({ shown, bay }) => shown.bays[bay]?.walls.length ?? 0);
	const unit = useDesk(({ shown }) => shown.display.length);
	if (entry === null) return null;
	const { send } = toolbox.getState();
	/** What stands typed is a wall too; where it is none, its trouble is told and drawing goes on. */
	function done(): void {
		if (entry?.run !== "" || entry.angle !== "") send({ type: "enter" });
		if (toolbox.getState().entry?.run === "") toolbox.getState().take("select");
	}
	return (
		<section className="wall-entry" data-own="" aria-label="The next wall">
			<div className="wall-entry-fields">
				<EntryInput field="run" label="Run" value={entry.run} unit={unit} active={entry.field === "run"} />
				{entry.hasAngle ? (
					<EntryInput field="angle" label="Angle" value={entry.angle} unit="°" active={entry.field === "angle"} />
				) : null}
				<button type="button" className="plan-button" onClick={() => send({ type: "enter" })}>
					Place
				</button>
				{walls > 0 ? (
					<button type="button" className="plan-button" onClick={done}>
						Done
					</button>
				) : null}
			</div>
			<p className={entry.trouble === "" ? "quiet" : "field-error"}>
				{entry.trouble || said || hintFor(walls, entry.hasAngle)}
			</p>
		</section>
	);
}

function hintFor(walls: number, hasAngle: boolean): string {
	if (walls === 0) return "Tape the left wall first: type its run and press Enter, or tap from corner to corner.";
	return hasAngle
		? "Tap where it ends, or type run and angle, Tab between them; Enter or Place puts it there."
		: "Tap where it ends, or type its run.";
}

interface InputProps {
	readonly field: EntryField;
	readonly label: string;
	readonly value: string;
	readonly unit: string;
	readonly active: boolean;
}

function EntryInput({ field, label, value, unit, active }: InputProps) {
	const id = useId();
	const { send } = toolbox.getState();
	function onKeyDown(event: KeyboardEvent): void {
		if (event.key === "Enter") send({ type: "enter" });
		else if (event.key === "Escape") send({ type: "cancel" });
		else return;
		event.preventDefault();
		event.stopPropagation();
	}
	return (
		<span className="wall-entry-field" data-active={active || undefined}>
			<label htmlFor={id}>{label}</label>
			<input
				id={id}
				type="text"
				inputMode={field === "angle" ? "decimal" : "text"}
				autoComplete="off"
				spellCheck={false}
				enterKeyHint="next"
				placeholder={unit}
				value={value}
				onChange={(event) => send({ type: "entry", field, text: event.currentTarget.value })}
				onFocus={() => send({ type: "entry", field, text: value })}
				onKeyDown={onKeyDown}
			/>
			<span aria-hidden="true">{unit}</span>
		</span>
	);
}
