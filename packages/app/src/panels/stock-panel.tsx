import { useLength, usePlan, usePlanPart } from "../desk/on-table.ts";
import { Section } from "./section.tsx";

/** Which lengths to buy, and what is cut from each. */
export function StockPanel() {
	const stock = usePlanPart((plan) => plan.stock);
	const system = usePlan((plan) => plan.system.name);
	const show = useLength();
	const count = stock.buy.reduce((sum, each) => sum + each.count, 0);
	return (
		<Section title="Track to buy" gist={count === 1 ? "1 length" : `${count} lengths`}>
			{count === 0 ? (
				<p className="quiet">Nothing to buy until the track fits.</p>
			) : (
				<>
					<dl className="tally">
						{stock.buy.map(({ length, count: many }) => (
							<div key={length} className="tally-main">
								<dt>{system}</dt>
								<dd>
									{many} × {show(length)}
								</dd>
							</div>
						))}
						<div>
							<dt>Left over in all</dt>
							<dd>{show(stock.waste)}</dd>
						</div>
					</dl>
					<ol className="cuts">
						{stock.cuts.map(({ stock: length, pieces, offcut }, index) => (
							// biome-ignore lint/suspicious/noArrayIndexKey: a length is known by its place
							<li key={index}>
								{`From ${show(length)}: ${pieces.map(({ piece, length: cut }) => `${piece} ${show(cut)}`).join(", ")}, offcut ${show(offcut)}`}
							</li>
						))}
					</ol>
					{stock.exact ? null : <p className="quiet">Good, not proved the best.</p>}
				</>
			)}
		</Section>
	);
}
