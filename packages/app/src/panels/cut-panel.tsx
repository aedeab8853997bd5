import { isSelected } from "@baywright/editor";
import { AT_95, formatLength } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { desk, useDesk } from "../desk/desk.ts";
import { planOnTable, useBay, useLength, usePlan, usePlanPart } from "../desk/on-table.ts";
import { Figure } from "../fields/figure.tsx";
import { useScrollSigns } from "./scroll-signs.ts";

/** What to cut: the largest figures on the screen, and what to buy for them. */
export function CutPanel() {
	const names = usePlan((plan) => plan.pieces.map((piece) => piece.name).join());
	const taped = usePlan((plan) => plan.survey !== null);
	if (names === "") return <NothingToCut />;
	const pieces = names.split(",");
	return (
		<section className="cut" id="cut" aria-label="Cut">
			<CutCards pieces={pieces} />
			<p className="quiet">
				{pieces.length > FEW ? `${pieces.length} pieces. ` : null}
				<Buy />
				{taped ? null : "From the drawing: no ± until the bay is taped."}
			</p>
		</section>
	);
}

/** More than these do not all show at once. */
const FEW = 4;

function CutCards({ pieces }: { readonly pieces: readonly string[] }) {
	const list = useRef<HTMLUListElement>(null);
	useScrollSigns(list);
	return (
		<ul ref={list} className="cut-cards">
			{pieces.map((name, index) => (
				<CutCard key={name} name={name} index={index} />
			))}
		</ul>
	);
}

function CutCard({ name, index }: { readonly name: string; readonly index: number }) {
	const chosen = useDesk((state) => isSelected(state.selection, "piece", index));
	const show = useLength();
	const unit = useDesk((state) => state.shown.display.length);
	const taped = usePlan((plan) => plan.survey !== null);
	const sd = usePlan((plan) => plan.pieces[index]?.sd ?? null);
	const takenUp = usePlan((plan) => {
		const piece = plan.pieces[index];
		return piece ? Math.round((piece.finishedLength - piece.cutLength) * 1000) / 1000 : 0;
	});
	const { select, point } = desk.getState();
	const card = useRef<HTMLLIElement>(null);
	useEffect(() => {
		if (chosen && card.current) bringIntoList(card.current);
	}, [chosen]);
	return (
		<li ref={card} className={chosen ? "cut-card chosen" : "cut-card"}>
			<button
				type="button"
				aria-pressed={chosen}
				onClick={() => select(chosen ? null : { kind: "piece", index })}
				onPointerEnter={() => point({ kind: "piece", index })}
				onPointerLeave={() => point(null)}
			>
				<span className="cut-name">Cut {name}</span>
				<span className="cut-line">
					<Figure className="cut-figure" of={(state) => planOnTable(state).pieces[index]?.cutLength} />
					{unit === "in" ? null : <span className="soft">{unit}</span>}
				</span>
				{taped ? (
					<span className="cut-sd">
						± {sd === null ? "…" : formatLength(AT_95 * sd, unit, { precision: 1 })} at 95 %
					</span>
				) : null}
				{takenUp < 0.05 ? null : (
					<span className="cut-sd">
						finished <Figure of={(state) => planOnTable(state).pieces[index]?.finishedLength} />, less {show(takenUp)}{" "}
						for end hardware
					</span>
				)}
			</button>
		</li>
	);
}

/** Scrolls the list alone: the page stays where it is read. */
function bringIntoList(card: HTMLElement): void {
	const list = card.parentElement;
	if (!list) return;
	const [inside, outside] = [card.getBoundingClientRect(), list.getBoundingClientRect()];
	const above = outside.top + FADE - inside.top;
	const below = inside.bottom + FADE - outside.bottom;
	if (above > 0) list.scrollTop -= above;
	else if (below > 0) list.scrollTop += below;
}

/** px at its edges over which a list that scrolls fades away. */
const FADE = 24;

function NothingToCut() {
	const walled = useBay((bay) => bay.corners.length > 1);
	if (!walled)
		return (
			<section className="cut" id="cut" aria-label="Cut">
				<p className="cut-figure">Nothing to cut yet</p>
				<p className="quiet">With the first wall there is a track, and a length to cut.</p>
			</section>
		);
	return (
		<section className="cut cut-none" id="cut" aria-label="Cut">
			<p className="cut-figure">Do not cut</p>
			<p className="quiet">
				The track does not fit as drawn. <a href="#findings">See what stands in its way</a>.
			</p>
		</section>
	);
}

function Buy() {
	const show = useLength();
	const stock = usePlanPart((plan) => plan.stock);
	if (stock.buy.length === 0) return null;
	const lengths = stock.buy.map(({ length, count }) => `${count} × ${show(length)}`).join(" and ");
	return (
		<span className="buy">
			Buy {lengths}, {show(stock.waste)} left over.
		</span>
	);
}
