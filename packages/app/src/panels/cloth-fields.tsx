import { type Cloth, capital, HEADING_NAMES, type Heading } from "@baywright/setout";
import { editCloth } from "../desk/edit-cloth.ts";
import { Choice } from "../fields/choice.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TypedField } from "../fields/typed-field.tsx";

/** Every figure of one cloth. What is out of any sensible range is taken, and the plan asks about it. */
export function ClothFields({ cloth }: { readonly cloth: Cloth }) {
	const { id, lining } = cloth;
	const name = cloth.name || id;
	const set = (what: string, part: Partial<Cloth>) => editCloth(id, `${what} of ${name}`, part);
	const setLining = (what: string, part: Partial<NonNullable<Cloth["lining"]>>) =>
		set(what, { lining: { ...(lining ?? PLAIN_LINING), ...part } });
	return (
		<div className="cloth-fields">
			<div className="cloth-name">
				<TypedField
					label="Name"
					align="start"
					text={cloth.name}
					read={(text) => ({ ok: true, value: text })}
					commit={(text) => set("name", { name: text })}
				/>
			</div>
			<LengthField label="Usable width" value={cloth.width} least={1} commit={(mm) => set("width", { width: mm })} />
			<LengthField
				label="Pattern repeat"
				value={cloth.repeat}
				least={0}
				commit={(mm) => set("repeat", { repeat: mm })}
			/>
			<Grams label="Mass" value={cloth.mass} commit={(mass) => set("mass", { mass })} />
			<Millimetres label="Thickness" value={cloth.thickness} commit={(thickness) => set("thickness", { thickness })} />
			<Choice label="Pattern meets" value={cloth.match} options={MATCHES} choose={(match) => set("match", { match })} />
			<Choice
				label="Lining"
				value={lining === null ? "none" : "lined"}
				options={LININGS}
				choose={(to) => set("lining", { lining: to === "none" ? null : PLAIN_LINING })}
			/>
			{lining === null ? null : (
				<>
					<LengthField
						label="Lining width"
						value={lining.width}
						instead={cloth.width}
						least={1}
						commit={(mm) => setLining("lining width", { width: mm })}
						clear={() => setLining("lining width", { width: null })}
					/>
					<Grams label="Lining mass" value={lining.mass} commit={(mass) => setLining("lining mass", { mass })} />
					<Millimetres
						label="Lining thickness"
						value={lining.thickness}
						commit={(thickness) => setLining("lining thickness", { thickness })}
					/>
				</>
			)}
			<h4 className="cloth-part">Packing: mm of track for each metre of flat cloth, drawn back</h4>
			{HEADINGS.map(([heading, word]) => (
				<NumberField
					key={heading}
					label={capital(word)}
					value={cloth.packing[heading] ?? null}
					least={0}
					greatest={5000}
					instead="usual"
					commit={(mm) => set("packing", { packing: { ...cloth.packing, [heading]: mm } })}
					clear={() => set("packing", { packing: without(cloth.packing, heading) })}
				/>
			))}
		</div>
	);
}

interface FigureProps {
	readonly label: string;
	readonly value: number | null;
	readonly commit: (value: number | null) => string | null;
}

const Grams = ({ commit, ...rest }: FigureProps) => (
	<NumberField {...rest} unit="g/m²" least={0.1} greatest={100_000} commit={commit} clear={() => commit(null)} />
);

/** In mm whatever lengths are shown in: tenths of a millimetre say nothing in inches. */
const Millimetres = ({ commit, ...rest }: FigureProps) => (
	<NumberField {...rest} unit="mm" least={0.01} greatest={1000} commit={commit} clear={() => commit(null)} />
);

const without = (packing: Cloth["packing"], heading: Heading): Cloth["packing"] =>
	Object.fromEntries(Object.entries(packing).filter(([key]) => key !== heading));

const PLAIN_LINING = { name: "Plain lining", width: null, mass: 130, thickness: 0.3 };

const MATCHES = [
	["straight", "level"],
	["half-drop", "half a repeat lower"],
] as const;

const LININGS = [
	["none", "none"],
	["lined", "lined"],
] as const;

const HEADINGS = Object.entries(HEADING_NAMES) as [Heading, string][];
