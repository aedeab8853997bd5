import "../styles/commands.css";
import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { desk } from "../desk/desk.ts";
import { screen } from "../desk/screen.ts";
import type { Command, Now } from "./command.ts";
import { findCommands } from "./commands.ts";
import { KeyCaps } from "./key-caps.tsx";

/** Everything that can be done, found by a word; what cannot be done now says why. */
export function CommandList() {
	// What the page was when the list was opened: nothing changes under it.
	const [now] = useState((): Now => ({ desk: desk.getState(), screen: screen.getState() }));
	const [text, setText] = useState("");
	const [at, setAt] = useState(0);
	const list = useRef<HTMLDivElement>(null);
	const id = useId();
	const found = doableFirst(findCommands(text), now);
	const active = Math.min(at, found.length - 1);

	useEffect(() => {
		list.current?.children[active]?.scrollIntoView({ block: "nearest" });
	}, [active]);

	function onKeyDown(event: KeyboardEvent): void {
		const steps: Readonly<Record<string, number>> = {
			ArrowDown: active + 1,
			ArrowUp: active - 1,
			Home: 0,
			End: found.length - 1,
			PageDown: active + PAGE,
			PageUp: active - PAGE,
		};
		const step = steps[event.key];
		if (step !== undefined) setAt(Math.max(0, Math.min(step, found.length - 1)));
		else if (event.key === "Enter") run(found[active], now);
		else return;
		event.preventDefault();
	}

	return (
		<div className="commands">
			<span className="field-box">
				<input
					type="text"
					role="combobox"
					aria-label="Find a command"
					aria-expanded="true"
					aria-controls={id}
					aria-autocomplete="list"
					aria-activedescendant={found.length === 0 ? undefined : `${id}-${active}`}
					placeholder="mirror, corner, joints, units…"
					autoComplete="off"
					spellCheck={false}
					// biome-ignore lint/a11y/noAutofocus: the list is opened to type in
					autoFocus
					value={text}
					onChange={(event) => {
						setText(event.currentTarget.value);
						setAt(0);
					}}
					onKeyDown={onKeyDown}
				/>
			</span>
			<div ref={list} className="command-list" role="listbox" id={id} aria-label="Commands">
				{found.map((command, index) => (
					<CommandRow
						key={command.id}
						id={`${id}-${index}`}
						command={command}
						reason={command.can(now)}
						active={index === active}
						point={() => setAt(index)}
						press={() => run(command, now)}
					/>
				))}
			</div>
			{found.length === 0 ? <p className="quiet">No command has these words.</p> : null}
		</div>
	);
}

const PAGE = 8;

interface RowProps {
	readonly id: string;
	readonly command: Command;
	/** Why it cannot be done now. */
	readonly reason: string | null;
	readonly active: boolean;
	readonly point: () => void;
	readonly press: () => void;
}

function CommandRow({ id, command, reason, active, point, press }: RowProps) {
	return (
		// biome-ignore lint/a11y/useKeyWithClickEvents: the field above takes the keys, as in every combobox
		// biome-ignore lint/a11y/useFocusableInteractive: the field above keeps the focus
		<div
			id={id}
			role="option"
			className="command"
			aria-selected={active}
			aria-disabled={reason === null ? undefined : true}
			onPointerMove={point}
			onClick={press}
		>
			<span className="command-words">{command.words}</span>
			{reason === null ? null : <span className="command-reason">{reason}</span>}
			{command.key === undefined ? null : <KeyCaps keys={command.key} />}
		</div>
	);
}

/** What can be done now stands before what cannot. */
const doableFirst = (list: readonly Command[], now: Now): readonly Command[] => [
	...list.filter((it) => it.can(now) === null),
	...list.filter((it) => it.can(now) !== null),
];

/** The list closes first: a command may open something else. What cannot be done leaves it open. */
function run(command: Command | undefined, now: Now): void {
	if (command === undefined || command.can(now) !== null) return;
	screen.getState().close();
	command.run(now);
}
