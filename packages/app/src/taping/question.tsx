import type { LengthUnit } from "@baywright/setout";
import { capital } from "@baywright/setout";
import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { isSigned } from "./bounds.ts";
import { HeightSketch } from "./height-sketch.tsx";
import { howTo } from "./how-to-take.ts";
import { Keypad } from "./keypad.tsx";
import type { ToTake } from "./next-to-take.ts";
import { PlanSketch } from "./plan-sketch.tsx";
import { entryText, isAngle, readEntry } from "./say.ts";
import { Standing } from "./standing.tsx";
import { takeAlong } from "./take-along.ts";
import { goOn, leave, take, type } from "./taking.ts";

interface Props {
	readonly item: ToTake;
	readonly list: readonly ToTake[];
	readonly draft: string | null;
	readonly back: (() => void) | null;
}

/** One thing to tape: how, where, and the keys to write it with. */
export function Question({ item, list, draft, back }: Props) {
	const bay = useBay((each) => each);
	const unit = useDesk((state) => state.shown.display.length);
	const height = usePlan((plan) => plan.height);
	const turns = usePlanPart((plan) => plan.chain?.turns ?? []);
	const [refused, setRefused] = useState({ key: "", message: "" });
	const field = useRef<HTMLInputElement>(null);
	const id = useId();
	const { key, name, what, value, state } = item;
	const error = refused.key === key ? refused.message : "";
	const again = what.kind === "reading" && what.again;
	const title = `${capital(name)}${again ? ", once more" : ""}`;
	const angle = isAngle(what);
	const text = draft ?? (value !== null && state === "taken" ? entryText(item, value, unit) : "");
	const stands = what.kind === "height" && value !== null && state !== "taken" ? entryText(item, value, unit) : "";

	useEffect(() => takeAlong(field.current), []);
	// What is asked is answered where one was typing, whichever question comes next.
	useEffect(() => {
		if (field.current !== null && document.activeElement === field.current && key !== "") field.current.select();
	}, [key]);

	const write = (next: string) => {
		setRefused(NOTHING);
		type(next);
	};
	function answer(): void {
		const read = readEntry(item, draft ?? "", bay, unit);
		if (draft === null && state === "taken") goOn(key);
		else if (read.ok) take(item, read.value);
		else {
			setRefused({ key, message: capital(read.message) });
			field.current?.focus({ preventScroll: true });
		}
	}
	function onKeyDown(event: KeyboardEvent): void {
		if (event.key === "Enter") answer();
		else if (event.key === "Escape" && draft !== null) {
			type(null);
			setRefused(NOTHING);
			event.stopPropagation();
		} else return;
		event.preventDefault();
	}

	const label = `${what.kind === "reading" ? "The bay from above" : "The walls from the room"}, with the ${name} marked`;
	const figure = text === "" ? "?" : text;
	return (
		<div className="taking-question">
			<div className="taking-how">
				<h2 id={`${id}-title`}>{title}</h2>
				<p id={`${id}-how`}>{howTo(what, { bay, unit, turns, height })}</p>
				{what.kind === "reading" ? <PlanSketch reading={what.reading} text={figure} label={label} /> : null}
				{what.kind === "height" ? <HeightSketch of={what.of} text={figure} label={label} /> : null}
				<Standing list={list} asked={item} />
			</div>
			<div className="taking-answer">
				<div className="taking-ways">
					<Button className="button" isDisabled={back === null} onPress={() => back?.()}>
						Back
					</Button>
					<div className="taking-field" data-invalid={error === "" ? undefined : true}>
						<input
							ref={field}
							type="text"
							// The keys below stand in for the system's own.
							inputMode="none"
							autoComplete="off"
							spellCheck={false}
							enterKeyHint="done"
							value={text}
							placeholder={stands}
							data-draft={draft === null ? undefined : true}
							aria-labelledby={`${id}-title`}
							aria-describedby={error === "" ? `${id}-how` : `${id}-error`}
							aria-invalid={error === "" ? undefined : true}
							onChange={(event) => write(event.currentTarget.value)}
							onFocus={(event) => event.currentTarget.select()}
							onKeyDown={onKeyDown}
						/>
						<span className="taking-unit" aria-hidden="true">
							{angle ? "°" : unit === "in" ? '"' : unit}
						</span>
					</div>
					<Button className="button" onPress={() => (state === "taken" ? goOn(key) : leave(key))}>
						{leaveWord(item, unit)}
					</Button>
				</div>
				{error === "" ? null : (
					<p className="field-error" id={`${id}-error`} role="alert">
						{error}
					</p>
				)}
				<Keypad
					inches={unit === "in" && !angle}
					signed={what.kind === "reading" && isSigned(what.reading)}
					press={(pressed) => write((draft ?? "") + pressed)}
					erase={() => write((draft ?? text).slice(0, -1))}
					take={answer}
				/>
			</div>
		</div>
	);
}

/** What is done with it where nothing is taken. */
function leaveWord(item: ToTake, unit: LengthUnit): string {
	if (item.state === "taken") return "Keep";
	if (item.what.kind !== "height") return "Skip";
	return item.value === null ? "Leave it" : `Keep ${entryText(item, item.value, unit)}`;
}

const NOTHING = { key: "", message: "" };
