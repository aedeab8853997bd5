import { pinOf, setPin } from "@baywright/editor";
import type { WallPlace } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { Button, Checkbox } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { planOnTable, useBay, useLength } from "../desk/on-table.ts";
import { MarkSign } from "./mark-sign.tsx";
import { changeWords, markTitle, markWords } from "./mark-words.ts";
import type { SiteMark } from "./marks.ts";
import { type Tick, tick as ticked, untick } from "./ticks.ts";
import { phone, usePhone } from "./views.ts";

interface Props {
	readonly mark: SiteMark;
	readonly marks: readonly SiteMark[];
	readonly tick: Tick;
}

/** One thing to mark out: a tick, what and where it is, and the reading to hold the tape at. */
export function MarkRow({ mark, marks, tick }: Props) {
	const walls = useBay((bay) => bay.walls.length);
	const length = useLength();
	// Inches and their sixteenths stay on one line.
	const show = (mm: number) => length(mm).replaceAll(" ", "\u00a0");
	const row = useRef<HTMLLIElement>(null);
	const asked = usePhone(({ next }) => (next?.name === mark.name ? next.asked : 0));
	const isNext = asked > 0;
	const { title, place, figure, from, check } = markWords(mark, walls, show);
	const changed = changeWords(mark, tick, walls, show);
	const name = markTitle(mark);
	useEffect(() => {
		if (asked > 0) row.current?.scrollIntoView({ block: "center", behavior: scrolling() });
	}, [asked]);
	return (
		<li ref={row} className="mark-row" data-state={tick.state} data-next={isNext || undefined}>
			<Checkbox
				className="mark-tick"
				aria-label={`tick ${name}`}
				isSelected={tick.state === "done"}
				onChange={(done) => {
					if (isNext) phone.setState({ next: null });
					editBay(`${done ? "tick" : "untick"} ${name}`, (bay) => (done ? ticked : untick)(bay, marks, mark));
				}}
			>
				<span className={`mark-box mark-box-${mark.kind}`} aria-hidden="true" />
			</Checkbox>
			<div className="mark-what">
				<p className="mark-title">
					<MarkSign kind={mark.kind} />
					{title}
				</p>
				<p className="mark-place">{place}</p>
			</div>
			<div className="mark-tape">
				<p className="mark-figure figure">{show(figure)}</p>
				<p className="mark-from">{from}</p>
				{check === "" ? null : <p className="mark-check">{check}</p>}
			</div>
			{changed === "" ? null : (
				<div className="mark-changed">
					<p>{changed}</p>
					{mark.kind === "bracket" && tick.state === "moved" ? <KeepThere mark={mark} was={tick.was} /> : null}
				</div>
			)}
		</li>
	);
}

/** The hole is there: the plan can be made to follow it. */
function KeepThere({ mark, was }: { readonly mark: SiteMark; readonly was: WallPlace }) {
	const name = markTitle(mark);
	return (
		<Button
			className="button"
			onPress={() => {
				const plan = planOnTable(desk.getState());
				editBay(`keep ${name} where it is`, (bay) => setPin(bay, pinOf(bay, plan, mark.number - 1), was));
			}}
		>
			Keep {name} where it is
		</Button>
	);
}

const scrolling = (): ScrollBehavior => (matchMedia("(prefers-reduced-motion: reduce)").matches ? "instant" : "smooth");
