import { pinOf, setPin } from "@baywright/editor";
import { type WallPlace, zoneName } from "@baywright/setout";
import { type ReactNode, useEffect, useRef } from "react";
import { Button, Checkbox } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { planOnTable, useBay, useLength } from "../desk/on-table.ts";
import { PlusMinus } from "../fields/plus-minus.tsx";
import { BracketMeasured } from "./bracket-measured.tsx";
import { MarkSign } from "./mark-sign.tsx";
import { changeWords, markTitle, markWords, measuredWords } from "./mark-words.ts";
import type { BracketMark, SiteMark } from "./marks.ts";
import { type FittedBracket, type Tick, tick as ticked, untick } from "./ticks.ts";
import { phone, usePhone } from "./views.ts";

interface Props {
	readonly mark: SiteMark;
	readonly marks: readonly SiteMark[];
	readonly tick: Tick;
	/** What is kept of a ticked bracket. */
	readonly fitted: FittedBracket | null;
}

/** One thing to mark out: a tick, what and where it is, and the reading to hold the tape at. */
export function MarkRow({ mark, marks, tick, fitted }: Props) {
	const walls = useBay((bay) => bay.walls.length);
	const length = useLength();
	// Inches and their sixteenths stay on one line.
	const show = (mm: number) => length(mm).replaceAll(" ", "\u00a0");
	const row = useRef<HTMLLIElement>(null);
	const asked = usePhone(({ next }) => (next?.name === mark.name ? next.asked : 0));
	const isNext = asked > 0;
	const { title, place, figure, from, check } = markWords(mark, walls, show, fitted);
	const changed = changeWords(mark, tick, walls, show);
	const measured = mark.kind === "bracket" ? measuredWords(mark, fitted, show) : "";
	const name = markTitle(mark);
	const isOpen = usePhone(({ opened }) => opened === mark.name);
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
			<What mark={mark} isOpen={isOpen}>
				<span className="mark-title">
					<MarkSign kind={mark.kind} />
					{title}
				</span>
				<span className="mark-place">{place}</span>
				{mark.kind === "bracket" && mark.cables.length > 0 ? (
					<span className="mark-cables">
						cables may run here: {mark.cables.map((zone) => zoneName(zone, walls)).join(", ")}
					</span>
				) : null}
				{measured === "" ? null : <span className="mark-measured">{measured}</span>}
			</What>
			<div className="mark-tape">
				<p className="mark-figure figure">{show(figure)}</p>
				{mark.kind === "bracket" ? <BracketSure mark={mark} /> : null}
				<p className="mark-from">{from}</p>
				{check === "" ? null : <p className="mark-check">{check}</p>}
			</div>
			{isOpen && mark.kind === "bracket" ? (
				<BracketMeasured
					mark={mark}
					marks={marks}
					fitted={fitted}
					onPlaced={(bracket) => phone.setState({ opened: `bracket-${bracket + 1}` })}
				/>
			) : null}
			{changed === "" ? null : (
				<div className="mark-changed">
					<p>{changed}</p>
					{mark.kind === "bracket" && tick.state === "moved" ? <KeepThere mark={mark} was={tick.was} /> : null}
				</div>
			)}
		</li>
	);
}

/** How sure the large figure is. */
function BracketSure({ mark: { number, nearer, place } }: { readonly mark: BracketMark & SiteMark }) {
	const side = nearer.corner === place.wall ? 0 : 1;
	return <PlusMinus className="mark-sure" of={(plan) => plan.brackets[number - 1]?.sd[side]} />;
}

/** What a row is about. A bracket's is pressed to open what was measured of it. */
function What({ mark, isOpen, children }: { mark: SiteMark; isOpen: boolean; children: ReactNode }) {
	if (mark.kind !== "bracket") return <div className="mark-what">{children}</div>;
	return (
		<Button
			className="mark-what mark-opens"
			aria-expanded={isOpen}
			onPress={() => phone.setState({ opened: isOpen ? null : mark.name })}
		>
			{children}
		</Button>
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
