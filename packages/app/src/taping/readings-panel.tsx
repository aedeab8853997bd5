import { loosened, takenAgain, withoutReading } from "@baywright/editor";
import { AT_95, capital, formatLength, type Reading, readingFigure, readingName, readingTask } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { useBay, usePlanPart } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { Section } from "../panels/section.tsx";
import { AddReading } from "./add-reading.tsx";
import { Agreement } from "./agreement.tsx";
import { inDoubt } from "./in-doubt.ts";
import { ReadingsFile } from "./readings-file.tsx";
import { TakeField, useWording, ValueField } from "./value-field.tsx";
import "../styles/taping.css";

/** What was taped of the bay and how it agrees: each reading taken again, loosened or removed in its place, and the next one to take. */
export function ReadingsPanel() {
	const readings = useBay((bay) => bay.readings);
	const count = readings.length;
	return (
		<Section title="Readings" gist={count === 0 ? "nothing taped" : count === 1 ? "1 taped" : `${count} taped`}>
			{count === 0 ? <p className="quiet">Nothing is taped yet: the bay is as drawn.</p> : <Agreement />}
			<ul className="readings">
				{readings.map((reading, index) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a reading is known by its place in the list
					<ReadingRow key={index} reading={reading} index={index} />
				))}
			</ul>
			<NextReading />
			<Button className="button" onPress={() => screen.getState().show({ kind: "taping" })}>
				Tape step by step
			</Button>
			<AddReading />
			<ReadingsFile />
		</Section>
	);
}

function ReadingRow({ reading, index }: { readonly reading: Reading; readonly index: number }) {
	const wording = useWording();
	const checked = usePlanPart((plan) => plan.survey?.readings[index] ?? null);
	const doubted = usePlanPart((plan) => inDoubt(plan.survey).includes(index));
	const name = readingName(reading, wording.walls);
	// Shown on the plan while it is at hand.
	const { point } = desk.getState();
	const thing = { kind: "reading", index } as const;
	const residual = checked === null || checked.standardized === null ? null : checked.residual;
	const figure = (value: number) => readingFigure(reading, value, wording);
	const says = [
		...(doubted ? ["in doubt"] : []),
		...(residual === null ? ["unchecked"] : [`out by ${figure(Math.abs(residual))}`]),
		...(reading.sd === null ? [] : [`± ${figure(AT_95 * reading.sd)}`]),
	].join(", ");
	return (
		<li
			className="reading"
			data-doubt={doubted || undefined}
			onPointerEnter={() => point(thing)}
			onPointerLeave={() => point(null)}
			onFocus={() => point(thing)}
			onBlur={() => point(null)}
		>
			<ValueField
				reading={reading}
				label={capital(name)}
				value={reading.value}
				commit={(value) => editBay(`take the ${name} again`, (bay) => takenAgain(bay, index, value))}
			/>
			<p className="reading-says">{says}</p>
			<div className="pair">
				<Button
					className="button"
					aria-label={`Loosen the ${name}`}
					onPress={() => editBay(`loosen the ${name}`, (bay) => loosened(bay, index))}
				>
					Loosen
				</Button>
				<Button
					className="button"
					aria-label={`Remove the ${name}`}
					onPress={() => editBay(`remove the ${name}`, (bay) => withoutReading(bay, index))}
				>
					Remove
				</Button>
			</div>
		</li>
	);
}

/** What to tape next: what tells a wrong reading from others that might be it, or else how sure the least sure cut length would then be, and where to type it. */
function NextReading() {
	const next = usePlanPart((plan) => plan.survey?.next ?? null);
	const telling = usePlanPart((plan) => plan.survey?.telling ?? null);
	const wording = useWording();
	if (telling !== null)
		return (
			<div className="reading-next">
				<p>Tape next: the {readingTask(telling, wording)}. It helps to tell which reading is wrong.</p>
				<TakeField reading={telling} />
			</div>
		);
	if (next === null) return null;
	const { reading, reaches } = next;
	const sure = formatLength(AT_95 * reaches, wording.unit, { unit: true, precision: 1 });
	return (
		<div className="reading-next">
			<p>
				Tape next: the {readingTask(reading, wording)}. The least sure cut length is then good to ± {sure}.
			</p>
			<TakeField reading={reading} />
		</div>
	);
}
