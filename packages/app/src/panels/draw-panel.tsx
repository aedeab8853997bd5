import type { Curtain } from "@baywright/setout";
import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { openAll, openCurtain, openedState, shareOpened, useOpened } from "../desk/opened.ts";
import { Choice } from "../fields/choice.tsx";
import { Figure } from "../fields/figure.tsx";
import { ClearNow, LightLost } from "./clear-now.tsx";
import { Section } from "./section.tsx";

/** How the curtains open, how far they are opened as one looks at them, and what that leaves of the windows. */
export function DrawPanel() {
	const bay = useDesk((state) => state.bay);
	const draw = useBay((on) => on.track.draw);
	const hung = usePlanPart(({ curtains }) => curtains.map(({ curtain, side }) => ({ curtain, side })));
	const glass = usePlan((plan) => plan.glass.total > 0);
	const state = useOpened((now) => openedState(now, hung.length));
	const isSetForEach = useBay(({ curtains }) => curtains.length > 0 && !curtains.some(goesAsDrawn));
	const { change } = desk.getState();
	return (
		<Section title="Draw" gist={DRAWS.find(([value]) => value === draw)?.[1]}>
			<Choice
				label="Opens"
				labelHidden
				value={draw}
				options={DRAWS}
				choose={(to) => change("draw", setTrack(bay, "draw", to))}
			/>
			{isSetForEach && draw !== "none" ? (
				<p className="quiet">Each curtain is drawn back to the side that is set with it, under Curtains.</p>
			) : null}
			{hung.length === 0 && !glass ? <p className="quiet">Nothing stacks and no glass is drawn.</p> : null}
			{hung.length === 0 ? null : (
				<>
					<Choice label="Seen" value={state} options={SEEN} choose={(to) => openAll(to === "open" ? 1 : 0)} />
					<p className="opener opener-head" aria-hidden="true">
						<span>curtain</span>
						<span>opened</span>
						<span className="opener-stack">stack-back</span>
					</p>
					<ul className="openers">
						{hung.map(({ curtain, side }, index) => (
							// biome-ignore lint/suspicious/noArrayIndexKey: curtains hang in order
							<Opener key={index} index={index} name={nameOf(curtain, side, hung)} />
						))}
					</ul>
				</>
			)}
			{glass ? (
				<dl className="tally">
					<div>
						<dt>Glass in all</dt>
						<dd>
							<Figure of={(on) => planOnTable(on).glass.total} />
						</dd>
					</div>
					<div>
						<dt>Light lost, open</dt>
						<dd>
							<LightLost />
						</dd>
					</div>
					<div className="tally-main">
						<dt>
							{state === "open"
								? "Glass left clear, open"
								: state === "closed"
									? "Glass left clear, drawn"
									: "Glass left clear, as seen"}
						</dt>
						<dd>
							<ClearNow />
						</dd>
					</div>
				</dl>
			) : null}
		</Section>
	);
}

/** One curtain drawn by a slider, with the track that its stack takes up: the leading edge on the plan does the same. */
function Opener({ index, name }: { readonly index: number; readonly name: string }) {
	const share = useOpened((now) => shareOpened(now, index));
	const percent = Math.round(100 * share);
	return (
		<li className="opener">
			<span className="opener-name">{name}</span>
			<input
				type="range"
				min={0}
				max={100}
				value={percent}
				aria-label={`Curtain ${name}, opened`}
				aria-valuetext={`${percent} % opened`}
				onChange={(event) => openCurtain(index, Number(event.currentTarget.value) / 100)}
			/>
			<span className="opener-stack">
				<span className="hidden">stack-back </span>
				<Figure of={(on) => lengthOf(planOnTable(on).curtains[index]?.stack)} />
			</span>
		</li>
	);
}

/** A curtain on the whole track goes as the track is drawn, unless it says otherwise. */
const goesAsDrawn = ({ from, to, stacks }: Curtain): boolean => stacks === "auto" && from === null && to === null;

const DRAWS = [
	["pair", "pair"],
	["left", "to left"],
	["right", "to right"],
	["none", "none"],
] as const;

const SEEN: readonly (readonly ["open" | "closed" | "between", string])[] = [
	["open", "open"],
	["closed", "drawn"],
];

interface Hung {
	readonly curtain: number | null;
	readonly side: "left" | "right";
}

function nameOf(curtain: number | null, side: Hung["side"], hung: readonly Hung[]): string {
	const isPart = hung.filter((other) => other.curtain === curtain).length > 1;
	if (curtain === null) return isPart ? side : "one";
	return isPart ? `${curtain + 1}, ${side}` : String(curtain + 1);
}

const lengthOf = (stretch: { readonly from: number; readonly to: number } | undefined) =>
	stretch === undefined ? null : stretch.to - stretch.from;
