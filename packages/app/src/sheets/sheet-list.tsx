import { capital } from "@baywright/setout";
import type { SheetName } from "@baywright/sheets";
import { Checkbox } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { useMaker } from "./maker.ts";
import { type Made, SHEET_WORDS, SHEETS_IN_ORDER } from "./making.ts";
import { useWishes, want } from "./wishes.ts";

/** Every sheet there may be: how many pages it has, or why there is none. A tick puts it into the pack. */
export function SheetList() {
	const made = useMaker((state) => state.made);
	if (made === null) return null;
	return (
		<ul className="sheet-list">
			{SHEETS_IN_ORDER.map((name) => (
				<SheetRow key={name} name={name} made={made} />
			))}
		</ul>
	);
}

function SheetRow({ name, made }: { readonly name: SheetName; readonly made: Made }) {
	const wanted = useWishes((state) => !state.without.includes(name));
	const bays = useDesk(({ job }) => job.bays);
	const sheets = made.sheets.filter((sheet) => sheet.name === name);
	const pages = sheets.reduce((sum, sheet) => sum + sheet.pages.length, 0);
	const missing = made.notMade.filter((each) => each.name === name);
	const several = sheets.length + missing.length > 1;
	const nameOf = (id: string) => bays.find((bay) => bay.id === id)?.name || `Bay ${id}`;
	return (
		<li className="sheet-row">
			{sheets.length === 0 ? (
				<span className="sheet-none">{SHEET_WORDS[name]}</span>
			) : (
				<Checkbox className="tick" isSelected={wanted} onChange={(on) => want(name, on)}>
					<span className="tick-box" aria-hidden="true" />
					{SHEET_WORDS[name]}
				</Checkbox>
			)}
			<span className="sheet-pages">{sheets.length === 0 ? "none" : pages === 1 ? "1 page" : `${pages} pages`}</span>
			{missing.map(({ bay, why }) => (
				<p key={bay} className="sheet-why">
					{several ? `Not of ${nameOf(bay)}: ${why}` : capital(why)}
				</p>
			))}
		</li>
	);
}
