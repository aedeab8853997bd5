import { csvProblemLine, readReadingsCsv, writeReadingsCsv } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { bayOnTable, useBay } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { pickReadings, refuseFile, saveReadings } from "../storage/job-file.ts";

/** Readings from a file and into one: a list written down on site, or kept by another program. */
export function ReadingsFile() {
	const none = useBay(({ readings }) => readings.length === 0);
	return (
		<div className="pair">
			<Button className="button" onPress={() => void pickReadings(receiveReadings)}>
				Add readings from a file
			</Button>
			<Button className="button" isDisabled={none} onPress={save}>
				Save readings to a file
			</Button>
		</div>
	);
}

/** All readings of the file after the bay's own, as one step; a file with anything wrong in it shows that and leaves the bay as it is. */
function receiveReadings(text: string, file: string): void {
	const { bay, unit } = onTable();
	const read = readReadingsCsv(text, bay, unit);
	if (!read.ok) {
		refuseFile(file, read.problems.map(csvProblemLine));
		return;
	}
	const { readings } = read;
	if (readings.length > 0)
		editBay(`add the readings of ${file}`, (each) => ({ ...each, readings: [...each.readings, ...readings] }));
	const count = readings.length === 1 ? "1 reading" : `${readings.length || "no"} readings`;
	screen.getState().say(`${file} gave ${count}`);
}

function save(): void {
	const { bay, unit } = onTable();
	void saveReadings(writeReadingsCsv(bay, unit));
}

function onTable() {
	const state = desk.getState();
	return { bay: bayOnTable(state), unit: state.shown.display.length };
}
