import { useEffect, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay } from "../desk/on-table.ts";
import { AllTaped } from "./all-taped.tsx";
import { FirstShape } from "./first-shape.tsx";
import { MoreOnWalls } from "./more-on-walls.tsx";
import { before, PARTS, type Part, type ToTake } from "./next-to-take.ts";
import { Question } from "./question.tsx";
import { entryFigure } from "./say.ts";
import { goBackTo, goTo, showList, useTaking } from "./taking.ts";
import "../styles/taping.css";
import "./step-by-step.css";

/** A survey sheet that asks for one reading at a time. `undo`: with a way back of its own, where the header's is out of reach. */
export function StepByStep({ undo = false }: { readonly undo?: boolean }) {
	const walled = useBay((bay) => bay.walls.length > 0);
	return walled ? <Sheet undo={undo} /> : <FirstShape />;
}

function Sheet({ undo }: { readonly undo: boolean }) {
	const taking = useTaking();
	const { list, asked, draft, listed } = taking;
	const unit = useDesk((state) => state.shown.display.length);
	const said = useSaid(list, asked, (item, value) => entryFigure(item, value, unit));
	const back = before(taking) === null ? null : () => goBackTo(taking);
	const ways = { list, back };
	return (
		<section className="taking" aria-label="Tape">
			<Parts list={list} asked={listed ? null : asked} listed={listed || asked === null} />
			{asked === null || listed ? (
				<AllTaped list={list} asked={asked} goOn={() => showList(false)} />
			) : asked.what.kind === "more" ? (
				<MoreOnWalls item={asked} {...ways} />
			) : (
				<Question item={asked} draft={draft} {...ways} />
			)}
			{undo ? <Undo /> : null}
			<p className="hidden" aria-live="polite">
				{said}
			</p>
		</section>
	);
}

const WORDS: Readonly<Record<Part, string>> = {
	walls: "Walls",
	corners: "Corners",
	heights: "Heights",
	obstacles: "Obstacles",
};

interface PartsProps {
	readonly list: readonly ToTake[];
	readonly asked: ToTake | null;
	readonly listed: boolean;
}

/** How far the parts of the survey have come, and the list of all of it; each is gone to with a tap. */
function Parts({ list, asked, listed }: PartsProps) {
	const all = list.filter(({ state }) => state === "taken").length;
	return (
		<nav className="taking-parts" aria-label="Parts of the survey">
			{PARTS.map((part) => {
				const own = list.filter((each) => each.part === part && each.what.kind !== "more");
				const taken = own.filter(({ state }) => state === "taken").length;
				const first =
					list.find((each) => each.part === part && each.state === "open") ?? list.find((each) => each.part === part);
				const count = own.length === 0 ? "–" : part === "corners" ? `${taken}` : `${taken} of ${own.length}`;
				return (
					<Button
						key={part}
						className="taking-part"
						{...(asked?.part === part ? { "aria-current": "step" } : {})}
						isDisabled={first === undefined}
						onPress={() => first && goTo(first.key)}
					>
						<span>{WORDS[part]}</span>
						<span className="taking-count">{count}</span>
					</Button>
				);
			})}
			<Button className="taking-part" {...(listed ? { "aria-current": "step" } : {})} onPress={() => showList(true)}>
				<span>List</span>
				<span className="taking-count">{all}</span>
			</Button>
		</nav>
	);
}

function Undo() {
	const label = useDesk((state) => state.past.at(-1)?.label);
	return (
		<Button className="button taking-undo" isDisabled={label === undefined} onPress={() => desk.getState().undo()}>
			Undo{label === undefined ? "" : `: ${label}`}
		</Button>
	);
}

/** What was just taken and what is asked next, for whoever does not see it. */
function useSaid(
	list: readonly ToTake[],
	asked: ToTake | null,
	figure: (item: ToTake, value: number) => string,
): string {
	const [said, say] = useState("");
	const last = useRef(asked);
	useEffect(() => {
		const was = last.current;
		last.current = asked;
		if (was === null || was.key === asked?.key) return;
		const done = list.find(({ key, state }) => key === was.key && state === "taken");
		const taken = done?.value == null ? "" : `Taken: ${done.name} ${figure(done, done.value)}. `;
		say(`${taken}${asked === null ? "All taped." : `Now: ${asked.name}.`}`);
	}, [list, asked, figure]);
	return said;
}
