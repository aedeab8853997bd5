import { desk, useDesk } from "../desk/desk.ts";
import { Choice } from "../fields/choice.tsx";

/** The unit of every length shown or typed. */
export function UnitChoice({ labelled = false }: { readonly labelled?: boolean }) {
	const unit = useDesk((state) => state.shown.display.length);
	return (
		<Choice
			label={labelled ? "Lengths in" : "Unit of length"}
			labelHidden={!labelled}
			value={unit}
			options={UNITS}
			choose={(chosen) =>
				desk.getState().change(`lengths in ${chosen}`, [{ op: "replace", path: "/display/length", value: chosen }])
			}
		/>
	);
}

const UNITS = [
	["mm", "mm"],
	["cm", "cm"],
	["in", "in"],
] as const;
