import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import "./splitter.css";

interface Props {
	readonly label: string;
	/** px: the height of what lies below. */
	readonly value: number;
	readonly least: number;
	/** What a double click goes back to. */
	readonly usual: number;
	readonly change: (height: number) => void;
}

/** px that an arrow moves the edge, and with Shift. */
const STEP = 10;
const LONG_STEP = 50;

/** px that stay for what lies above, page head and all; lower.css says the same. */
const ABOVE = 430;

/** The upper edge of a part of the screen that can be made higher: dragged, or moved by arrows, Home and End. */
export function Splitter({ label, value, least, usual, change }: Props) {
	const held = useRef<{ readonly from: number; readonly height: number } | null>(null);
	const most = () => Math.max(least, window.innerHeight - ABOVE);
	const to = (height: number) => change(Math.max(least, Math.min(most(), height)));

	function press(event: PointerEvent<HTMLElement>): void {
		if (event.button !== 0) return;
		event.currentTarget.setPointerCapture(event.pointerId);
		held.current = { from: event.clientY, height: Math.min(value, most()) };
	}

	function move(event: PointerEvent<HTMLElement>): void {
		if (held.current !== null) to(held.current.height + held.current.from - event.clientY);
	}

	function keyDown(event: KeyboardEvent<HTMLElement>): void {
		const step = event.shiftKey ? LONG_STEP : STEP;
		if (event.key === "ArrowUp") to(value + step);
		else if (event.key === "ArrowDown") to(value - step);
		else if (event.key === "Home") to(least);
		else if (event.key === "End") to(most());
		else if (event.key === "Escape" && held.current !== null) {
			to(held.current.height);
			held.current = null;
		} else return;
		event.preventDefault();
	}

	return (
		// biome-ignore lint/a11y/useSemanticElements: a rule takes no focus and moves nothing
		<div
			className="splitter"
			role="separator"
			tabIndex={0}
			aria-orientation="horizontal"
			aria-label={label}
			aria-valuenow={Math.min(value, most())}
			aria-valuemin={least}
			aria-valuemax={most()}
			aria-valuetext={`${Math.min(value, most())} pixels high`}
			onPointerDown={press}
			onPointerMove={move}
			onPointerUp={() => {
				held.current = null;
			}}
			onPointerCancel={() => {
				held.current = null;
			}}
			onDoubleClick={() => change(usual)}
			onKeyDown={keyDown}
		/>
	);
}
