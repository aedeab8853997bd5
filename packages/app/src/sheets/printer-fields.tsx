import { Button } from "react-aria-components";
import { NumberField } from "../fields/number-field.tsx";
import { Section } from "../panels/section.tsx";
import { correctNothing, isRight, MEASURED, setPrinter, useWishes } from "./wishes.ts";

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
			{right ? null : (
				<>
					<p className="quiet" role="status">
						True-size pages are corrected for this printer. Print one more and check its bars before you bend to it:
						both must now measure 100 mm.
					</p>
					<Button className="button" onPress={correctNothing}>
						No correction
					</Button>
				</>
			)}
		</Section>
	);
}
