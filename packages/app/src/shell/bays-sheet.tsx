import { canRemoveBay, duplicateBay, removeBay, renameBay } from "@baywright/editor";
import type { BayPlan } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { screen, toTop } from "../desk/screen.ts";
import { putOnTable } from "../desk/start-taping.ts";
import { Thumbnail } from "../examples/thumbnail.tsx";
import { TextLine } from "../fields/text-field.tsx";

/** Every bay of the job: put on the table, named, copied, taken away. */
export function BaysSheet() {
	const ids = useDesk((state) => state.shown.bays.map(({ id }) => id).join("\n"));
	return (
		<>
			<ul className="bays">
				{ids.split("\n").map((id, index) => (
					<BayCard key={id} index={index} />
				))}
			</ul>
			<Button className="button button-main" onPress={() => screen.getState().show({ kind: "new-bay" })}>
				Add a bay
			</Button>
		</>
	);
}

function BayCard({ index }: { readonly index: number }) {
	const name = useDesk((state) => state.shown.bays[index]?.name ?? "");
	const plan = useDesk((state) => state.plans[index]);
	const removable = useDesk((state) => canRemoveBay(state.shown));
	const onTable = useDesk((state) => state.bay === index);
	const called = name === "" ? `Bay ${index + 1}` : name;
	return (
		<li className={onTable ? "bay-card chosen" : "bay-card"}>
			<Button
				className="bay-picture"
				aria-label={`Put ${called} on the table`}
				aria-pressed={onTable}
				onPress={() => putThere(index)}
			>
				<Thumbnail plan={plan as BayPlan} />
			</Button>
			<TextLine
				label={`Name of bay ${index + 1}`}
				value={name}
				instead={`Bay ${index + 1}`}
				commit={(text) => {
					const { job, commit } = desk.getState();
					commit("name of the bay", renameBay(job, index, text.trim()));
					return null;
				}}
			/>
			<p className="quiet">{onTable ? "On the table" : wallsOf(plan)}</p>
			<div className="pair">
				<Button
					className="button"
					aria-label={`Duplicate ${called}`}
					onPress={() => putOnTable(duplicateBay(desk.getState().job, index), `duplicate ${called}`)}
				>
					Duplicate
				</Button>
				<Button
					className="button"
					isDisabled={!removable}
					aria-label={`Remove ${called}`}
					onPress={() => takeAway(index, called)}
				>
					Remove
				</Button>
			</div>
		</li>
	);
}

function putThere(index: number): void {
	desk.getState().showBay(index);
	screen.getState().close();
	toTop();
}

/** The bay on the table stays there, whichever goes; undo brings back what went. */
function takeAway(index: number, called: string): void {
	const { job, bay, commit, showBay } = desk.getState();
	commit(`remove ${called}`, removeBay(job, index));
	showBay(bay > index || bay === job.bays.length - 1 ? Math.max(0, bay - 1) : bay);
	screen.getState().say(`Removed ${called}. Undo brings it back.`);
}

function wallsOf(plan: BayPlan | undefined): string {
	const walls = plan?.projections.length ?? 0;
	return walls === 0 ? "Not taped yet" : walls === 1 ? "1 wall" : `${walls} walls`;
}
