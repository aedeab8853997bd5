import {
	amountText,
	capital,
	describePart,
	findSystem,
	type OrderLine,
	orderLineName,
	priceText,
} from "@baywright/setout";
import { useId, useState } from "react";
import { desk, useDesk } from "../desk/desk.ts";
import { TypedField } from "../fields/typed-field.tsx";
import { setPrice } from "./set-price.ts";

interface Props {
	readonly line: OrderLine;
	/** The order is for tracks of several systems. */
	readonly several: boolean;
}

/** One part: how many, what one costs, what all cost; pressed, it says what of the plan it was counted from. */
export function OrderRow({ line, several }: Props) {
	const unit = useDesk((state) => state.shown.display.length);
	const system = useSystemName(line.system);
	const [isOpen, setOpen] = useState(false);
	const why = useId();
	const called = orderLineName(line, unit);
	const name = several && system !== null ? `${called}, ${system}` : called;
	// The hook that shows whether it is open stays with the last word.
	const lastWord = name.lastIndexOf(" ") + 1;
	const { ordered, spare, each, cost } = line;
	return (
		<>
			<tr className={isOpen ? "row chosen" : "row"}>
				<th scope="row" className="word">
					<button
						type="button"
						className="order-part"
						aria-expanded={isOpen}
						aria-controls={why}
						onClick={() => setOpen(!isOpen)}
					>
						{name.slice(0, lastWord)}
						<span className="order-hook">{name.slice(lastWord)}</span>
					</button>
				</th>
				<td>{ordered === null ? "not known" : amountText(ordered, line.unit)}</td>
				<td>
					<TypedField
						label={`Price of one: ${name}`}
						labelHidden
						text={each === null ? "" : priceText(each)}
						inputMode="decimal"
						instead="–"
						read={readPrice}
						commit={(price) => setPrice(line.priceItem, price)}
						{...(each === null ? {} : { clear: () => setPrice(line.priceItem, null) })}
					/>
				</td>
				<td>{cost === null ? "–" : cost.toFixed(2)}</td>
			</tr>
			{isOpen ? (
				<tr className="detail chosen" id={why}>
					<td colSpan={4}>
						<Why line={line} />
						{spare === 0 ? null : <p>Of these {amountText(spare, line.unit)} spare.</p>}
						<p>
							In a price list: “{line.priceItem}”{system === null ? "" : `, of ${system}`}.
						</p>
					</td>
				</tr>
			) : null}
		</>
	);
}

/** What each bay needs it for, by the bay's name where there are several. */
function Why({ line: { bays } }: Pick<Props, "line">) {
	const unit = useDesk((state) => state.shown.display.length);
	const { bays: all } = desk.getState().shown;
	return bays.map(({ bay, part }) => {
		const name = all.find(({ id }) => id === bay)?.name || bay;
		const { why } = describePart(part, unit);
		const text = all.length === 1 ? why : `${name}, ${part.quantity ?? "not known"}: ${why}`;
		return <p key={bay}>{`${capital(text)}.`}</p>;
	});
}

function useSystemName(id: string | null): string | null {
	return useDesk((state) => (id === null ? null : (findSystem(state.shown, id)?.name ?? id)));
}

function readPrice(text: string) {
	const typed = text.trim();
	const price = Number(typed.replace(",", "."));
	return /^\d+(?:[.,]\d+)?$/.test(typed) && Number.isFinite(price)
		? { ok: true as const, value: price }
		: { ok: false as const, message: `“${typed}” is not a price: write a number, 0 or more.` };
}
