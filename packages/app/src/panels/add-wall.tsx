import { appendWall, type ChainEnd } from "@baywright/editor";
import { type FormEvent, useState } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { PlainField } from "../fields/plain-field.tsx";
import { GREATEST_ANGLE, readAngle } from "../fields/read-angle.ts";
import { readLength } from "../fields/read-length.ts";

/** Walls typed one after the other as they are taped: a run, and the angle that it makes. Enter adds the wall. */
export function AddWall() {
	const corners = useDesk((state) => bayOnTable(state).corners.length);
	const unit = useDesk((state) => state.shown.display.length);
	const [end, setEnd] = useState<ChainEnd>("right");
	const [run, setRun] = useState("");
	const [angle, setAngle] = useState("");
	const [refused, setRefused] = useState({ run: "", angle: "" });
	const first = corners < 2;

	function add(event: FormEvent): void {
		event.preventDefault();
		const length = readLength(run, unit, { least: 1 });
		const room = first ? ({ ok: true, value: 180 } as const) : readAngle(angle, GREATEST_ANGLE);
		setRefused({ run: length.ok ? "" : length.message, angle: room.ok ? "" : room.message });
		if (!length.ok || !room.ok) return;
		editBay("add a wall", (bay) => appendWall(bay, end, length.value, room.value));
		desk.getState().select(null);
		setRun("");
		setAngle("");
		event.currentTarget.querySelector("input")?.focus();
	}

	return (
		<form className="add-wall" aria-label="Add a wall" onSubmit={add}>
			<PlainField
				label={first ? "First run" : "Next run"}
				text={run}
				change={setRun}
				refused={refused.run}
				unit={unit}
			/>
			{first ? null : <PlainField label="Its angle" text={angle} change={setAngle} refused={refused.angle} unit="°" />}
			{first ? null : <Choice label="Add it at the" labelHidden value={end} options={ENDS} choose={setEnd} />}
			<Button className="button" type="submit">
				{first ? "Add the first wall" : "Add the wall"}
			</Button>
		</form>
	);
}

const ENDS = [
	["left", "left end"],
	["right", "right end"],
] as const;
