import { loosened, withoutReading } from "@baywright/editor";
import { AT_95, capital, describe, type FindingCode, readingFigure } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { editBay } from "../desk/edit-bay.ts";
import { usePlanPart } from "../desk/on-table.ts";
import { inDoubt } from "./in-doubt.ts";
import type { ToTake } from "./next-to-take.ts";
import { entryFigure } from "./say.ts";
import { Standing } from "./standing.tsx";
import { takeAlong } from "./take-along.ts";
import { goTo, showList, skip } from "./taking.ts";
import { useWording } from "./value-field.tsx";

interface Props {
	readonly list: readonly ToTake[];
	/** What is still to be taped, to go on with; null when all is done. */
	readonly asked: ToTake | null;
	readonly goOn: () => void;
}

/** Everything that was taped, to be taken again, loosened or removed, and what is still unsure. */
export function AllTaped({ list, asked, goOn }: Props) {
	const doubted = usePlanPart((plan) => inDoubt(plan.survey).length);
	const heading = useRef<HTMLHeadingElement>(null);
	// Whoever typed the last figure is taken along to what has become of it all.
	useEffect(() => takeAlong(heading.current), []);
	const inDoubtWords = doubted === 1 ? "One reading is in doubt" : "Readings are in doubt";
	const title = asked !== null ? "Taped so far" : doubted > 0 ? inDoubtWords : "All taped";
	const taken = list.filter(({ state }) => state === "taken");
	const readings = taken.filter(({ what }) => what.kind === "reading");
	const heights = taken.filter(({ what }) => what.kind === "height");
	const left = list.filter(({ state, what }) => state === "skipped" && what.kind !== "more");
	return (
		<div className="taking-all">
			<div className="taking-how">
				<h2 ref={heading} tabIndex={-1}>
					{title}
				</h2>
				<Standing list={list} asked={null} />
				<Unsure />
				{asked === null ? null : (
					<Button className="button button-main" onPress={goOn}>
						Go on: {asked.name}
					</Button>
				)}
			</div>
			<div className="taking-lists">
				<Rows title="Readings" items={readings} empty="Nothing is taped yet." />
				<Rows title="Heights and obstacles" items={heights} empty="No height is taped yet." />
				{left.length === 0 ? null : <Rows title="Left as it is" items={left} empty="" />}
			</div>
		</div>
	);
}

/** What the plan says that more readings would mend. */
const UNSURE: readonly FindingCode[] = ["readings-cannot-settle", "cut-length-unsure", "track-may-change"];

function Unsure() {
	const wording = useWording();
	const told = usePlanPart((plan) => plan.findings.filter(({ code }) => UNSURE.includes(code)));
	const survey = usePlanPart((plan) => plan.survey);
	const isUnchecked = survey?.settled === true && Math.round(survey.redundancy) === 0;
	if (told.length === 0 && !isUnchecked) return null;
	return (
		<section aria-label="Still unsure" className="taking-unsure">
			<h3>Still unsure</h3>
			{isUnchecked ? <p>Nothing checks these readings yet: a slip in one would not show.</p> : null}
			{told.map((finding) => (
				<p key={finding.code}>{describe(finding, wording).message}</p>
			))}
		</section>
	);
}

interface RowsProps {
	readonly title: string;
	readonly items: readonly ToTake[];
	readonly empty: string;
}

function Rows({ title, items, empty }: RowsProps) {
	return (
		<section aria-label={title}>
			<h3>{title}</h3>
			{items.length === 0 ? <p className="quiet">{empty}</p> : null}
			<ul>
				{items.map((item) => (
					<Row key={item.key} item={item} />
				))}
			</ul>
		</section>
	);
}

function Row({ item }: { readonly item: ToTake }) {
	const wording = useWording();
	const { key, name, what, value, state } = item;
	const index = what.kind === "reading" ? what.index : null;
	const checked = usePlanPart((plan) => (index === null ? null : (plan.survey?.readings[index] ?? null)));
	const doubted = usePlanPart((plan) => index !== null && inDoubt(plan.survey).includes(index));
	const residual = checked === null || checked.standardized === null ? null : Math.abs(checked.residual);
	const says =
		checked === null
			? []
			: [
					...(doubted ? ["in doubt"] : []),
					residual === null ? "unchecked" : `out by ${readingFigure(checked.reading, residual, wording)}`,
					...(checked.reading.sd === null
						? []
						: [`± ${readingFigure(checked.reading, AT_95 * checked.reading.sd, wording)}`]),
				];
	return (
		<li className={index === null ? "taking-row taking-row-short" : "taking-row"} data-doubt={doubted || undefined}>
			<p>
				<span className="taking-name">{capital(key)}</span>
				<span className="taking-says">{says.join(", ")}</span>
			</p>
			<p className="taking-value figure">{value === null ? "–" : entryFigure(item, value, wording.unit)}</p>
			<div className="pair">
				<Button
					className="button"
					aria-label={state === "taken" ? `Take the ${key} again` : `Take the ${key}`}
					onPress={() => goTo(key)}
				>
					{state === "taken" ? "Take again" : "Take"}
				</Button>
				{index === null ? null : (
					<>
						<Button
							className="button"
							aria-label={`Loosen the ${key}`}
							onPress={() => {
								showList(true);
								editBay(`loosen the ${name}`, (bay) => loosened(bay, index));
							}}
						>
							Loosen
						</Button>
						<Button
							className="button"
							aria-label={`Remove the ${key}`}
							onPress={() => {
								showList(true);
								skip(key);
								editBay(`remove the ${name}`, (bay) => withoutReading(bay, index));
							}}
						>
							Remove
						</Button>
					</>
				)}
			</div>
		</li>
	);
}
