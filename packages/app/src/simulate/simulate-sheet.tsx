import { FITS_WITHIN, type StrategyName, USUAL_ERRORS } from "@baywright/setout";
import { type FormEvent, useState } from "react";
import { Button, Label, ProgressBar } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { bayOnTable, planOnTable } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { lower } from "../fields/lower.ts";
import { PlainField } from "../fields/plain-field.tsx";
import { Histogram } from "./histogram.tsx";
import { type OrderText, readOrder } from "./order-text.ts";
import type { Progress } from "./progress.ts";
import "./simulate.css";
import { useSimulation } from "./use-simulation.ts";
import { WAYS, WaysTable } from "./ways-table.tsx";

type Which = "table" | "random";

/** How often the track would fit the first time, however the bay is measured. */
export function SimulateSheet() {
	const { progress, start, cancel } = useSimulation();
	const [which, setWhich] = useState<Which>("table");
	const [text, setText] = useState<OrderText>(USUAL);
	const [refused, setRefused] = useState<OrderText>(NONE);
	const running = progress.state === "running";

	function measure(event: FormEvent): void {
		event.preventDefault();
		const read = readOrder(text);
		setRefused(read.ok ? NONE : read.refused);
		if (read.ok) start({ ...read.order, bay: which === "table" ? onTable() : null });
	}

	const field = (key: keyof OrderText, label: string, unit?: string) => (
		<PlainField
			label={label}
			text={text[key]}
			change={(typed) => setText({ ...text, [key]: typed })}
			refused={refused[key]}
			{...(unit === undefined ? {} : { unit })}
		/>
	);
	return (
		<div className="simulate">
			<p className="simulate-lead">
				The bay is measured over and over, each time with the errors of a tape and a bevel. A track fits the first time
				if its worst piece is cut within {FITS_WITHIN} mm of what the bay needs.
			</p>
			<form className="simulate-form" aria-label="What to measure" noValidate onSubmit={measure}>
				<Choice label="Bays" labelHidden value={which} options={BAYS} choose={setWhich} />
				<div className="simulate-fields">
					{field("count", "Times")}
					{field("seed", "Seed")}
					{field("tape", "Tape, one sd", "mm")}
					{field("bevel", "Bevel, one sd", "°")}
				</div>
				<div className="pair">
					<Button className="button button-main" type="submit" isDisabled={running}>
						Measure
					</Button>
					{running ? (
						<Button className="button" onPress={cancel}>
							Cancel
						</Button>
					) : null}
				</div>
			</form>
			<Outcome progress={progress} />
		</div>
	);
}

function Outcome({ progress }: { readonly progress: Progress }) {
	const [way, choose] = useState<StrategyName>("asked");
	if (progress.state === "idle") return null;
	if (progress.state === "no-track")
		return (
			<p className="simulate-refused" role="alert">
				Nothing to compare with: no track fits this bay, or its readings settle nothing. The findings say why.
			</p>
		);
	const { state, asked, done, strategies } = progress;
	const chosen = strategies.find(({ name }) => name === way) ?? strategies[0];
	return (
		<section className="simulate-outcome" aria-label="How it came out">
			{state === "running" ? (
				<ProgressBar className="simulate-progress" value={done} maxValue={asked.count}>
					<Label>
						{done} of {asked.count} measured
					</Label>
					<progress value={done} max={asked.count} aria-hidden="true" />
				</ProgressBar>
			) : null}
			<p className="quiet" role="status">
				{state === "running" ? "Measuring…" : `${ENDED[state](done, asked.count)} ${repeat(asked)}`}
			</p>
			{chosen === undefined ? null : (
				<>
					<WaysTable strategies={strategies} chosen={chosen.name} choose={choose} />
					<h3 className="simulate-heading">How far out the worst piece was: {lower(WAYS[chosen.name])}</h3>
					<Histogram histogram={chosen.histogram} way={WAYS[chosen.name]} />
				</>
			)}
		</section>
	);
}

const ENDED = {
	finished: (done: number) => `Measured ${times(done)}.`,
	cancelled: (done: number, count: number) => `Cancelled after ${done} of ${count}: the figures are of those.`,
	failed: (done: number, count: number) => `It broke off by itself after ${done} of ${count}. Measure again.`,
};

const times = (count: number): string => (count === 1 ? "once" : `${count} times`);

/** What gives the very same figures again. */
const repeat = ({ bay, seed, errors }: Extract<Progress, { readonly asked: unknown }>["asked"]): string =>
	`${bay === null ? "Random bays" : "This bay"}, seed ${seed}, tape ${errors.tape} mm, bevel ${errors.bevel}°: the same again gives the same figures.`;

const BAYS = [
	["table", "This bay"],
	["random", "Random bays"],
] as const;

const USUAL: OrderText = {
	count: "1000",
	seed: "1",
	tape: String(USUAL_ERRORS.tape),
	bevel: String(USUAL_ERRORS.bevel),
};

const NONE: OrderText = { count: "", seed: "", tape: "", bevel: "" };

function onTable() {
	const state = desk.getState();
	return { bay: bayOnTable(state), system: planOnTable(state).system };
}
