import { capital } from "@baywright/setout";
import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { LEAVING } from "../desk/leaving.ts";

export type Reading<Value> =
	| { readonly ok: true; readonly value: Value }
	| { readonly ok: false; readonly message: string };

interface Props<Value> {
	readonly label: string;
	/** The value as it stands, as text. */
	readonly text: string;
	readonly read: (text: string) => Reading<Value>;
	/** Puts the value in place; null, or why it cannot be. */
	readonly commit: (value: Value) => string | null;
	/** Present where the field may be emptied: what then happens. */
	readonly clear?: () => string | null;
	/** Shown while the field is empty: what holds instead. */
	readonly instead?: string;
	readonly labelHidden?: boolean;
	/** The unit of a bare number, shown at the end of the field. */
	readonly unit?: string;
	readonly inputMode?: "text" | "decimal";
	readonly align?: "start" | "end";
	readonly onFocus?: () => void;
	/** What is typed was refused, or no longer stands so. */
	readonly onRefused?: (refused: boolean) => void;
}

/**
 * A field for something typed. Enter commits, Escape restores, leaving commits what can be read. What cannot be read
 * stays as typed, with the reason under it.
 */
export function TypedField<Value>(props: Props<Value>) {
	const { label, text, read, commit, clear, instead, labelHidden = false, inputMode = "text", align = "end" } = props;
	const [draft, setDraft] = useState<string | null>(null);
	const [error, setError] = useState("");
	const id = useId();
	const input = useRef<HTMLInputElement>(null);

	const { onRefused } = props;
	const refused = error !== "";
	useEffect(() => {
		if (!refused) return;
		onRefused?.(true);
		return () => onRefused?.(false);
	}, [refused, onRefused]);

	// What is typed and not yet settled when the page goes is settled first, and before the job is stored.
	const settleNow = useRef(settle);
	settleNow.current = settle;
	const typing = draft !== null;
	useEffect(() => {
		if (!typing) return;
		const onLeave = () => settleNow.current();
		for (const event of LEAVING) addEventListener(event, onLeave, { capture: true });
		return () => {
			for (const event of LEAVING) removeEventListener(event, onLeave, { capture: true });
		};
	}, [typing]);

	function settle(): void {
		if (draft === null) return;
		const typed = draft.trim();
		const refusal = typed === text.trim() ? null : typed === "" && clear ? clear() : readAndCommit(typed);
		if (refusal === null) restore();
		else setError(capital(refusal));
	}

	function readAndCommit(typed: string): string | null {
		const reading = read(typed);
		return reading.ok ? commit(reading.value) : reading.message;
	}

	function restore(): void {
		setDraft(null);
		setError("");
	}

	function onKeyDown(event: KeyboardEvent): void {
		if (event.key === "Enter") {
			event.preventDefault();
			settle();
			input.current?.select();
		} else if (event.key === "Escape" && (draft !== null || error !== "")) {
			event.preventDefault();
			event.stopPropagation();
			restore();
		}
	}

	return (
		<div className={`field field-${align}`} data-invalid={error === "" ? undefined : true}>
			{labelHidden ? null : (
				<label className="field-label" htmlFor={id}>
					{label}
				</label>
			)}
			<span className="field-box">
				<input
					ref={input}
					id={id}
					type="text"
					value={draft ?? text}
					data-draft={draft === null ? undefined : true}
					inputMode={inputMode}
					autoComplete="off"
					spellCheck={false}
					enterKeyHint="done"
					placeholder={instead ?? ""}
					aria-label={labelHidden ? label : undefined}
					aria-invalid={error === "" ? undefined : true}
					aria-describedby={error === "" ? undefined : `${id}-error`}
					onChange={(event) => {
						setDraft(event.currentTarget.value);
						setError("");
					}}
					onBlur={settle}
					onFocus={(event) => {
						event.currentTarget.select();
						props.onFocus?.();
					}}
					onKeyDown={onKeyDown}
				/>
				{props.unit ? (
					<span className="field-unit" aria-hidden="true">
						{props.unit}
					</span>
				) : null}
			</span>
			{error === "" ? null : (
				<p className="field-error" id={`${id}-error`} role="alert">
					{error}
				</p>
			)}
		</div>
	);
}
