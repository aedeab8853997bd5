import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, usePlan } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { Figure } from "../fields/figure.tsx";
import { Section } from "./section.tsx";

/** How the curtains open, and what that leaves of the windows. */
export function DrawPanel() {
	const bay = useDesk((state) => state.bay);
	const draw = useBay((on) => on.track.draw);
	const stacks = usePlan((plan) => plan.stackBack.map(({ side }) => side).join());
	const glass = usePlan((plan) => plan.glass.total > 0);
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
			{stacks === "" && !glass ? (
				<p className="quiet">Nothing stacks and no glass is drawn.</p>
			) : (
				<dl className="tally">
					{(stacks === "" ? [] : stacks.split(",")).map((side, index) => (
						<div key={side}>
							<dt>Stack-back, {side}</dt>
							<dd>
								<Figure of={(state) => lengthOf(planOnTable(state).stackBack[index])} />
							</dd>
						</div>
					))}
					<div>
						<dt>Glass in all</dt>
						<dd>
							<Figure of={(state) => planOnTable(state).glass.total} />
						</dd>
					</div>
					<div className="tally-main">
						<dt>Glass left clear, open</dt>
						<dd>
							<Figure of={(state) => planOnTable(state).glass.clearOpen} />
						</dd>
					</div>
				</dl>
			)}
		</Section>
	);
}

const DRAWS = [
	["pair", "pair"],
	["left", "to left"],
	["right", "to right"],
	["none", "none"],
] as const;

const lengthOf = (stretch: { readonly from: number; readonly to: number } | undefined) =>
	stretch === undefined ? null : stretch.to - stretch.from;
