import { capital, jobOrder, totalWhy, writeOrderCsv } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { useDeskAtEase } from "../desk/on-table.ts";
import { saveOrder } from "../storage/job-file.ts";
import { OrderRow } from "./order-row.tsx";
import { Section } from "./section.tsx";
import "../styles/order.css";

/** Everything to buy for all bays of the job, counted from their plans; prices are the user's own. */
export function OrderPanel() {
	const order = useDeskAtEase(({ shown, plans }) => jobOrder(shown, plans));
	const bays = useDesk((state) => state.shown.bays.length);
	const { lines, total, pricesNotUsed } = order;
	const left = totalWhy(order);
	const several = new Set(lines.map(({ system }) => system).filter((system) => system !== null)).size > 1;
	const isPriced = lines.some(({ each }) => each !== null);
	if (lines.length === 0)
		return (
			<Section title="Order">
				<p className="quiet">Nothing to order until the track fits.</p>
			</Section>
		);
	return (
		<Section title="Order" gist={bays === 1 ? `${lines.length} parts` : `${lines.length} parts, all ${bays} bays`}>
			<table className="figures order">
				<thead>
					<tr>
						<th className="word">part</th>
						<th>to order</th>
						<th>each</th>
						<th>cost</th>
					</tr>
				</thead>
				<tbody>
					{lines.map((line) => (
						<OrderRow key={`${line.system} ${line.item} ${line.size}`} line={line} several={several} />
					))}
				</tbody>
				<tfoot>
					<tr>
						<th className="word" colSpan={3}>
							Total of what has a price
						</th>
						<td>{isPriced ? total.toFixed(2) : "–"}</td>
					</tr>
				</tfoot>
			</table>
			{left === "" ? null : <p className="quiet">{capital(left)}.</p>}
			{pricesNotUsed.length === 0 ? null : (
				<p className="quiet">Priced, but not on this order: {pricesNotUsed.join(", ")}.</p>
			)}
			<Button className="button" onPress={save}>
				Save the order to a file
			</Button>
			<p className="quiet">
				Prices come only from you, in your own money, and stay in the job. Press a part to see what it was counted from.
			</p>
		</Section>
	);
}

function save(): void {
	const { shown, plans } = desk.getState();
	void saveOrder(writeOrderCsv(jobOrder(shown, plans), shown.display.length));
}
