import { Button } from "react-aria-components";
import { NumberField } from "../fields/number-field.tsx";
import { Section } from "../panels/section.tsx";
import { correctNothing, isRight, MEASURED, measureAgain, setPrinter, useWishes } from "./wishes.ts";

/** Few printers print quite to size: what their print measures corrects what is drawn to true size. */
export function PrinterFields() {
	const measured = useWishes((state) => state.measured);
	const right = isRight(measured);
	const bar = (label: string, way: "across" | "down") => (
		<NumberField
			label={label}
			value={measured[way]}
			least={MEASURED.least}
			greatest={MEASURED.greatest}
			unit="mm"
			commit={(mm) => {
				setPrinter({ measured: { ...measured, [way]: mm } });
				return null;
			}}
		/>
	);
	return (
		<Section
			title="The printer"
			gist={right ? "not corrected" : `${measured.across} × ${measured.down} mm`}
			open={!right}
		>
			<p className="quiet">
				Print a bend template at 100 %, or “actual size”, with 100 in both fields, and measure its two bars. Where they
				are not 100 mm, type what they measure: true-size pages are then drawn so that this printer makes them right.
			</p>
			<div className="field-pair">
				{bar("100 mm bar across", "across")}
				{bar("100 mm bar down", "down")}
			</div>
			{right ? null : <Corrected />}
		</Section>
	);
}

/** The next print is checked too, and what it still is out comes on top: it is not typed over what the first one was out. */
function Corrected() {
	const { across, down } = useWishes((state) => state.measured);
	const bar = (label: string, way: "across" | "down") => (
		<NumberField
			label={label}
			value={null}
			instead="100"
			least={MEASURED.least}
			greatest={MEASURED.greatest}
			unit="mm"
			commit={(mm) => measureAgain(way, mm)}
		/>
	);
	return (
		<>
			<p className="quiet" role="status">
				True-size pages are corrected for this printer: of 100 mm it makes {across} across and {down} down. Print one
				more before you bend to it: both bars must now measure 100 mm.
			</p>
			<p className="quiet">Where they do not, type what they measure on that print: it is reckoned on top.</p>
			<div className="field-pair">
				{bar("Corrected bar across", "across")}
				{bar("Corrected bar down", "down")}
			</div>
			<Button className="button" onPress={correctNothing}>
				No correction
			</Button>
		</>
	);
}
